package sillwright.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Words;
import sillwright.walk.Survey;
import sillwright.work.cost.Range;

/// What falls due of one sort, on one day and for one reason, told in one line with the members it is on: forty coats that fail now are one job, not forty.
///
/// @param on      the day; nothing where it is due now
/// @param words   what, with every member, side by side
/// @param because what it rests on
/// @param dues    each of them
public record Gathered(Optional<LocalDate> on, String words, String because, List<Due> dues) {
    public Gathered { dues = List.copyOf(dues); }

    private record Sort(Optional<LocalDate> on, String sort, String because) {}

    /// In the order of the first of each.
    ///
    /// @param start the day up to which all is due now
    public static List<Gathered> of(List<Due> dues, Survey survey, LocalDate start) {
        Map<Sort, List<Due>> sorts = new LinkedHashMap<>();
        for (Due due : dues) sorts.computeIfAbsent(new Sort(Optional.of(due.on()).filter(on -> on.isAfter(start)), due.sort(), due.because()), _ -> new ArrayList<>()).add(due);
        return sorts.entrySet().stream().map(each -> new Gathered(each.getKey().on, words(each.getKey().sort, each.getValue(), survey), each.getKey().because, each.getValue())).toList();
    }

    private static String words(String sort, List<Due> dues, Survey survey) {
        if (dues.size() == 1 || !sort.contains("{}")) return dues.getFirst().words();
        Map<String, List<String>> sides = new LinkedHashMap<>();
        for (Due due : dues) sides.computeIfAbsent(due.side(), _ -> new ArrayList<>()).add(due.member().map(id -> survey.members().get(id).title()).orElse(due.words()));
        List<String> said = new ArrayList<>();
        sides.forEach((side, members) -> said.add(Optional.ofNullable(survey.sides().get(side)).map(one -> one.title()).filter(title -> !title.isBlank()).orElse(side) + ": " + String.join(", ", members)));
        return sort.replace("{}", Words.count(dues.size(), "member")) + ". " + Words.sentence(String.join("; ", said));
    }

    /// Hours of work at the likeliest, all together.
    public double hours() { return dues.stream().mapToDouble(Due::hours).sum(); }

    /// What all cost together. They are one job by one hand at one price, which errs alike on all of them, so that low adds to low and high to high.
    public Range money() {
        if (dues.size() == 1) return dues.getFirst().money();
        return dues.stream().map(Due::money).reduce(Range.NOTHING, (a, b) -> new Range(a.low() + b.low(), a.middle() + b.middle(), a.high() + b.high(), a.mean() + b.mean(), a.exact() + b.exact(), a.spread() + b.spread(),
                Math.max(a.draws(), b.draws()), List.of()));
    }
}
