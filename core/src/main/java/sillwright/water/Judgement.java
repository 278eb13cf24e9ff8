package sillwright.water;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.walk.Sign;

/// The judgement that the diagnosis rests on, read from the tables beside this class: how likely each source is, which
/// signs it makes and how strongly, and what the survey's own measures say of it.
final class Judgement {
    private Judgement() {}

    static final Basis STRENGTHS = Basis.own("priors, leaks and strengths are expert judgement: no counts of causes by building were found");

    /// @param leak    probability of the sign with no source at work
    /// @param minutes that the look takes
    /// @param look    how to look; empty for a general sign that nobody is sent to look for
    record SignRow(double leak, double minutes, String look, WaterFindings.When when) {}

    /// @param strength the probability that this source alone made the sign
    record Link(Source source, double strength) {}

    /// @param bits added to the log of the odds
    /// @param sign that says the same when it is sighted
    record CircumstanceRow(Circumstance circumstance, Source source, double bits, Optional<Sign> sign, String words) {}

    private static final Map<Source, Double> PRIORS = priors();
    private static final Map<Sign, SignRow> SIGNS = signs();
    private static final Map<Sign, List<Link>> LINKS = links();
    private static final Map<Sign, Map<Source, Double>> STRENGTH = strengths();
    private static final List<CircumstanceRow> CIRCUMSTANCES = circumstances();

    static double prior(Source source) { return PRIORS.get(source); }

    /// Empty for a sign that tells nothing of water.
    static Optional<SignRow> sign(Sign sign) { return Optional.ofNullable(SIGNS.get(sign)); }

    static List<Link> links(Sign sign) { return LINKS.getOrDefault(sign, List.of()); }

    /// Empty where the source does not make the sign.
    static Optional<Double> strength(Sign sign, Source source) { return Optional.ofNullable(STRENGTH.get(sign)).map(of -> of.get(source)); }

    static List<CircumstanceRow> rows(Circumstance circumstance, Source source) {
        return CIRCUMSTANCES.stream().filter(row -> row.circumstance == circumstance && row.source == source).toList();
    }

    static List<CircumstanceRow> circumstanceRows() { return CIRCUMSTANCES; }

    private static Map<Source, Double> priors() {
        Map<Source, Double> priors = new EnumMap<>(Source.class);
        for (Csv.Row row : Csv.read(SourcesCsv.TEXT).rows()) priors.put(Source.valueOf(row.get("source")), row.number("prior"));
        return priors;
    }

    private static Map<Sign, SignRow> signs() {
        Map<Sign, SignRow> signs = new EnumMap<>(Sign.class);
        for (Csv.Row row : Csv.read(SignsCsv.TEXT).rows())
            signs.put(Sign.valueOf(row.get("sign")), new SignRow(row.number("leak"), row.number("minutes"), row.get("look"), WaterFindings.When.valueOf(row.get("when").toUpperCase(java.util.Locale.ROOT))));
        return signs;
    }

    private static Map<Sign, List<Link>> links() {
        Map<Sign, List<Link>> links = new EnumMap<>(Sign.class);
        for (Csv.Row row : Csv.read(LinksCsv.TEXT).rows())
            links.computeIfAbsent(Sign.valueOf(row.get("sign")), _ -> new ArrayList<>()).add(new Link(Source.valueOf(row.get("source")), row.number("strength")));
        return links;
    }

    private static Map<Sign, Map<Source, Double>> strengths() {
        Map<Sign, Map<Source, Double>> strengths = new EnumMap<>(Sign.class);
        LINKS.forEach((sign, links) -> links.forEach(link -> strengths.computeIfAbsent(sign, _ -> new EnumMap<>(Source.class)).put(link.source(), link.strength())));
        return strengths;
    }

    private static List<CircumstanceRow> circumstances() {
        List<CircumstanceRow> rows = new ArrayList<>();
        for (Csv.Row row : Csv.read(CircumstancesCsv.TEXT).rows())
            rows.add(new CircumstanceRow(Circumstance.valueOf(row.get("circumstance")), Source.valueOf(row.get("source")), row.number("bits"),
                    row.get("sign").isEmpty() ? Optional.empty() : Optional.of(Sign.valueOf(row.get("sign"))), row.get("words")));
        return List.copyOf(rows);
    }
}
