package sillwright.work;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.walk.Sign;
import sillwright.walk.Survey;

/// What keeps people safe on one side, beside the lead rule: the lines of a table that apply there.
final class SafeLines {
    /// From this year on asbestos was rare in house materials: own choice, on the safe side of no date in the rules.
    private static final int ASBESTOS_RARE = 1990;
    private static final Set<Sign> INSECTS = Set.of(Sign.MUD_TUBES, Sign.COARSE_FRASS, Sign.FINE_POWDER, Sign.ROUND_HOLES, Sign.OVAL_HOLES, Sign.SMALL_ROUND_HOLES, Sign.PELLETS, Sign.INSECTS_SEEN);
    private static final Set<Sign> MOULD = Set.of(Sign.MILDEW_LOW, Sign.FUNGUS, Sign.STAIN_INSIDE, Sign.CRUST_AND_CORDS);

    /// A line of the table with the word for when it applies.
    record Row(String when, SafePlan.Line line) {}

    static final List<Row> ALL = Csv.read(SafeLinesCsv.TEXT).rows().stream().map(row -> new Row(row.get("when"),
            new SafePlan.Line(row.get("topic"), row.get("words"), new Basis(row.get("source"), row.get("where"), Known.of(row.get("known")))))).toList();

    private SafeLines() {}

    static List<SafePlan.Line> of(Survey survey, String side, List<Repair> repairs, boolean lead, double highestMm, SafePlan plan) {
        Set<String> when = new TreeSet<>(Set.of("always"));
        add(when, "paint", lead);
        add(when, "height", highestMm > SafeLayout.REACH_MM);
        add(when, "scaffold", plan.stands().stream().anyMatch(SafePlan.Stand::scaffold));
        add(when, "shore", !plan.shores().isEmpty());
        add(when, "resin", repairs.stream().anyMatch(repair -> repair.needs().stream().anyMatch(need -> need.material() == Material.CONSOLIDANT || need.material() == Material.ADHESIVE)));
        add(when, "cut", repairs.stream().anyMatch(repair -> !repair.pieces().isEmpty()));
        add(when, "open", repairs.stream().anyMatch(repair -> !repair.pieces().isEmpty()));
        add(when, "old", survey.yearBuilt() < ASBESTOS_RARE);
        add(when, "insects", seen(survey, side, INSECTS));
        add(when, "mould", seen(survey, side, MOULD));
        add(when, "eave", repairs.stream().anyMatch(repair -> switch (repair.damage().member().kind()) {
            case FASCIA, SOFFIT, FRIEZE, RAKE_BOARD, BRACKET, BEAM -> true;
            default -> false;
        }));
        return ALL.stream().filter(row -> when.contains(row.when)).map(Row::line).toList();
    }

    private static void add(Set<String> when, String word, boolean applies) { if (applies) when.add(word); }

    private static boolean seen(Survey survey, String side, Set<Sign> signs) {
        return survey.sightings().stream().map(noted -> noted.what()).anyMatch(sighting -> sighting.seen() && sighting.side().equals(side) && signs.contains(sighting.sign()));
    }
}
