package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Unit;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

/// What the records will not hold, each by the field that is named for it.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WalkRefusalsTest {
    private static void refused(String field, Executable making) { assertEquals(field, assertThrows(Refused.class, making).where()); }

    private static Quantity read(String text, Kind kind) { return Quantity.read(text, kind); }

    @Test
    void a_probe_reading_must_lie_within_its_reach() {
        Spot spot = spot("post", Member.Face.FRONT, "3 in", "1 in");
        Refused refused = assertThrows(Refused.class, () -> new ProbeReading(spot, mm("4-1/16 in"), mm("4 in"), false));
        assertEquals("depth: 4-1/16 in is not within the probe's reach of 4 in; read the depth again, or name the longer probe: reach=150mm", refused.getMessage());
        refused("depth", () -> new ProbeReading(spot, mm("-1 mm"), mm("4 in"), false));
        refused("reach", () -> new ProbeReading(spot, mm("0 in"), mm("0 in"), false));
        assertTrue(new ProbeReading(spot, mm("101.6 mm"), mm("4 in"), true).ranOut());
    }

    @Test
    void a_value_that_is_no_number_never_becomes_a_quantity() {
        assertThrows(Refused.class, () -> new Quantity(Double.NaN, Unit.MILLIMETRE, "NaN mm"));
        assertThrows(Refused.class, () -> new Quantity(Double.POSITIVE_INFINITY, Unit.MILLIMETRE, "inf mm"));
    }

    @Test
    void a_spot_lies_at_or_beyond_its_start() {
        refused("along", () -> spot("post", Member.Face.FRONT, "-1 in", "1 in"));
        refused("across", () -> spot("post", Member.Face.FRONT, "1 in", "-1 in"));
    }

    @Test
    void moisture_and_the_temperature_of_wood_have_limits() {
        Spot spot = spot("post", Member.Face.FRONT, "3 in", "1 in");
        refused("reading", () -> new MoistureReading(spot, read("151%", Kind.PERCENT), Optional.empty(), Optional.empty()));
        refused("wood", () -> new MoistureReading(spot, read("20%", Kind.PERCENT), Optional.of(read("180F", Kind.TEMPERATURE)), Optional.empty()));
        refused("pins", () -> new MoistureReading(spot, read("20%", Kind.PERCENT), Optional.empty(), Optional.of(mm("-1 in"))));
    }

    @Test
    void a_member_has_a_name_and_a_size_that_a_house_can_hold() {
        refused("id", () -> post("", "south"));
        refused("width", () -> sized("0 in", "3 in", "7 ft"));
        refused("width", () -> sized("7 ft", "3 in", "7 ft"));
        refused("depth", () -> sized("5 in", "-3 in", "7 ft"));
        refused("length", () -> sized("5 in", "3 in", "200 ft"));
    }

    private static Member sized(String width, String depth, String length) {
        Member post = post("post", "south");
        return new Member("post", "south", post.kind(), "", post.role(), post.species(), post.run(), mm(width), mm(depth), mm(length), mm("0 in"), mm("0 in"),
                Optional.empty(), post.startEnd(), post.farEnd(), post.coat(), post.contact());
    }

    @Test
    void a_side_looks_somewhere_and_is_some_length() {
        Side south = side("south");
        refused("id", () -> side(""));
        refused("bearing", () -> new Side("south", "", read("360deg", Kind.ANGLE), mm("24 ft"), List.of(), south.ground(), Optional.empty(), List.of()));
        refused("length", () -> new Side("south", "", read("0deg", Kind.ANGLE), mm("0 ft"), List.of(), south.ground(), Optional.empty(), List.of()));
        refused("lotLine", () -> new Side("south", "", read("0deg", Kind.ANGLE), mm("9 ft"), List.of(), south.ground(), Optional.of(mm("0 ft")), List.of()));
        refused("clearance", () -> new Side.Ground(Side.Surface.SOIL, Optional.empty(), Optional.of(mm("-2 in"))));
        refused("height", () -> new Side.Opening(Side.OpeningKind.WINDOW, mm("1 ft"), mm("2 ft"), mm("3 ft"), mm("0 ft")));
    }

    @Test
    void a_roof_edge_has_its_peak_above_it() {
        Optional<Quantity> none = Optional.empty();
        refused("peak", () -> new Side.RoofEdge("gable", Side.Edge.RAKE, mm("0 in"), mm("24 ft"), mm("18 ft"), mm("1 ft"), Optional.of(mm("18 ft")), none, none,
                none, Optional.empty()));
        refused("left", () -> new Side.RoofEdge("main", Side.Edge.EAVE, mm("-1 in"), mm("24 ft"), mm("18 ft"), mm("1 ft"), none, none, none, none,
                Optional.empty()));
        refused("size", () -> new Side.Downspout(mm("1 ft"), mm("0 in"), none, Side.Empties.AT_FOOT, none));
        refused("size", () -> new Side.Gutter(Side.GutterShape.OGEE, mm("0 in"), none, none, List.of()));
    }

    @Test
    void a_building_has_a_name_a_year_and_twelve_months_or_none() {
        refused("id", () -> new Building("", "a", "", 1890, Optional.empty(), Optional.empty(), List.of()));
        refused("yearBuilt", () -> new Building("a", "a", "", 188, Optional.empty(), Optional.empty(), List.of()));
        refused("months", () -> new Building("a", "a", "", 1890, Optional.empty(), Optional.empty(), Collections.nCopies(11, month("60F", "40F", 10, "70%"))));
        refused("designRain", () -> new Building("a", "a", "", 1890, Optional.of(read("0in/h", Kind.RAIN)), Optional.empty(), List.of()));
        assertEquals(10, month("60F", "40F", 10, "70%").meanC(), 1e-9);
    }

    @Test
    void a_month_has_its_low_below_its_high_and_no_more_days_than_a_month() {
        refused("meanLow", () -> month("40F", "60F", 10, "70%"));
        refused("rainDays", () -> month("60F", "40F", 32, "70%"));
        refused("rainDays", () -> month("60F", "40F", Double.NaN, "70%"));
        refused("humidity", () -> month("60F", "40F", 10, "101%"));
    }

    private static Building.Month month(String high, String low, double rainDays, String humidity) {
        return new Building.Month(read(high, Kind.TEMPERATURE), read(low, Kind.TEMPERATURE), mm("3 in"), rainDays, read(humidity, Kind.PERCENT),
                read("8mph", Kind.WIND), mm("0 in"));
    }

    @Test
    void an_entry_has_an_id_and_a_time_and_an_amendment_says_something_itself() {
        refused("id", () -> entry("", 1, building("a")));
        refused("at", () -> new Entry.Stamp(-1, 0));
        refused("instead", () -> new Body.Amended("r", new Body.Struck("q", "")));
        refused("instead", () -> new Body.Amended("r", new Body.Amended("q", building("a"))));
    }

    @Test
    void a_photo_lies_beside_its_survey_and_a_sighting_on_a_side() {
        for (String file : List.of("", "/etc/a.jpg", "../a.jpg", "photos\\a.jpg"))
            refused("file", () -> new Photo(file, "south", Optional.empty(), ""));
        refused("side", () -> sighting("", Sign.FUNGUS));
    }

    @Test
    void open_checks_are_counted_and_have_three_sizes() {
        Spot spot = spot("post", Member.Face.FRONT, "0 in", "1 in");
        refused("count", () -> new OpenChecks(spot, 0, mm("6 in"), mm("1/16 in"), mm("1/2 in")));
        refused("width", () -> new OpenChecks(spot, 3, mm("6 in"), mm("0 in"), mm("1/2 in")));
        refused("depth", () -> new OpenChecks(spot, 3, mm("6 in"), mm("1/16 in"), mm("0 in")));
        assertEquals(152.4, new OpenChecks(spot, 3, mm("6 in"), mm("1/16 in"), mm("1/2 in")).toMm(), 1e-9);
    }

    @Test
    void an_outline_has_three_places_in_order_and_goes_across() {
        Profile.Offset a = new Profile.Offset(mm("0 in"), mm("1/2 in")), b = new Profile.Offset(mm("1/2 in"), mm("3/8 in")), c = new Profile.Offset(mm("1 in"), mm("0 in"));
        refused("offsets", () -> new Profile("casing", "", List.of(a, b)));
        refused("offsets[2].across", () -> new Profile("casing", "", List.of(a, c, b)));
        refused("offsets[1]", () -> new Profile("casing", "", List.of(a, a, b)));
        refused("offsets", () -> new Profile("casing", "", List.of(a, new Profile.Offset(mm("0 in"), mm("1/4 in")), new Profile.Offset(mm("0 in"), mm("0 in")))));
        assertEquals(3, new Profile("casing", "", List.of(a, b, c)).offsets().size());
    }

    @Test
    void checks_past_the_member_are_set_aside_and_the_later_of_two_groups_stands() {
        Spot spot = spot("post", Member.Face.FRONT, "6 ft 8 in", "1 in"), here = spot("post", Member.Face.FRONT, "1 ft", "1 in");
        Survey survey = FieldBook.fold("", begunWith(entry("k1", 4, new OpenChecks(spot, 3, mm("6 in"), mm("1/16 in"), mm("1/2 in"))),
                entry("k2", 5, new OpenChecks(here, 3, mm("6 in"), mm("1/16 in"), mm("9 in"))),
                entry("k3", 6, new OpenChecks(here, 3, mm("6 in"), mm("1/16 in"), mm("1/2 in"))), entry("k4", 7, new OpenChecks(here, 5, mm("6 in"), mm("1/16 in"), mm("1/2 in"))),
                entry("k5", 8, new Profile("nobody", "", List.of(new Profile.Offset(mm("0 in"), mm("0 in")), new Profile.Offset(mm("1 in"), mm("1 in")), new Profile.Offset(mm("2 in"), mm("0 in")))))));
        assertEquals(List.of("length", "depth", "member"), survey.faults().stream().map(Fault::field).toList());
        assertEquals(List.of(5), survey.checksOn("post").stream().map(OpenChecks::count).toList());
    }

    @Test
    void a_word_that_is_none_of_a_list_is_refused_with_the_list_or_the_nearest_words() {
        assertTrue(assertThrows(Refused.class, () -> Choice.of(Member.Run.class, "uprigth")).mend().startsWith("use one of upright, level"));
        assertTrue(assertThrows(Refused.class, () -> Choice.of(Sign.class, "gutter-ful")).mend().contains("gutter-full"));
        for (Sign sign : Sign.values()) assertEquals(sign, Choice.of(Sign.class, Choice.word(sign)));
    }
}
