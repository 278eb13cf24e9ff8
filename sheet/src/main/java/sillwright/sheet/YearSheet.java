package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.watch.WatchFindings.Ask;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;

import static sillwright.sheet.Text.*;

/// All rounds of the year in one table: each question once, with the rounds that ask it. The lists to walk with, with room to write, are a print of their own.
final class YearSheet {
    private YearSheet() {}

    /// A question that may be asked on several rounds.
    private record Question(String side, String place, String words, String last, String expected, String because) {
        String asks() { return words + (expected.isEmpty() ? "" : ", should be: " + expected); }
    }

    static Markup page(Assessment assessment) {
        List<Round> rounds = assessment.watch().rounds();
        List<Markup> all = new ArrayList<>(List.of(h2("watch", "Watch")));
        WatchSheet.verdicts(assessment, all);
        WatchSheet.trends(assessment, all);
        if (rounds.isEmpty()) all.add(p("No round is planned."));
        Map<Question, TreeSet<Integer>> asked = new LinkedHashMap<>();
        for (int i = 0; i < rounds.size(); i++) {
            Round round = rounds.get(i);
            all.add(p(b(Shared.letter(i, 'A') + "  " + round.title() + round.first().map(first -> ", first on " + Said.day(first) + ", then every year").orElse("") + ". "),
                    new Node.Text(round.why() + " " + Words.count(round.checks().size(), "stop") + ", about " + Words.number(round.minutes(), 0) + " minutes"
                            + (round.left() == 0 ? "." : "; " + Words.count(round.left(), "lesser stop") + " left for the next."))));
            for (Check check : round.checks())
                for (Ask ask : check.asks()) asked.computeIfAbsent(new Question(check.side(), check.place(), ask.words(), ask.last(), ask.expected(), check.because()), _ -> new TreeSet<>()).add(i);
        }
        Shared again = new Shared(asked.keySet().stream().map(question -> List.of(question.asks())).toList(), 4);
        if (!asked.isEmpty()) all.add(small("Capital letters: the rounds that ask it. Small letters: questions asked at many places, told here once."));
        all.addAll(again.run("Asked at many places:"));
        return div("upright runon", div("head", all), columns(stops(assessment, asked, again)));
    }

    /// A paragraph for each place, under the name of its side.
    private static List<Markup> stops(Assessment assessment, Map<Question, TreeSet<Integer>> asked, Shared again) {
        List<Markup> all = new ArrayList<>();
        for (String side : asked.keySet().stream().map(Question::side).distinct().toList()) {
            Map<String, List<Node>> places = new LinkedHashMap<>();
            asked.forEach((question, rounds) -> {
                if (!question.side.equals(side)) return;
                List<Node> said = places.computeIfAbsent(question.place + (question.because.isEmpty() ? "" : " (" + question.because + ")"), _ -> new ArrayList<>());
                said.add(new Node.Text((said.isEmpty() ? "" : "; ") + (again.has(question.asks()) ? again.letters(List.of(question.asks())) : question.asks())
                        + (question.last.isEmpty() ? "" : ", last time " + question.last) + " "));
                said.add(b(String.join(" ", rounds.stream().map(i -> Shared.letter(i, 'A')).toList())));
            });
            int first = all.size();
            places.forEach((place, said) -> all.add(notes(place.isBlank() ? List.of() : List.of(new Node.Text(Words.sentence(place.strip()) + ": ")), said)));
            // The name of the side stays with its first place.
            all.set(first, div("keep", p(b(Said.sideTitle(assessment.survey(), side))), all.get(first)));
        }
        return all;
    }
}
