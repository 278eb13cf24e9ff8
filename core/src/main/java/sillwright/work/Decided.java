package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Decision;
import sillwright.walk.Survey;
import sillwright.wood.Damage;

/// Which decision bears on which damage.
///
/// Damages are numbered anew with every reading, so a decision names a station of the member: it bears on the damage whose stretch, from sound-wood line to sound-wood line, the
/// station lies in; where it lies in none, on the nearest that begins or ends within 6 in of it, as far as two stations count as one place. Of several on one damage the last stands.
final class Decided {
    private Decided() {}

    /// The jobs of one member, each with what was decided about it.
    static List<Job> with(Survey survey, String member, List<Job> jobs) {
        List<Job> all = new ArrayList<>(jobs);
        for (Survey.Noted<Decision> noted : survey.decisions()) {
            if (!(noted.what().about() instanceof Decision.About.Wood(var id, var along)) || !id.equals(member)) continue;
            int at = found(jobs, along.own());
            if (at >= 0) all.set(at, all.get(at).with(noted.what()));
        }
        return all;
    }

    private static int found(List<Job> jobs, double alongMm) {
        int at = -1;
        double nearest = Survey.ONE_PLACE_MM + 1e-6;
        for (int i = 0; i < jobs.size(); i++) {
            Damage damage = jobs.get(i).damage();
            double apart = Math.max(0, Math.max(damage.fromMm() - alongMm, alongMm - damage.toMm()));
            if (apart < nearest) {
                nearest = apart;
                at = i;
            }
        }
        return at;
    }

    /// Decisions that nothing came of, each with why.
    static List<String> gaps(Survey survey, List<Job> jobs, List<Repair> repairs, Units units) {
        List<String> gaps = new ArrayList<>();
        for (Survey.Noted<Decision> noted : survey.decisions()) {
            Decision decision = noted.what();
            if (!(decision.about() instanceof Decision.About.Wood(var member, var along)) || repairs.stream().anyMatch(repair -> repair.ruling().filter(ruling -> ruling.decision().equals(decision)).isPresent())) continue;
            String what = "The decision about " + survey.members().get(member).title() + ", " + Words.length(along.own(), units) + " along, waits: ";
            boolean swallowed = jobs.stream().anyMatch(job -> job.site().decision().filter(decision::equals).isPresent());
            gaps.add(what + (swallowed ? "the new wood of another repair takes that place with it, or a later decision stands there." : "no wood is soft there any more."));
        }
        return gaps;
    }

    /// Which treatment is done, in view of what was decided.
    static Chosen of(Job job, List<Weighing.Option> options) {
        Weighing.Option recommended = options.stream().filter(Weighing.Option::holds).findFirst().orElseThrow();
        Optional<Decision> made = job.site().decision();
        if (made.isEmpty()) return new Chosen(recommended, recommended, Optional.empty());
        Decision decision = made.get();
        List<Weighing.Option> named = options.stream().filter(option -> named(option, decision.taken())).toList();
        return switch (decision.verdict()) {
            case ACCEPTED -> new Chosen(recommended, recommended, Optional.of(ruling(job, decision, recommended, recommended, named.contains(recommended) ? List.of()
                    : List.of("It was agreed to as " + said(named, decision) + "; by what is known since, " + recommended.treatment().words() + " is recommended: decide again."))));
            case OVERRULED -> overruled(job, decision, recommended, named, options);
            case REFUSED -> {
                Optional<Weighing.Option> next = options.stream().filter(option -> option.holds() && !named(option, decision.taken())).findFirst();
                yield new Chosen(recommended, next.orElse(recommended), Optional.of(ruling(job, decision, recommended, next.orElse(recommended),
                        next.isPresent() ? List.of() : List.of("Nothing else would hold, so it stands as recommended: overrule it by naming another, and what refuses that one is shown."))));
            }
        };
    }

    private static Chosen overruled(Job job, Decision decision, Weighing.Option recommended, List<Weighing.Option> named, List<Weighing.Option> options) {
        if (named.isEmpty())
            return new Chosen(recommended, recommended, Optional.of(ruling(job, decision, recommended, recommended, List.of("The " + sillwright.walk.Choice.said(decision.by()) + " chose " + decision.taken().replace('-', ' ')
                    + ", which is not thought of for this damage: choose one of " + String.join(", ", options.stream().map(option -> option.treatment().ownWord()).distinct().toList()) + "."))));
        Weighing.Option taken = named.stream().filter(Weighing.Option::holds).findFirst().orElse(named.getFirst());
        List<String> cautions = new ArrayList<>();
        if (!taken.holds()) {
            cautions.add(Words.sentence(taken.treatment().words()) + " was chosen though a limit refuses it: " + String.join("; ", taken.refusals().stream().map(Rule.Refusal::words).toList()) + ".");
            if (job.bearsLoad()) cautions.add("It bears load: a licensed engineer answers for a treatment that screening refuses.");
        }
        return new Chosen(recommended, taken, Optional.of(ruling(job, decision, recommended, taken, cautions)));
    }

    private static Ruling ruling(Job job, Decision decision, Weighing.Option recommended, Weighing.Option taken, List<String> cautions) {
        String said = decision.verdict() == Decision.Verdict.REFUSED ? decision.taken().replace('-', ' ') : taken.treatment().words();
        return new Ruling(decision, recommended.treatment(), decision.words(said, recommended.treatment().words()), cautions);
    }

    private static String said(List<Weighing.Option> named, Decision decision) { return named.isEmpty() ? decision.taken().replace('-', ' ') : named.getFirst().treatment().words(); }

    private static boolean named(Weighing.Option option, String word) {
        String own = option.treatment().ownWord();
        return own.equals(word) || option.treatment().word().equals(word) || own.replaceFirst("-[0-9]+$", "").equals(word);
    }

    /// @param recommended the one that asks least of those that hold
    /// @param taken       the one that is done
    record Chosen(Weighing.Option recommended, Weighing.Option taken, Optional<Ruling> ruling) {}
}
