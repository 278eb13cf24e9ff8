package sillwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;

import static sillwright.sheet.Text.*;

/// Where the water comes from, what speaks for it, and what stops it.
final class WaterSheet {
    /// Sources less likely than this are named in one line only. Own choice.
    private static final double WORTH_TELLING = 0.15;

    private static final int FEW = 6;

    private WaterSheet() {}

    static Markup page(Assessment assessment) {
        WaterFindings water = assessment.water();
        List<Markup> all = new ArrayList<>(List.of(h2("water", "Water")));
        all.add(p("Sources in order of how likely they are at work, all sightings weighed together. ",
                b("Find and stop these before any wood is cut.")));
        List<List<?>> rows = new ArrayList<>();
        List<List<?>> lesser = new ArrayList<>();
        for (RankedSource source : water.sources()) {
            if (source.probability() >= WaterFindings.LIKELY) rows.add(row(assessment, source));
            else if (source.probability() >= WORTH_TELLING) lesser.add(lesser(assessment, source));
        }
        if (rows.isEmpty()) all.add(p("No source stands out on what was seen so far."));
        all.addAll(table(List.of("", "Source", "Likely", "What speaks for it, and against", "What stops it"), List.of(5, 20, 8, 33, 34), rows));
        if (!lesser.isEmpty()) all.add(h3("lesser", "Less likely, and not ruled out"));
        all.addAll(table(List.of("", "Source", "Where", "Likely", "What speaks most for it or against it"), List.of(5, 26, 24, 9, 36), lesser));
        List<String> faint = water.sources().stream().filter(source -> source.probability() < WORTH_TELLING).map(source -> source.words() + " ("
                + Words.percent(source.probability()) + ")").toList();
        if (!faint.isEmpty()) all.add(small("Hardly likely: " + String.join("; ", faint) + "."));
        water.nextLook().ifPresent(look -> all.add(div("keep", h3("next-look", "The next look worth taking"),
                p(look.words() + " " + Said.sideTitle(assessment.survey(), look.side()) + ", about " + Words.number(look.minutes(), 0)
                        + " minutes. It is expected to settle " + Words.number(look.bits(), 1)
                        + " bits of what is still open; one bit is one fair yes-or-no."))));
        all.addAll(gutters(assessment));
        all.addAll(splashes(assessment));
        return div("upright", all);
    }

    private static List<?> lesser(Assessment assessment, RankedSource source) {
        String strongest = weightiest(source).limit(1).map(one -> (one.weight() >= 0 ? "for: " : "against: ") + one.words()).findFirst().orElse("");
        return List.of(source.id(), source.source().words(), where(assessment, source), n(Words.percent(source.probability())), strongest);
    }

    private static Stream<WaterFindings.Evidence> weightiest(RankedSource source) {
        return source.evidence().stream().sorted(Comparator.comparingDouble(one -> -Math.abs(one.weight())));
    }

    private static String where(Assessment assessment, RankedSource source) {
        return Said.sideTitle(assessment.survey(), source.side()) + (source.place().isEmpty() ? "" : ", " + source.place());
    }

    private static List<?> row(Assessment assessment, RankedSource source) {
        List<Object> evidence = new ArrayList<>();
        weightiest(source).limit(4).forEach(one -> evidence.add(List.of(new Node.Text((one.weight() >= 0 ? "for: " : "against: ") + one.words() + " "),
                        n("(" + (one.weight() > 0 ? "+" : "") + Words.number(one.weight(), 1) + ")"))));
        List<Object> remedies = new ArrayList<>();
        source.remedies().stream().limit(2).forEach(remedy -> remedies.add(remedy.words() + " About " + Words.number(remedy.hours(), 1) + " h."));
        List<String> wets = source.members().stream().map(id -> named(assessment, id)).toList();
        String members = wets.isEmpty() ? "" : "Wets " + (wets.size() <= FEW ? Words.list(wets) : String.join(", ", wets.subList(0, FEW)) + " and "
                + (wets.size() - FEW) + " more") + ".";
        return List.of(act(source.id()), List.of(b(Words.sentence(source.source().words())), small(where(assessment, source) + ". " + members)),
                List.of(n(Words.percent(source.probability())), small("before: " + Words.percent(source.prior()))), list(evidence), list(remedies));
    }

    private static String named(Assessment assessment, String member) {
        return assessment.survey().members().containsKey(member) ? Said.title(assessment.survey().members().get(member)) : member;
    }

    private static List<Markup> gutters(Assessment assessment) {
        Units units = assessment.settings().units();
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.GutterCheck check : assessment.water().gutters())
            rows.add(List.of(Said.sideTitle(assessment.survey(), check.side()) + ", " + check.edge(), Words.flow(check.inflowLs(), units),
                    check.capacityLs() > 0 ? Words.flow(check.capacityLs(), units) : "no gutter",
                    check.downspoutLs() > 0 ? Words.flow(check.downspoutLs(), units) : "none", check.overflows()
                            ? List.of(act("overflows"), new Node.Text(". " + check.words())) : check.words()));
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("gutters", "Gutters against the rain they are sized for")));
        all.addAll(table(List.of("Roof edge", "Roof sends", "Gutter carries", "Downspouts carry", "Finding"), List.of(20, 12, 13, 13, 42), rows));
        return all;
    }

    private static List<Markup> splashes(Assessment assessment) {
        Units units = assessment.settings().units();
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.SplashCheck check : assessment.water().splashes())
            rows.add(List.of(Said.sideTitle(assessment.survey(), check.side()), Words.length(check.clearanceMm(), units),
                    Words.length(check.reachMm(), units), Words.percent(check.share()), check.words()));
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("splash", "Splash from the ground")));
        all.addAll(table(List.of("Side", "Lowest wood above ground", "Splash that matters rises", "Share that reaches wood", "Finding"),
                List.of(18, 14, 14, 14, 40), rows));
        return all;
    }
}
