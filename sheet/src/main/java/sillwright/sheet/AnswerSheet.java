package sillwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Fault;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.watch.WatchFindings.Round;
import sillwright.wood.Capacity;
import sillwright.wood.Condition;
import sillwright.work.Costing;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.OrderLine;
import sillwright.work.WorkFindings.Task;

import static sillwright.sheet.Text.*;

/// The first page: the answer before anything else.
final class AnswerSheet {
    /// So many of each, that the answer stays on one page.
    private static final int FEW = 4, WORST = 6, URGENT = 12;

    private AnswerSheet() {}

    static Markup page(Assessment assessment) {
        Survey survey = assessment.survey();
        Units units = assessment.settings().units();
        List<Markup> left = new ArrayList<>(), right = new ArrayList<>();
        left.addAll(wrong(assessment));
        left.addAll(urgent(assessment));
        left.addAll(order(assessment, units));
        right.addAll(water(assessment));
        right.addAll(cost(assessment));
        right.addAll(when(assessment));
        right.addAll(watch(assessment));
        right.addAll(missing(assessment));
        return div("upright", masthead(survey), lead(Words.sentence(state(assessment)) + "."), stop(assessment), pair(left, right),
                div("caution", b(Said.SCREENING + ". "),
                        "Every figure here is a screening value. Work on what bears load, on lead paint, asbestos or mould, at height, or near "
                                + "wiring in wet walls, and changes to a listed building,"
                        + " are settled by the local code and by licensed people, not by this paper.")).with("id", "answer");
    }

    private static Optional<String> alert(Assessment assessment, Condition condition) { return assessment.wood().capacity(condition.member().id()).flatMap(Capacity::alert); }

