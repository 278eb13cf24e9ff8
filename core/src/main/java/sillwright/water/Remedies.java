package sillwright.water;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.Remedy;

/// What stops each source, from the table, with its dimensions worked from the survey.
final class Remedies {
    private static final double INCH = 25.4, FOOT = 304.8;
    /// Open below framing: 8 in, the code's height under which framing must be treated (IRC R317.1 item 2, read).
    private static final double CLEAR_MM = 8 * INCH;

    private record Row(String word, double hours, double hoursPerM, String words, Basis basis, WaterFindings.Material material, String touches) {}

    private static final Map<Source, List<Row>> ROWS = read();

    private final Survey survey;
    private final Units units;

    Remedies(Survey survey, Units units) {
        this.survey = survey;
        this.units = units;
    }

    private static Map<Source, List<Row>> read() {
        Map<Source, List<Row>> rows = new EnumMap<>(Source.class);
        for (Csv.Row row : Csv.read(RemediesCsv.TEXT).rows()) {
            String document = row.get("document");
            Basis basis = new Basis(document.isEmpty() ? "Common practice" : document, row.get("where"), Known.of(row.get("known")));
            rows.computeIfAbsent(Source.valueOf(row.get("source")), _ -> new ArrayList<>())
                    .add(new Row(row.get("word"), row.number("hours"), row.number("hours_per_m"), row.get("words"), basis, WaterFindings.Material.valueOf(row.get("material").toUpperCase(java.util.Locale.ROOT)), row.get("touches")));
        }
        return rows;
    }

    static List<String> words(Source source) { return ROWS.get(source).stream().map(Row::word).toList(); }

    List<Remedy> of(Instance instance, Optional<EdgeWater> water, List<Member> wetted) {
        double metres = metres(instance);
        List<Remedy> remedies = new ArrayList<>();
        for (Row row : ROWS.get(instance.source())) {
            if (instance.source() == Source.GUTTER_TOO_SMALL && row.words.contains("add a downspout") && water.isPresent() && !aidedByDownspout(water.get())) continue;
            double hours = Math.round(2 * (row.hours + row.hoursPerM * metres)) / 2.0;
            remedies.add(new Remedy(row.word, fill(row.words, instance, water, wetted), Math.max(0.5, hours), row.basis, row.material, row.touches, metres));
        }
        return remedies;
    }

    /// Whether halving the runs and adding a like downspout would carry the roof.
    private static boolean aidedByDownspout(EdgeWater water) {
        return water.inflowLs().isPresent() && water.inflowLs().get() <= 2 * water.least();
    }

    private static double metres(Instance instance) {
        return instance.edge().map(edge -> edge.length().own())
                .orElseGet(() -> instance.place().isEmpty() ? instance.side().lengthMm() : instance.wets().getFirst().lengthMm()) / 1000;
    }

    private String fill(String words, Instance instance, Optional<EdgeWater> water, List<Member> wetted) {
        Map<String, String> values = Map.ofEntries(
                Map.entry("length", Words.length(instance.side().lengthMm(), units) + " of the " + instance.side().id() + " side"),
                Map.entry("lower", lower(instance)), Map.entry("clear", length(CLEAR_MM)), Map.entry("fall", either("6 in in the first 10 ft", "150 mm in the first 3 m")),
                Map.entry("bed", length(18 * INCH)), Map.entry("out", length(12 * INCH)), Map.entry("place", instance.somewhere()),
                Map.entry("gutter", instance.edge().isPresent() ? "the gutter of " + instance.somewhere() : "the gutter"),
                Map.entry("sill", instance.place().contains("sill") ? instance.somewhere() : "the sill of " + instance.somewhere()),
                Map.entry("newGutter", water.map(w -> w.newGutter(units)).orElse("a gutter of the size this roof asks for")),
                Map.entry("gutterFall", either("1/2 in per 10 ft", "4 mm per metre")), Map.entry("hangers", length(2 * FOOT)),
                Map.entry("extension", length(6 * FOOT)), Map.entry("lap", length(INCH)), Map.entry("iceBarrier", length(24 * INCH)),
                Map.entry("upstand", length(4 * INCH)), Map.entry("setback", length(INCH / 2)), Map.entry("sillFall", either("2 in 12", "1 in 6")), Map.entry("kerf", length(INCH / 4)),
                Map.entry("kerfBack", length(INCH / 2) + " to " + length(0.75 * INCH)), Map.entry("gap", length(INCH / 4)), Map.entry("pier", length(6 * INCH)),
                Map.entry("floorFall", either("1/8 in to 1/4 in per foot", "10 mm to 20 mm per metre")),
                Map.entry("members", wetted.isEmpty() ? "the wood" : named(wetted)),
                Map.entry("heights", "work at height: a ladder or scaffold set and tied as the local rules ask"));
        String filled = words;
        for (var value : values.entrySet()) filled = filled.replace("{" + value.getKey() + "}", value.getValue());
        return filled;
    }

    private static String named(List<Member> members) {
        return members.size() > 3 ? Words.count(members.size(), "member") : Words.list(members.stream().map(Member::title).toList());
    }

    /// ` by 5 in`, where the clearance is known and too little.
    private String lower(Instance instance) {
        return Circumstances.clearanceMm(survey, instance.side()).map(clearance -> CLEAR_MM - Math.max(0, clearance)).filter(down -> down > 5)
                .map(down -> " by " + length(down)).orElse("");
    }

    /// To the sixteenth, or as a rule marked in millimetres is read: whole ones, and from 50 mm on every fifth.
    private String length(double mm) { return Words.length(units == Units.US ? mm : mm < 50 ? Math.round(mm) : 5 * Math.round(mm / 5), units); }

    private String either(String us, String metric) { return units == Units.US ? us : metric; }
}
