package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Comparison.Compared;
import sillwright.work.Comparison.Undone;
import sillwright.work.Rule.Refusal;
import sillwright.work.Weighing.Option;
import sillwright.work.cost.Bill;

/// Works the comparison of one damage.
final class Comparing {
    private static final int TURNS = 3;

    private final Job job;
    private final Units units;

    private Comparing(Job job) {
        this.job = job;
        this.units = job.units();
    }

    static Comparison of(Job job, List<Option> options, Decided.Chosen chosen) { return new Comparing(job).compare(options, chosen); }

    private Comparison compare(List<Option> options, Decided.Chosen settled) {
        List<Compared> good = new ArrayList<>(), refused = new ArrayList<>();
        for (Option option : options) if (option.holds()) good.add(worked(option, option == settled.taken(), option == settled.recommended()));
        for (Option option : options) if (!option.holds())
            refused.add(option == settled.taken() ? worked(option, true, false) : new Compared(option.treatment(), false, false, refusals(option), kept(option), new Lasting(0, 0), 0, Optional.empty(), Undone.of(option.treatment()), option.use(), Optional.empty()));
        List<Compared> all = new ArrayList<>();
        for (Compared one : good) all.add(new Compared(one.treatment(), one.taken(), one.recommended(), one.refusals(), one.keptShare(), one.lasting(), one.hours(), one.money(), one.undone(), one.use(), better(one, good)));
        Compared chosen = all.stream().filter(Compared::recommended).findFirst().orElseThrow();
        List<String> turns = Mind.turns(options, settled.recommended()).stream().limit(TURNS).map(turn -> turn.words(units)).toList();
        String words = words(chosen, all);
        all.addAll(refused);
        return new Comparison(all, words, turns);
    }

    private double kept(Option option) { return Math.max(0, 1 - option.lostMl() * 1000 / (job.member().sectionMm2() * job.member().lengthMm())); }

    private static List<String> refusals(Option option) { return option.refusals().stream().map(Refusal::words).toList(); }

    private Compared worked(Option option, boolean taken, boolean recommended) {
        Bill bill = Estimate.treatment(job, option.treatment(), job.site().outfit());
        Optional<Double> money = job.site().outfit().prices().isEmpty() ? Optional.empty() : Optional.of(bill.lines().stream().mapToDouble(line -> line.likely().orElse(0.0)).sum());
        return new Compared(option.treatment(), taken, recommended, refusals(option), kept(option), Lasting.of(job, option.treatment()), bill.likelyHours(), money, Undone.of(option.treatment()), option.use(), Optional.empty());
    }

    /// Another that is as good in everything and better in something: asks no more of the building, keeps as much wood, lasts as long either way, costs and takes no more, can be undone as well,
    /// and is as strong.
    private static Optional<Treatment> better(Compared one, List<Compared> all) {
        for (Compared other : all) {
            if (other == one) continue;
            double[][] pairs = {{-other.treatment().degree(), -one.treatment().degree()}, {other.keptShare(), one.keptShare()}, {other.lasting().stopped(), one.lasting().stopped()},
                {other.lasting().running(), one.lasting().running()}, {-other.hours(), -one.hours()}, {-other.money().orElse(0.0), -one.money().orElse(0.0)}, {-other.undone().ordinal(), -one.undone().ordinal()},
                {-other.use().orElse(0.0), -one.use().orElse(0.0)}};
            boolean asGood = true, better = false;
            for (double[] pair : pairs) {
                asGood &= pair[0] >= pair[1] - 1e-9;
                better |= pair[0] > pair[1] + 1e-9;
            }
            if (asGood && better) return Optional.of(other.treatment());
        }
        return Optional.empty();
    }

    private String words(Compared chosen, List<Compared> good) {
        String said = Words.sentence(chosen.treatment().words()) + ": it keeps " + (chosen.keptShare() > 0.999 ? "all" : Words.percent(chosen.keptShare())) + " of the piece and should serve about "
                + years(chosen.lasting().stopped()) + " with the water stopped" + (job.water().isEmpty() || chosen.lasting().stopped() - chosen.lasting().running() < 1 ? "" : ", about " + years(chosen.lasting().running()) + " if it runs on")
                + ", for " + hours(chosen.hours()) + " of work" + chosen.use().map(use -> "; its load then uses " + Words.significant(use, 2) + " of what it bears").orElse("") + ".";
        Optional<Compared> next = good.stream().filter(other -> !other.recommended() && other.worseThan().isEmpty()).findFirst();
        if (next.isEmpty()) return said + (good.size() == 1 ? " Nothing else would hold." : "");
        Compared other = next.get();
        String more = other.keptShare() < chosen.keptShare() - 5e-4 ? "would take " + Words.percent(1 - other.keptShare()) + " of it" : "asks more of it";
        return said + " Next would come: " + other.treatment().words() + ", which " + more + ", would serve about " + years(other.lasting().stopped()) + " and take " + hours(other.hours()) + ".";
    }

    private static String years(double years) { return years < 1.5 ? "a year" : Words.number(years, 0) + " years"; }

    static String hours(double hours) { return Words.number(hours, hours < 10 ? 1 : 0) + " h"; }
}
