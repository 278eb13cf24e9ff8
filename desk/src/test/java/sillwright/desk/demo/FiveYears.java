package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Choice;
import sillwright.walk.Entry;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Side;
import sillwright.walk.Spot;
import sillwright.walk.WorkDone;
import sillwright.walk.WorkDone.Coating;
import sillwright.walk.WorkDone.Done;
import sillwright.walk.WorkDone.Film;

import static sillwright.desk.demo.Written.*;

/// An invented wash house, walked round each spring and autumn for five years: a gutter that was put right and dried what hung under it, a sill that was
/// patched and stayed wet, gravel at a corner that held for two years, and a step that goes on rotting.
final class FiveYears {
    private FiveYears() {}

    private static final String MEMBERS_SOUTH = """
            id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
            s-fascia,fascia,fascia,sheds-water,pine-eastern-white,level,6 in,3/4 in,16',0 in,8',,covered,covered,failing,none
            s-frieze,frieze,frieze board,decorative,pine-eastern-white,level,5 in,3/4 in,16',0 in,7' 6",,covered,covered,sound,none
            s-sill,window-sill,window sill,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",5' 6",2' 8-1/4",,bare,bare,failing,none
            s-corner,corner-board,left corner board,decorative,pine-eastern-white,upright,4 in,7/8 in,7',0 in,4 in,,bare,covered,failing,none
            """;
    private static final String MEMBERS_NORTH = """
            id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
            n-casing-1,casing,left casing of the door,decorative,pine-eastern-white,upright,4 in,7/8 in,6' 8",6',12 in,,covered,covered,sound,none
            n-casing-2,casing,right casing of the door,decorative,pine-eastern-white,upright,4 in,7/8 in,6' 8",9',12 in,,covered,covered,sound,none
            n-frieze,frieze,frieze board,decorative,pine-eastern-white,level,5 in,3/4 in,16',0 in,7' 6",,covered,covered,sound,none
            n-corner,corner-board,right corner board,decorative,pine-eastern-white,upright,4 in,7/8 in,7',15' 8",12 in,,covered,covered,sound,none
            n-tread,tread,upper step,bears-load,pine-eastern-white,level,1-1/2 in,11 in,3' 6",6' 3",8 in,,bare,bare,failing,none
            """;
    /// What the meter showed, walk by walk, percent.
    private static final String METER = """
            member,face,along,across,2021-04-17,2021-11-06,2022-04-16,2022-11-05,2023-04-15,2023-11-04,2024-04-20,2024-11-09,2025-04-19,2025-11-08,2026-04-18
            s-fascia,front,8',3 in,27,16,14,15,13,15,14,16,14,15,14
            s-frieze,front,8',2 in,23,15,14,14,13,15,14,15,13,15,13
            s-sill,top,6 in,2 in,26,24,27,25,26,24,27,25,28,25,27
            s-sill,top,37 in,2 in,24,22,25,23,25,23,24,24,26,23,25
            s-corner,front,6 in,2 in,25,23,26,17,14,16,14,15,23,24,26
            n-casing-1,front,6 in,2 in,13,14,13,14,13,14,14,15,13,14,13
            n-casing-2,front,6 in,2 in,14,14,13,15,13,15,13,15,13,15,14
            n-frieze,front,8',2 in,12,13,12,14,12,14,12,14,12,14,12
            n-corner,front,6 in,2 in,13,14,14,15,13,14,13,15,14,15,13
            n-tread,top,4 in,5 in,17,18,18,20,19,21,20,23,22,24,24
            """;
    /// How deep the probe went in the upper step, eighths of an inch.
    private static final String PROBE = """
            member,face,along,across,2021-04-17,2022-04-16,2023-04-15,2024-04-20,2025-04-19,2026-04-18
            n-tread,top,3 in,4 in,2,2,3,4,5,6
            n-tread,top,5 in,6 in,1,1,2,2,3,4
            n-tread,top,3 in,8 in,2,3,3,4,4,5
            n-tread,top,20 in,5 in,0,0,0,0,0,0
            """;
    private static final String SEEN_SOUTH = """
            sign,seen,member,left,above,words
            gutter-full,yes,,8',8' 6",packed with leaves
            gutter-overflows,yes,,8',8' 6",over the front in steady rain
            stain-behind-gutter,yes,s-fascia,8',8' 2",
            sill-flat,yes,s-sill,7' 6",2' 8",
            joint-open,yes,s-sill,6',2' 9",a card goes in beneath the left casing
            end-grain-bare,yes,s-sill,6',2' 8",
            sill-checks,no,s-sill,7' 6",2' 8",
            dirt-band,yes,s-corner,2 in,8 in,
            splash-seen,yes,s-corner,2 in,8 in,
            peeling-at-base,yes,s-corner,2 in,8 in,
            plants-against-wall,no,,8',1',
            """;
    private static final String SEEN_NORTH = """
            sign,seen,member,left,above,words
            water-stands-on-floor,yes,n-tread,7',8 in,a puddle after rain
            end-grain-bare,yes,n-tread,6' 3",8 in,
            splash-seen,no,,8',1',
            """;
    /// After the gutter was put right.
    private static final String SEEN_LATER = """
            sign,seen,member,left,above,words
            gutter-full,no,,8',8' 6",clear
            gutter-overflows,no,,8',8' 6",watched in hard rain
            joint-open,yes,s-sill,6',2' 9",the card still goes in
            peeling-at-base,yes,s-corner,2 in,8 in,
            peeling-below-window,yes,s-sill,7',2' 6",
            """;

