package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.strength.Combined;
import sillwright.wood.strength.Duration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// The station where most is used up, beside the one where least is left.
@DisplayNameGeneration(ReplaceUnderscores.class)
class GoverningTest {
    private static final double[] NONE = {0};

    private static Quantity q(String text) { return Quantity.read(text, Kind.LENGTH); }

    private static Member member(MemberKind kind, Member.Run run, String width, String depth, String length) {
        return new Member("m", "south", kind, "m", Member.Role.BEARS_LOAD, "douglas-fir-coast", run, q(width), q(depth), q(length), q("0in"), q("2ft"), Optional.empty(),
                Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.FAILING, Member.Contact.NONE);
    }

    private static final Member JOIST = member(MemberKind.JOIST, Member.Run.OUTWARD, "3-1/2in", "9-1/4in", "10ft");
    private static final Demand LOAD = Demand.typed(Unit.POUND_PER_FOOT.toOwn(150), Duration.NORMAL);

    private static Section bottomLost(Member of, double mm) { return Section.rectangle(0, of.widthMm(), mm, of.depthMm()); }

    /// Statics: a beam under an even load is bent at a quarter of its span three quarters as much as at the middle, so that the same loss uses up three quarters as much there;
    /// 15 % of the depth gone near the end is then less than 10 % gone at the middle, though less is left.
    @Test
    void a_beam_is_governed_by_the_middle_where_more_is_lost_near_its_end() {
        Stations use = Capacity.stations(JOIST, LOAD).orElseThrow();
        double span = JOIST.lengthMm(), d = JOIST.depthMm();
        assertEquals(0.75 * use.at(span / 2, bottomLost(JOIST, 0.1 * d)).share(), use.at(span / 4, bottomLost(JOIST, 0.1 * d)).share(), 1e-12);
        assertEquals(Governing.By.BENDING, use.at(span / 2, bottomLost(JOIST, 0.1 * d)).by());
        double[] stations = {0.1 * span, 0.5 * span};
        Governing at = Governing.of(use, stations, _ -> new Section[] {bottomLost(JOIST, 0.15 * d), bottomLost(JOIST, 0.1 * d)}, 20, SectionLeft::whole);
        assertEquals(0.5 * span, at.stationMm());
        assertEquals(at.stationMm(), at.left().orElseThrow().stationMm(), "and there it is drawn");
        assertEquals(use.at(0.5 * span, bottomLost(JOIST, 0.1 * d)).share(), at.utilisation().median(), 1e-12);
        Governing whole = Governing.of(use, new double[] {0.1 * span}, _ -> new Section[] {bottomLost(JOIST, 0.02 * d)}, 20, SectionLeft::whole);
        assertEquals(0.5 * span, whole.stationMm(), "where hardly anything is lost near the end the sound middle has most to do");
        assertEquals(use.whole().share(), whole.utilisation().high(), 1e-12);
        assertEquals(Optional.empty(), whole.left());
    }

    /// By hand: 150 lb/ft on 10 ft leaves 750 lb at each end, on 1-1/2 in of the sound width; NDS Fc⊥ of Douglas Fir-Larch 625 psi, wet 0.67.
    @Test
    void a_beam_whose_end_has_gone_soft_is_governed_by_what_it_sits_on() {
        Stations use = Capacity.stations(JOIST, LOAD).orElseThrow();
        Section end = Section.rectangle(0, JOIST.widthMm() * 0.2, 0, JOIST.depthMm());
        Governing.Use at = use.at(20, end);
        assertEquals(Governing.By.BEARING, at.by());
        assertEquals(750 / (0.2 * 3.5 * 1.5) / (625 * 0.67), at.share(), 1e-6);
        assertEquals(Governing.By.SHEAR, use.at(100, bottomLost(JOIST, 0.6 * JOIST.depthMm())).by());
    }

