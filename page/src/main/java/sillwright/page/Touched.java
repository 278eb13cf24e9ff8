package sillwright.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Pages;
import sillwright.walk.Choice;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.WorkFindings;

/// What a change in the book changed in what is found: each line said as it was and as it is now.
///
/// @param stage one of the five
/// @param what  the thing
/// @param was   empty where it was not there
/// @param now   empty where it is gone
record Touched(String stage, String what, String was, String now) {
    static List<Touched> between(Assessment before, Assessment after) {
        List<Touched> all = new ArrayList<>();
        Units units = after.settings().units();
        lines(all, "water", before, after, a -> a.water().sources(), (_, source) -> source.words(), source -> Words.chance(source.probability()) + " likely" + source.ruling().map(ruling -> "; " + ruling.words()).orElse(""));
        lines(all, "wood", before, after, a -> List.copyOf(a.wood().all()), (_, c) -> Pages.title(c.member()), c -> wood(c, units));
        lines(all, "wood", before, after, a -> List.copyOf(a.wood().capacities().values()), (_, c) -> Pages.title(c.member()) + ", load", c -> c.words());
        lines(all, "wood", before, after, a -> List.copyOf(a.wood().outlooks().values()), (a, o) -> title(a, o.member()) + ", drying", o -> o.words());
        lines(all, "work", before, after, a -> a.work().repairs(), (_, r) -> Pages.title(r.damage().member()) + ", " + Pages.stretch(r.damage(), units), r -> work(r, units));
        lines(all, "work", before, after, a -> a.work().order(), (_, l) -> "to order: " + l.item(), l -> Pages.buy(l, units));
        Optional<WorkFindings.Task> was = last(before), now = last(after);
        if (!was.map(WorkFindings.Task::end).equals(now.map(WorkFindings.Task::end)))
            all.add(new Touched("work", "the work ends", was.map(task -> task.end().toString()).orElse(""), now.map(task -> task.end().toString()).orElse("")));
        lines(all, "watch", before, after, a -> a.watch().rounds(), (_, round) -> round.title(), r -> r.first().map(Object::toString).orElse("no day yet") + ", " + Words.count(r.checks().size(), "look"));
        return List.copyOf(all);
    }

    private static String title(Assessment a, String member) { return Optional.ofNullable(a.survey().members().get(member)).map(Pages::title).orElse(member); }

    private static Optional<WorkFindings.Task> last(Assessment a) { return a.work().tasks().stream().max(java.util.Comparator.comparing(WorkFindings.Task::end)); }

    private static String wood(Condition c, Units units) {
        List<String> said = new ArrayList<>(List.of(Choice.said(c.state())));
        for (Damage d : c.damages())
            said.add(Pages.stretch(d, units) + ", " + Words.length(d.deepestMm(), units) + " deep, " + Pages.wood(d.volumeMl().median(), units) + " soft ("
                    + Pages.wood(d.volumeMl().low(), units) + " to " + Pages.wood(d.volumeMl().high(), units) + "), " + Words.percent(d.section().areaKept()) + " of the section left");
        c.wettest().ifPresent(wettest -> said.add(Words.percent(wettest) + " at the wettest"));
        return String.join("; ", said);
    }

    private static String work(Repair r, Units units) {
        return r.treatment().words() + r.ruling().map(ruling -> ", " + ruling.words()).orElse("") + ", " + Pages.wood(r.woodLostMl(), units) + " taken away" + (r.urgent() ? ", cannot wait" : "");
    }

    private static <T> Map<String, List<T>> keyed(Assessment a, List<T> all, BiFunction<Assessment, T, String> key) {
        Map<String, List<T>> keyed = new LinkedHashMap<>();
        for (T one : all) keyed.computeIfAbsent(key.apply(a, one), _ -> new ArrayList<>()).add(one);
        return keyed;
    }

    /// What is the same before and after is not put into words: most of a building is.
    private static <T> void lines(List<Touched> all, String stage, Assessment before, Assessment after, Function<Assessment, List<T>> of, BiFunction<Assessment, T, String> key, Function<T, String> said) {
        List<T> earlier = of.apply(before), later = of.apply(after);
        if (earlier.equals(later)) return;
        Map<String, List<T>> was = keyed(before, earlier, key), now = keyed(after, later, key);
        now.forEach((what, things) -> {
            List<T> first = was.getOrDefault(what, List.of());
            if (first.equals(things)) return;
            String old = said(first, said), fresh = said(things, said);
            if (!old.equals(fresh)) all.add(new Touched(stage, what, old, fresh));
        });
        was.forEach((what, things) -> {
            if (!now.containsKey(what)) all.add(new Touched(stage, what, said(things, said), ""));
        });
    }

    private static <T> String said(List<T> things, Function<T, String> said) { return String.join("; ", things.stream().map(said).toList()); }
}