    static List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        List<String> walks = List.of(Csv.read(METER).header().subList(4, 15).toArray(String[]::new));
        for (String walk : walks) {
            Walker walker = new Walker("phone-1", "A. Surveyor", Instant.parse(walk + "T14:00:00Z"), LocalDate.parse(walk).toEpochDay());
            if (walk.equals(walks.getFirst())) describe(walker);
            meter(walker, walk);
            probe(walker, walk);
            if (walk.equals("2022-11-05") || walk.equals("2025-11-08")) sightings("south", SEEN_LATER).forEach(walker::write);
            all.addAll(walker.entries());
            for (var work : works().entrySet()) if (next(walks, walk).filter(day -> work.getKey().isBefore(day)).isPresent() && work.getKey().isAfter(LocalDate.parse(walk))) {
                Walker carpenter = new Walker("desk-1", "B. Carpenter", work.getKey().atTime(17, 0).toInstant(ZoneOffset.UTC), work.getKey().toEpochDay());
                work.getValue().forEach(carpenter::write);
                all.addAll(carpenter.entries());
            }
        }
        return List.copyOf(all);
    }

    private static Optional<LocalDate> next(List<String> walks, String walk) {
        int at = walks.indexOf(walk);
        return at + 1 < walks.size() ? Optional.of(LocalDate.parse(walks.get(at + 1))) : Optional.empty();
    }

    private static void describe(Walker walker) {
        walker.write(new Building("wash-house", "A wash house after five years (invented)", "An invented building: every measure, reading, sighting and piece of work was made up to try the program out.", 1894,
                Optional.of(Quantity.read("3.5 in/h", Kind.RAIN)), Optional.of(Quantity.read("30 psf", Kind.STRESS)), months(DemoHouse.MONTHS)));
        var gutter = new Side.Gutter(Side.GutterShape.HALF_ROUND, length("5 in"), Optional.empty(), perhaps("1/16in/ft", Kind.FALL), List.of(downspout("15'", "3 in", "", Side.Empties.SPLASH_BLOCK, "4'")));
        var eave = new Side.RoofEdge("main", Side.Edge.EAVE, length("0 in"), length("16'"), length("8' 6\""), length("10 in"), Optional.empty(), Optional.empty(), perhaps("8'", Kind.LENGTH), perhaps("8/12", Kind.PITCH),
                Optional.of(gutter));
        walker.write(new Side("south", "South side", Quantity.read("180deg", Kind.ANGLE), length("16'"), List.of(eave), new Side.Ground(Side.Surface.SOIL, perhaps("1/4in/ft", Kind.FALL), perhaps("4 in", Kind.LENGTH)),
                Optional.empty(), List.of(window("6'", "2' 10\"", "2' 8\"", "4'"))));
        members("south", MEMBERS_SOUTH).forEach(walker::write);
        sightings("south", SEEN_SOUTH).forEach(walker::write);
        walker.write(new Side("north", "North side", Quantity.read("0deg", Kind.ANGLE), length("16'"), List.of(), new Side.Ground(Side.Surface.GRAVEL, perhaps("1/2in/ft", Kind.FALL), perhaps("9 in", Kind.LENGTH)),
                Optional.empty(), List.of(opening(Side.OpeningKind.DOOR, "6' 4\"", "12 in", "2' 8\"", "6' 8\""))));
        members("north", MEMBERS_NORTH).forEach(walker::write);
        sightings("north", SEEN_NORTH).forEach(walker::write);
    }

    private static void meter(Walker walker, String walk) {
        for (Csv.Row row : Csv.read(METER).rows())
            walker.write(new MoistureReading(spot(row), Quantity.read(row.get(walk) + "%", Kind.PERCENT), Optional.of(Quantity.read(walk.contains("-04-") ? "58F" : "50F", Kind.TEMPERATURE)), Optional.empty()));
    }

    private static void probe(Walker walker, String walk) {
        Csv csv = Csv.read(PROBE);
        if (!csv.header().contains(walk)) return;
        for (Csv.Row row : csv.rows()) walker.write(new ProbeReading(spot(row), length(row.get(walk) + "/8 in"), length("1-1/2 in"), false));
    }

    private static Spot spot(Csv.Row row) { return new Spot(row.get("member"), Choice.of(Member.Face.class, row.get("face")), length(row.get("along")), length(row.get("across"))); }

    private static SortedMap<LocalDate, List<WorkDone>> works() {
        var works = new TreeMap<LocalDate, List<WorkDone>>();
        LocalDate first = LocalDate.of(2021, 6, 12), gravel = LocalDate.of(2022, 6, 18);
        works.put(first, List.of(
                new WorkDone(Done.STOP_WATER, first, "south", Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("gutter-clogged"), "", Optional.empty(), Optional.empty(), Optional.of(3.0), Optional.empty(),
                        "cleared, flushed, screened"),
                new WorkDone(Done.DUTCHMAN, first, "south", Optional.of("s-sill"), perhaps("0 in", Kind.LENGTH), perhaps("8 in", Kind.LENGTH), Optional.of("sill-holds-water"), "", Optional.empty(),
                        Optional.of(new Coating(Film.OIL_PAINT, 1, 2, false, false, perhaps("17%", Kind.PERCENT), perhaps("68F", Kind.TEMPERATURE), perhaps("55%", Kind.PERCENT))), Optional.of(6.0), Optional.empty(),
                        "patched and planed to a fall"),
                new WorkDone(Done.RECOAT, first, "south", Optional.of("s-fascia"), Optional.empty(), Optional.empty(), Optional.empty(), "", Optional.empty(),
                        Optional.of(new Coating(Film.OIL_PAINT, 1, 2, true, true, perhaps("14%", Kind.PERCENT), perhaps("68F", Kind.TEMPERATURE), perhaps("55%", Kind.PERCENT))), Optional.of(4.0), Optional.empty(), "")));
        works.put(gravel, List.of(new WorkDone(Done.STOP_WATER, gravel, "south", Optional.of("s-corner"), Optional.empty(), Optional.empty(), Optional.of("splash-from-ground"), "", Optional.empty(), Optional.empty(),
                Optional.of(5.0), Optional.empty(), "a bed of gravel along the corner")));
        return works;
    }
}
