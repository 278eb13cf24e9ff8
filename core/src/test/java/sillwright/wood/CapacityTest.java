package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.strength.Combined;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Grade;
import sillwright.wood.strength.UnitLoads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CapacityTest {
    private static Quantity q(String text) { return Quantity.read(text, Kind.LENGTH); }

    private static Member member(MemberKind kind, Member.Run run, String species, String width, String depth, String length) {
        return new Member("m-1", "south", kind, "porch post 1", Member.Role.BEARS_LOAD, species, run, q(width), q(depth), q(length), q("0in"), q("2ft"), Optional.empty(),
                Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.FAILING, Member.Contact.NONE);
    }

    private static final Member POST = member(MemberKind.POST, Member.Run.UPRIGHT, "douglas-fir-coast", "5-1/2in", "5-1/2in", "8ft");

    private static SectionLeft lost(Member of, double front, double back, double left, double right, double keptLow) {
        Section.Kept kept = Section.left(of.widthMm(), of.depthMm(), front, back, left, right);
        return new SectionLeft(100, front, back, left, right, kept.area(), kept.sx(), kept.sy(), kept.shiftXMm(), kept.shiftYMm(), keptLow);
    }

    private static Demand pounds(double pounds) { return Demand.typed(Unit.POUND.toOwn(pounds), Duration.SNOW); }

    /// The post of the figure `column`, whose values were worked by an independent program (computed: C25), with an inch gone from one face for sure.
    @Test
    void a_post_with_a_face_gone_uses_what_was_computed() {
        SectionLeft left = lost(POST, 0, 0, 0, 25.4, 4.5 / 5.5);
        Capacity capacity = Capacity.of(POST, left, false, pounds(6000), Grade.NO1, false).orElseThrow();
        assertEquals(0.320422, capacity.utilisation().median(), 0.5e-6);
        assertEquals(0.320422, capacity.utilisation().high(), 0.5e-6);
        assertEquals(0.320422, capacity.utilisation().low(), 0.5e-6);
        assertEquals(Capacity.Verdict.BEARS, capacity.verdict());
        assertTrue(capacity.alert().isEmpty());
        assertTrue(capacity.assumptions().stream().anyMatch(said -> said.contains("No.1") && said.contains("grade of old wood is not known")), capacity.assumptions().toString());
        assertTrue(capacity.words().contains("0.32"), capacity.words());
    }

    @Test
    void what_may_be_worse_than_likely_widens_the_interval_and_past_one_asks_for_a_shore() {
        SectionLeft likely = lost(POST, 0, 0, 0, 25.4, 0.3);
        Capacity capacity = Capacity.of(POST, likely, false, pounds(6000)).orElseThrow();
        assertTrue(capacity.utilisation().low() < capacity.utilisation().median() && capacity.utilisation().median() < 1 && capacity.utilisation().high() > 1, capacity.utilisation().toString());
        assertEquals(Capacity.Verdict.IN_DOUBT, capacity.verdict());
        assertTrue(capacity.alert().orElseThrow().contains("prop") && capacity.alert().get().contains("licensed engineer"));
        Capacity heavy = Capacity.of(POST, likely, false, pounds(40_000)).orElseThrow();
        assertEquals(Capacity.Verdict.OVERLOADED, heavy.verdict());
        Capacity hollow = Capacity.of(POST, SectionLeft.whole(100), true, pounds(10)).orElseThrow();
        assertEquals(Capacity.Verdict.HOLLOW, hollow.verdict());
        assertTrue(hollow.alert().isPresent());
    }

    @Test
    void nothing_left_is_beyond_bounds_and_a_sound_member_is_as_good_as_its_figure() {
        Capacity gone = Capacity.of(POST, Optional.empty(), Optional.empty(), Optional.empty(), false, pounds(100), Grade.NO2, true).orElseThrow();
        assertEquals(Combined.BEYOND, gone.utilisation().median());
        assertEquals(Capacity.Verdict.OVERLOADED, gone.verdict());
        Capacity sound = Capacity.of(POST, SectionLeft.whole(100), false, pounds(6000), Grade.NO1, false).orElseThrow();
        assertEquals(0.219576, sound.utilisation().high(), 0.5e-6);
        Capacity doubtful = Capacity.of(POST, new SectionLeft(100, 0, 0, 0, 0, 1, 1, 1, 0, 0, 0.5), false, pounds(6000), Grade.NO1, false).orElseThrow();
        assertEquals(0.219576, doubtful.utilisation().median(), 0.5e-6);
        assertTrue(doubtful.utilisation().high() > 2 * 0.219576);
    }

    @Test
    void wet_wood_of_a_lower_grade_and_a_weaker_species_uses_up_more() {
        SectionLeft left = lost(POST, 10, 0, 0, 20, 0.6);
        double dry = Capacity.of(POST, left, false, pounds(6000), Grade.NO1, false).orElseThrow().utilisation().median();
        double wet = Capacity.of(POST, left, false, pounds(6000), Grade.NO1, true).orElseThrow().utilisation().median();
        double low = Capacity.of(POST, left, false, pounds(6000), Grade.NO2, true).orElseThrow().utilisation().median();
        Member unknown = member(MemberKind.POST, Member.Run.UPRIGHT, "not known", "5-1/2in", "5-1/2in", "8ft");
        Capacity careful = Capacity.of(unknown, left, false, pounds(6000)).orElseThrow();
        assertTrue(dry < wet && wet < low && low < careful.utilisation().median());
        assertTrue(careful.assumptions().stream().anyMatch(said -> said.contains("stands in")), careful.assumptions().toString());
    }

    @Test
    void a_level_beam_bends_over_its_upright_side_which_is_its_width_and_a_joist_over_its_depth() {
        Member beam = member(MemberKind.BEAM, Member.Run.LEVEL, "douglas-fir-coast", "9-1/4in", "3-1/2in", "8ft");
        Member joist = member(MemberKind.JOIST, Member.Run.OUTWARD, "douglas-fir-coast", "3-1/2in", "9-1/4in", "8ft");
        Demand load = Demand.typed(Unit.POUND_PER_FOOT.toOwn(180), Duration.NORMAL);
        double one = Capacity.of(beam, SectionLeft.whole(0), false, load, Grade.NO2, false).orElseThrow().utilisation().median();
        assertEquals(one, Capacity.of(joist, SectionLeft.whole(0), false, load, Grade.NO2, false).orElseThrow().utilisation().median(), 1e-12);
        double figure = sillwright.Figures.named("beam").answer(Map.of("species", "douglas-fir-coast", "grade", "no2", "width", "3.5in", "depth", "9.25in", "span", "8ft", "load", "180lb/ft")).own("utilisation");
        assertEquals(figure, one, 1e-12);
        // an inch off the bottom: the left of a level member's section, the front of an outward one's
        assertEquals(Capacity.of(beam, lost(beam, 0, 0, 25.4, 0, 8.25 / 9.25), false, load).orElseThrow().utilisation().median(),
                Capacity.of(joist, lost(joist, 25.4, 0, 0, 0, 8.25 / 9.25), false, load).orElseThrow().utilisation().median(), 1e-12);
    }

    @Test
    void a_sill_bears_on_its_sound_width_across_the_grain() {
        Member sill = member(MemberKind.SILL, Member.Run.LEVEL, "douglas-fir-coast", "6in", "8in", "12ft");
        double perMm = Unit.POUND_PER_FOOT.toOwn(1200);
        Capacity capacity = Capacity.of(sill, lost(sill, 50.8, 0, 0, 0, 0.75), false, Demand.typed(perMm, Duration.NORMAL), Grade.NO2, true).orElseThrow();
        assertEquals(100.0 / 6 / (625 * 0.67), capacity.utilisation().median(), 1e-9, "100 lb on each inch, 6 in sound, 625 psi wet");
    }

    @Test
    void what_a_member_usually_carries_is_told_by_its_kind_and_the_rest_is_left_alone() {
        Demand usual = Demand.usual(POST, Demand.Layout.USUAL, UnitLoads.usual()).orElseThrow();
        assertEquals(8 * 5 * 45.0, Unit.POUND.fromOwn(usual.loads().stream().mapToDouble(load -> load.load()).max().orElseThrow()), 1e-6, "8 ft by half of 8 ft and 1 ft over, 15 and 30 psf");
        assertTrue(usual.said().contains("assumed"));
        for (MemberKind kind : MemberKind.values()) {
            Member member = member(kind, Member.Run.LEVEL, "pine-eastern-white", "6in", "6in", "6ft");
            Optional<Demand> demand = Demand.usual(member, Demand.Layout.USUAL, UnitLoads.usual());
            boolean bears = List.of(MemberKind.BEAM, MemberKind.JOIST, MemberKind.STRINGER, MemberKind.SILL, MemberKind.COLUMN_BASE, MemberKind.PLINTH).contains(kind);
            assertEquals(bears, Capacity.of(member, SectionLeft.whole(0), false, demand.orElse(pounds(100))).isPresent(), kind.name());
            if (kind == MemberKind.FASCIA || kind == MemberKind.FLOORBOARD) assertTrue(demand.isEmpty());
        }
        Member base = member(MemberKind.COLUMN_BASE, Member.Run.LEVEL, "pine-eastern-white", "2-1/2in", "7in", "7in");
        Capacity seat = Capacity.of(base, SectionLeft.whole(0), false, pounds(1440), Grade.NO2, false).orElseThrow();
        assertEquals(1440.0 / 49 / 350, seat.utilisation().median(), 1e-9);
        assertFalse(seat.basis().isEmpty());
        assertEquals(0.96, Unit.SQUARE_FOOT.fromOwn(seat.shore().padSideMm() * seat.shore().padSideMm()), 1e-9, "1440 lb on 1500 psf");
    }

    @Test
    void more_loss_never_raises_what_a_member_bears() {
        long seed = 61;
        var random = new Random(seed);
        for (int i = 0; i < 4_000; i++) {
            Member member = random.nextBoolean() ? POST : member(MemberKind.BEAM, Member.Run.LEVEL, "hemlock-western", "190mm", "140mm", "3m");
            double w = member.widthMm(), d = member.depthMm();
            double front = random.nextDouble() * d / 4, left = random.nextDouble() * w / 4;
            Demand load = member == POST ? pounds(2000 + random.nextDouble() * 6000) : Demand.typed(1 + random.nextDouble() * 5, Duration.NORMAL);
            double[] even = {front, front, left, left};
            double before = use(member, even, load);
            double by = random.nextDouble() * 10;
            double[] deeper = {front + by, front + by, left + by, left + by};
            assertTrue(use(member, deeper, load) >= before, "seed " + seed + ", draw " + i);
            double[] one = {random.nextDouble() * d / 2, 0, 0, 0}, more = {one[0] + by, 0, 0, 0};
            assertTrue(use(member, more, load) >= use(member, one, load) * (1 - 1e-12), "one face: seed " + seed + ", draw " + i);
        }
    }

    private static double use(Member member, double[] lost, Demand load) {
        return Capacity.of(member, lost(member, lost[0], lost[1], lost[2], lost[3], 1e-3), false, load).orElseThrow().utilisation().median();
    }

    @Test
    void metric_and_inches_give_the_same_answer() {
        long seed = 67;
        var random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            double width = 4 + random.nextInt(60) / 8.0, depth = 4 + random.nextInt(60) / 8.0, feet = 3 + random.nextInt(80) / 8.0, right = random.nextInt(20) / 8.0, pounds = 200 + random.nextInt(8000);
            Map<String, String> us = Map.of("species", "pine-eastern-white", "grade", "no2", "width", width + "in", "depth", depth + "in", "length", feet + "ft", "right", right + "in", "load", pounds + "lb");
            Map<String, String> si = Map.of("species", "pine-eastern-white", "grade", "no2", "width", width * 25.4 + "mm", "depth", depth * 25.4 + "mm", "length", feet * 0.3048 + "m",
                    "right", right * 25.4 + "mm", "load", pounds * 4.4482216152605 / 1000 + "kN");
            var one = sillwright.Figures.named("column").answer(us);
            var other = sillwright.Figures.named("column").answer(si);
            for (String result : List.of("Cp", "allowable", "capacity", "utilisation")) assertEquals(one.own(result), other.own(result), 1e-9 * Math.max(1e-6, one.own(result)), result + ", seed " + seed + ", draw " + i);
        }
    }
}
