package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.Remedy;
import sillwright.water.WaterFindings.Ruling;

/// The remedies of a source as somebody settled them: the first is the one to be done.
///
/// A decision is found again by the source's word, its side and its place, which no reading changes.
///
/// @param remedies the one taken first, one refused last, the others as they were
record Decided(List<Remedy> remedies, Optional<Ruling> ruling) {
    static Decided of(Survey survey, Instance instance, List<Remedy> remedies) {
        Decision.About about = new Decision.About.Water(Choice.word(instance.source()), instance.side().id(), instance.place());
        Optional<Decision> decision = survey.decisions().stream().map(Survey.Noted::what).filter(one -> one.about().equals(about)).findFirst();
        Optional<Remedy> named = decision.flatMap(one -> remedies.stream().filter(remedy -> remedy.word().equals(one.taken())).findFirst());
        if (named.isEmpty()) return new Decided(remedies, Optional.empty());
        List<Remedy> ordered = new ArrayList<>(remedies);
        ordered.remove(named.get());
        boolean refused = decision.get().verdict() == Decision.Verdict.REFUSED;
        ordered.add(refused ? ordered.size() : 0, named.get());
        Remedy first = remedies.getFirst();
        return new Decided(ordered, Optional.of(new Ruling(decision.get(), first.word(), decision.get().words(said(named.get()), said(first)), caution(named.get(), first, refused, remedies.size()))));
    }

    private static String said(Remedy remedy) { return remedy.word().replace('-', ' '); }

    private static String caution(Remedy named, Remedy first, boolean refused, int of) {
        if (refused) return of > 1 ? "" : "Nothing else is known that stops this source: while it runs, what is mended below it will not last.";
        return named.hours() > first.hours() ? "It takes about " + Words.number(named.hours(), 1) + " h, where the simplest (" + said(first) + ") takes about " + Words.number(first.hours(), 1) + " h." : "";
    }

    /// Decisions that nothing came of.
    static List<String> gaps(Survey survey, List<RankedSource> ranked) {
        List<String> gaps = new ArrayList<>();
        for (Survey.Noted<Decision> noted : survey.decisions()) {
            if (!(noted.what().about() instanceof Decision.About.Water(var source, var side, var place)) || ranked.stream().anyMatch(one -> one.ruling().filter(ruling -> ruling.decision().equals(noted.what())).isPresent())) continue;
            Optional<RankedSource> known = ranked.stream().filter(one -> Choice.word(one.source()).equals(source) && one.side().equals(side) && one.place().equals(place)).findFirst();
            String what = "The decision about " + source.replace('-', ' ') + ", " + side + " side" + (place.isEmpty() ? "" : ", " + place);
            gaps.add(known.isEmpty() ? what + " waits: no such source is likely there now."
                    : what + " names '" + noted.what().taken() + "', which is no remedy of it: take one of " + String.join(", ", known.get().remedies().stream().map(Remedy::word).toList()) + ".");
        }
        return gaps;
    }
}