    /// The post of the figure `column`: a loss at its middle is the loss of the whole height; at its foot it is pressed and bent, and does not buckle.
    @ParameterizedTest
    @CsvSource({"0.5,BUCKLING", "0.3,BUCKLING", "0.2,CRUSHING", "0.01,CRUSHING", "0.99,CRUSHING"})
    void a_post_is_governed_by_buckling_only_in_the_middle_of_its_height(double share, Governing.By by) {
        Member post = member(MemberKind.POST, Member.Run.UPRIGHT, "3-1/2in", "3-1/2in", "9ft");
        Demand load = Demand.typed(Unit.POUND.toOwn(3000), Duration.SNOW);
        Stations use = Capacity.stations(post, load).orElseThrow();
        Section rest = Section.rectangle(0, post.widthMm() - 20, 0, post.depthMm());
        Governing.Use at = use.at(share * post.lengthMm(), rest);
        assertEquals(by, at.by());
        Section.Kept kept = Section.left(post.widthMm(), post.depthMm(), 0, 0, 0, 20);
        double everywhere = Capacity.of(post, new SectionLeft(100, 0, 0, 0, 20, kept.area(), kept.sx(), kept.sy(), kept.shiftXMm(), kept.shiftYMm(), kept.area()), false, load).orElseThrow().utilisation().median();
        if (by == Governing.By.BUCKLING) assertEquals(everywhere, at.share(), 1e-12);
        else assertTrue(at.share() < everywhere && at.share() > 3000 / (3.5 * (3.5 - 20 / 25.4)) / 2000, at.toString());
        assertTrue(use.at(share * post.lengthMm(), new Section(0, 0, 0, 0, 0, 0, 0, 0, 0, 0)).share() == Combined.BEYOND);
    }

    /// A draw that is softer uses up more, and the interval goes from the soundest draw to the softest.
    @Test
    void the_interval_comes_from_the_draws() {
        Stations use = Capacity.stations(JOIST, LOAD).orElseThrow();
        double middle = JOIST.lengthMm() / 2, d = JOIST.depthMm();
        Governing at = Governing.of(use, new double[] {middle}, draw -> new Section[] {bottomLost(JOIST, d * draw / 400)}, 200, SectionLeft::whole);
        assertEquals(use.at(middle, bottomLost(JOIST, d * 0.05 * 0.5)).share(), at.utilisation().low(), 0.02 * at.utilisation().low());
        assertEquals(use.at(middle, bottomLost(JOIST, d * 0.95 * 0.5)).share(), at.utilisation().high(), 0.02 * at.utilisation().high());
        assertTrue(Capacity.of(JOIST, at, Optional.of(at.likely()), false, LOAD).orElseThrow().governs(Units.US).orElseThrow().contains("bending"));
    }

    /// Slow twin: strips against the exact section of the same outline, its largest piece where it is parted.
    @Test
    void strips_leave_what_their_outline_leaves() {
        long seed = 71;
        var random = new Random(seed);
        int parted = 0;
        for (int i = 0; i < 400; i++) {
            double w = 60 + 100 * random.nextDouble(), d = 60 + 100 * random.nextDouble(), reach = 0.2 + 0.6 * random.nextDouble();
            int across = 1 + random.nextInt(5), up = 1 + random.nextInt(5);
            double[] front = depths(random, across, reach * d), back = random.nextBoolean() ? NONE : depths(random, across, reach * d), left = depths(random, up, reach * w),
                    right = random.nextBoolean() ? NONE : depths(random, up, reach * w);
            SoundSection exact = SoundSection.of(w, d, profile(w, front), profile(w, back), profile(d, left), profile(d, right));
            Strips strips = new Strips(w, d, front, back, left, right);
            String say = "seed " + seed + ", draw " + i;
            assertEquals(exact.areaKept() * w * d, strips.areaMm2(), 1e-6 * w * d, say);
            if (exact.parted()) parted++;
            Section one = exact.pieces().isEmpty() ? new Section(0, 0, 0, 0, 0, 0, 0, 0, 0, 0) : exact.pieces().getFirst(), other = strips.largest();
            assertEquals(one.areaMm2(), other.areaMm2(), 1e-6 * w * d, say);
            if (one.areaMm2() < 1 || exact.pieces().size() > 1 && exact.pieces().get(1).areaMm2() > 0.999 * one.areaMm2()) continue;
            assertEquals(one.ixMm4(), other.ixMm4(), 1e-9 * Math.pow(w + d, 4), say);
            assertEquals(one.iyMm4(), other.iyMm4(), 1e-9 * Math.pow(w + d, 4), say);
            assertEquals(one.ixyMm4(), other.ixyMm4(), 1e-9 * Math.pow(w + d, 4), say);
            assertEquals(one.xMm(), other.xMm(), 1e-6, say);
            assertEquals(one.backMm(), other.backMm(), 1e-6, say);
        }
        assertTrue(parted > 20, parted + " parted");
    }

    private static double[] depths(Random random, int count, double most) {
        return IntStream.range(0, count).mapToDouble(_ -> random.nextInt(3) == 0 ? 0 : most * random.nextDouble()).toArray();
    }

    private static FaceProfile profile(double across, double[] depths) { return FaceProfile.strips(across, Arrays.stream(depths).boxed().toList()); }
}