    /// What to do today, before anything else on the page is read.
    private static List<Markup> stop(Assessment assessment) {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (Condition condition : assessment.wood().all()) alert(assessment, condition).ifPresent(words -> alike.computeIfAbsent(words, _ -> new ArrayList<>()).add(Said.title(condition.member())));
        List<Markup> all = new ArrayList<>();
        alike.forEach((words, members) -> all.add(div("caution", b(Words.sentence(Words.list(members)) + ": "), words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1))));
        return all;
    }

    private static Markup masthead(Survey survey) {
        String built = survey.building().map(building -> "built " + building.yearBuilt() + ", ").orElse("");
        List<Markup> lines = new ArrayList<>(List.of(Markup.of("h1", survey.name()), small(Words.sentence(built + Said.walkedWords(survey)) + ", "
                + Words.count(survey.sides().size(), "side") + ", "
                + Words.count(survey.members().size(), "member") + ", " + Words.count(survey.probes().size(), "probe reading") + ".")));
        survey.building().filter(building -> !building.note().isBlank()).ifPresent(building -> lines.add(small(building.note())));
        return div("masthead", lines);
    }

    /// `3 of 18 members have soft wood: 1 hollow, 2 decayed; 4 were not probed`.
    private static String state(Assessment assessment) {
        List<Condition> all = List.copyOf(assessment.wood().all());
        if (all.isEmpty()) return "no member has been described yet, so nothing can be said of the wood";
        List<String> parts = new ArrayList<>();
        for (Condition.State state : List.of(Condition.State.HOLLOW, Condition.State.DECAYED, Condition.State.SOFTENED)) {
            long count = all.stream().filter(condition -> condition.state() == state).count();
            if (count > 0) parts.add(count + " " + Said.state(state));
        }
        long soft = all.stream().filter(Condition::needsWork).count(), blind = all.stream()
                .filter(condition -> condition.state() == Condition.State.NOT_PROBED).count();
        String said = soft == 0 ? "no soft wood was found in " + Words.count(all.size(), "member") : soft + " of " + Words.count(all.size(), "member")
                + (soft == 1 ? " has" : " have") + " soft wood"
                + (parts.isEmpty() ? "" : ": " + String.join(", ", parts));
        return said + (blind == 0 ? "" : "; " + blind + (blind == 1 ? " was" : " were") + " not probed");
    }

    private static List<Markup> wrong(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Condition> worst = assessment.wood().all().stream().filter(Condition::needsWork)
                .sorted(Comparator.comparing((Condition condition) -> alert(assessment, condition).isEmpty()).thenComparingDouble((Condition condition) -> condition.damages().stream().mapToDouble(damage ->
                        damage.section().areaKept()).min().orElse(1))).toList();
        if (worst.isEmpty()) return List.of(minor("wrong", "What is wrong"), p("No member was found soft. " + (assessment.water().toStop().isEmpty() ? ""
                : "The water beside is still worth stopping.")));
        List<Object> lines = new ArrayList<>();
        for (Condition condition : worst.stream().limit(WORST).toList()) {
            double kept = condition.damages().stream().mapToDouble(damage -> damage.section().areaKept()).min().orElse(1);
            lines.add(List.of(b(Said.title(condition.member())), new Node.Text(", " + Said.sideTitle(assessment.survey(), condition.member().side())
                    + ": " + Said.state(condition.state()) + ", soft "
                    + Said.stretch(condition.damages().getFirst(), units) + "; " + Words.percent(kept) + " of the section left")));
        }
        return with(minor("wrong", "What is wrong"), list(lines), more(worst.size(), WORST, "member"));
    }

    private static List<Markup> water(Assessment assessment) {
        List<RankedSource> all = assessment.water().toStop();
        if (all.isEmpty()) return List.of(minor("stop", "The water to stop"), p("No source of water is likely on what was seen so far.",
                assessment.water().nextLook().map(look -> " Look next: " + look.words()).orElse("")));
        List<Object> lines = new ArrayList<>();
        for (RankedSource source : all.stream().limit(FEW).toList())
            lines.add(List.of(act(source.id() + " "), new Node.Text(Words.sentence(source.words()) + " (" + Words.chance(source.probability())
                    + " likely)"
                    + source.remedies().stream().findFirst().map(remedy -> ". " + Words.sentence(remedy.words())).orElse(""))));
        return with(minor("stop", "The water to stop first"), list(lines), more(all.size(), FEW, "source"));
    }

    private static List<Markup> urgent(Assessment assessment) {
        List<Repair> all = assessment.work().urgent();
        if (all.isEmpty()) return List.of(minor("urgent", "What cannot wait"),
                p("Nothing found on this walk is marked as urgent. That is no promise of safety."));
        List<Object> lines = new ArrayList<>();
        for (Repair repair : all.stream().limit(URGENT).toList())
            lines.add(List.of(act(repair.id() + " "), new Node.Text(Said.title(repair.damage().member()) + ": " + repair.treatment().words()
                    + (repair.waterFirst().isEmpty() ? "" : ", after " + Words.list(repair.waterFirst())))));
        return with(minor("urgent", "What cannot wait"), list(lines), more(all.size(), URGENT, "repair"));
    }

    private static List<Markup> order(Assessment assessment, Units units) {
        List<OrderLine> all = assessment.work().order();
        if (all.isEmpty()) return List.of(minor("to-order", "What to order"), p("Nothing."));
        List<Object> lines = new ArrayList<>();
        for (OrderLine line : all.stream().limit(FEW).toList()) lines.add(line.item() + ": " + Counted.buy(line, units));
        return with(minor("to-order", "What to order"), list(lines), more(all.size(), FEW, "line"));
    }

    private static List<Markup> cost(Assessment assessment) {
        Costing cost = assessment.work().plan().cost();
        if (cost.hours().draws() == 0) return List.of();
        String hours = Words.number(cost.hours().low(), 0) + " to " + Words.number(cost.hours().high(), 0) + " hours of work";
        if (!cost.priced() || cost.money().draws() == 0) return with(h3("costs", "What it costs"), List.of(p(hours + ", one person's. Money wants a price book.")));
        return with(h3("costs", "What it costs"), List.of(p(List.of(b(cost.words(cost.money()))), ", middle " + Costing.sum(cost.money().middle()) + ", with " + hours
                + "; four in five of the draws lie within. Most of the spread comes from " + Words.list(cost.money().drivers().stream().limit(2).map(driver -> driver.words()).toList()) + ".")));
    }

    private static List<Markup> when(Assessment assessment) {
        List<Task> tasks = assessment.work().tasks();
        if (tasks.isEmpty()) return List.of(minor("when", "When"), p("No work is planned."));
        LocalDate first = tasks.stream().map(Task::start).min(LocalDate::compareTo).orElseThrow(), last = tasks.stream()
                .map(Task::end).max(LocalDate::compareTo).orElseThrow();
        List<Object> lines = new ArrayList<>();
        for (Task task : tasks.stream().limit(3).toList()) lines.add(List.of(n(Said.days(task.start(), task.end())),
                new Node.Text(": " + task.title())));
        return with(minor("when", "When"), List.of(p(Words.count(tasks.size(), "task") + ", " + Said.days(first, last) + ". The first:")), list(lines));
    }

    private static List<Markup> watch(Assessment assessment) {
        List<Object> lines = new ArrayList<>();
        for (Round round : assessment.watch().rounds().stream().sorted(Comparator.comparing(one -> one.first().orElse(java.time.LocalDate.MAX))).toList())
            lines.add(round.title() + round.first().map(first -> ", from " + Said.day(first) + " and every year").orElse("") + ": " + Words.count(round.checks().size(), "check"));
        return with(minor("to-watch", "What to watch"), lines.isEmpty() ? List.of(p("No round is planned.")) : list(lines));
    }

    private static List<Markup> missing(Assessment assessment) {
        long aside = assessment.survey().faults().stream().filter(Fault::grave).count();
        int gaps = GapSheet.gaps(assessment).size();
        String entries = assessment.survey().entries() + (assessment.survey().entries() == 1 ? " entry" : " entries");
        String said = (aside == 0 ? "All " + entries + " of the book were used" : aside + " of " + entries + (aside == 1 ? " was" : " were")
                + " set aside because they could not be read")
                + (gaps == 0 ? ", and nothing was left unworked." : "; " + Words.count(gaps, "thing")
                        + " could not be worked. Both are listed under gaps.");
        return List.of(minor("missing", "What is not in here"), p(said));
    }

    private static List<Markup> more(int size, int told, String what) { return size <= told ? List.of()
            : List.of(small("And " + Words.count(size - told, "more " + what) + ", further on.")); }

    @SafeVarargs
    private static List<Markup> with(Markup head, List<Markup>... rest) {
        List<Markup> all = new ArrayList<>(List.of(head));
        for (List<Markup> part : rest) all.addAll(part);
        return all;
    }
}
