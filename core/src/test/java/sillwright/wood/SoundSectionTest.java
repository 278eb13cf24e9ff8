package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Kind;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SoundSectionTest {
    private static final FaceProfile SOUND = FaceProfile.sound(5.5);

    private static void near(double expected, double value, int decimals) { assertEquals(expected, value, 0.5 * Math.pow(10, -decimals) + 1e-12); }

    private static FaceProfile steps(double... depths) { return FaceProfile.strips(5.5, Arrays.stream(depths).boxed().toList()); }

    /// Worked by an independent program (computed: C07); the unit is the inch as a bare number.
    @Test
    void a_corner_two_wide_and_three_high_leaves_the_l_that_was_computed() {
        FaceProfile back = steps(0, 0, 0, 0, 0, 0, 0, 3, 3, 3, 3), right = steps(0, 0, 0, 0, 0, 2, 2, 2, 2, 2, 2);
        for (SoundSection sound : List.of(SoundSection.of(5.5, 5.5, SOUND, back, SOUND, SOUND), SoundSection.of(5.5, 5.5, SOUND, SOUND, SOUND, right),
                SoundSection.of(5.5, 5.5, SOUND, back, SOUND, right))) {
            Section left = sound.together().orElseThrow();
            near(24.25, left.areaMm2(), 6);
            near(2.31701, left.xMm(), 5);
            near(2.44072, left.yMm(), 5);
            near(60.0606, left.ixMm4(), 4);
            near(51.3338, left.iyMm4(), 4);
            near(-16.3724, left.ixyMm4(), 4);
            near(72.6411, left.greatestMm4(), 4);
            near(38.7533, left.leastMm4(), 4);
            near(16.1275, left.sRightMm3(), 4);
            near(19.6323, left.sBackMm3(), 4);
            assertFalse(sound.parted());
            near(24.25 / 30.25, sound.areaKept(), 6);
        }
    }

    /// Worked by an independent program (computed: C10).
    @Test
    void a_slanting_loss_is_the_trapezoid_that_was_computed() {
        var right = new FaceProfile(List.of(new FaceProfile.At(0, 0), new FaceProfile.At(5.5, 2)));
        Section left = SoundSection.of(5.5, 5.5, SOUND, SOUND, SOUND, right).together().orElseThrow();
        near(24.75, left.areaMm2(), 6);
        near(2.28704, left.xMm(), 5);
        near(61.3636, left.ixMm4(), 4);
        near(45.8567, left.iyMm4(), 4);
        near(-11.1570, left.ixyMm4(), 4);
    }

    @Test
    void even_losses_leave_the_rectangle_of_the_closed_form_however_finely_they_are_given() {
        long seed = 51;
        var random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            double w = 40 + random.nextDouble() * 300, d = 40 + random.nextDouble() * 300;
            double front = random.nextDouble() * d / 2.1, back = random.nextDouble() * d / 2.1, left = random.nextDouble() * w / 2.1, right = random.nextInt(3) == 0 ? 0 : random.nextDouble() * w / 2.1;
            int n = 1 + random.nextInt(8);
            Section even = Section.left(w, d, front, back, left, right).rest();
            Section exact = SoundSection.of(w, d, FaceProfile.strips(w, Collections.nCopies(n, front)), FaceProfile.sloping(w, Collections.nCopies(n, back)),
                    FaceProfile.even(d, left), FaceProfile.sloping(d, Collections.nCopies(n, right))).together().orElseThrow();
            String say = "seed " + seed + ", draw " + i;
            assertEquals(even.areaMm2(), exact.areaMm2(), 1e-6, say);
            assertEquals(even.ixMm4(), exact.ixMm4(), 1e-8 * Math.pow(w + d, 4), say);
            assertEquals(even.iyMm4(), exact.iyMm4(), 1e-8 * Math.pow(w + d, 4), say);
            assertEquals(even.xMm(), exact.xMm(), 1e-6, say);
            assertEquals(even.frontMm(), exact.frontMm(), 1e-6, say);
            assertEquals(even.rightMm(), exact.rightMm(), 1e-6, say);
        }
    }

    /// The slow twin: sound points of a fine grid counted one by one.
    @Test
    void any_softness_leaves_what_counting_points_says() {
        long seed = 53;
        var random = new Random(seed);
        int parted = 0, empty = 0, asCounted = 0, n = 400;
        for (int i = 0; i < 120; i++) {
            double w = 60 + random.nextDouble() * 200, d = 60 + random.nextDouble() * 200, reach = 0.3 + random.nextDouble() * 0.5;
            FaceProfile front = profile(random, w, reach * d), back = profile(random, w, reach * d), left = profile(random, d, reach * w), right = profile(random, d, reach * w);
            SoundSection exact = SoundSection.of(w, d, front, back, left, right);
            double cell = w * d / n / n, area = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
            boolean[][] kept = new boolean[n][n];
            for (int a = 0; a < n; a++)
                for (int b = 0; b < n; b++) {
                    double px = (a + 0.5) * w / n, py = (b + 0.5) * d / n;
                    kept[a][b] = py > front.depthAtMm(px) && py < d - back.depthAtMm(px) && px > left.depthAtMm(py) && px < w - right.depthAtMm(py);
                    if (!kept[a][b]) continue;
                    area += cell;
                    x += px * cell;
                    y += py * cell;
                    xx += py * py * cell;
                    yy += px * px * cell;
                    xy += px * py * cell;
                }
            String say = "seed " + seed + ", draw " + i;
            double whole = w * d, most = whole * Math.max(w, d) * Math.max(w, d) / 12;
            assertEquals(area / whole, exact.areaKept(), 0.006, say);
            if (exact.together().isEmpty()) { empty++; continue; }
            Section section = exact.together().get();
            assertEquals(section.areaMm2(), exact.pieces().stream().mapToDouble(Section::areaMm2).sum(), 1e-6, say);
            if (area > 0.05 * whole) {
                assertEquals(x / area, section.xMm(), 0.02 * w, say);
                assertEquals(y / area, section.yMm(), 0.02 * d, say);
                assertEquals(xx - y * y / area, section.ixMm4(), 0.01 * most, say);
                assertEquals(yy - x * x / area, section.iyMm4(), 0.01 * most, say);
                assertEquals(xy - x * y / area, section.ixyMm4(), 0.01 * most, say);
            }
            if (exact.parted()) parted++;
            if (exact.pieces().stream().filter(piece -> piece.areaMm2() > 0.003 * whole).count() == islands(kept, (int) (0.003 * n * n))) asCounted++;
        }
        assertTrue(parted > 10 && empty < 40, parted + " parted, " + empty + " empty");
        assertTrue(asCounted >= 0.95 * (120 - empty), asCounted + " hang together as counted: a neck thinner than the grid may look parted, rarely");
    }

    private static FaceProfile profile(Random random, double across, double most) {
        List<Double> depths = new ArrayList<>();
        int n = 1 + random.nextInt(7);
        for (int i = 0; i < n; i++) depths.add(random.nextInt(3) == 0 ? 0 : random.nextDouble() * most);
        return random.nextBoolean() ? FaceProfile.strips(across, depths) : FaceProfile.sloping(across, depths);
    }

    /// Patches of kept cells that hang together by their sides, of more than so many cells.
    private static int islands(boolean[][] kept, int speck) {
        int n = kept.length, islands = 0;
        boolean[][] seen = new boolean[n][n];
        for (int a = 0; a < n; a++)
            for (int b = 0; b < n; b++) {
                if (!kept[a][b] || seen[a][b]) continue;
                int size = 0;
                Deque<int[]> open = new ArrayDeque<>(List.of(new int[] {a, b}));
                seen[a][b] = true;
                while (!open.isEmpty()) {
                    int[] at = open.pop();
                    size++;
                    for (int[] by : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                        int c = at[0] + by[0], e = at[1] + by[1];
                        if (c < 0 || e < 0 || c >= n || e >= n || !kept[c][e] || seen[c][e]) continue;
                        seen[c][e] = true;
                        open.push(new int[] {c, e});
                    }
                }
                if (size > speck) islands++;
            }
        return islands;
    }

    @Test
    void softness_that_goes_through_parts_the_section_and_everywhere_leaves_nothing() {
        SoundSection through = SoundSection.of(100, 80, FaceProfile.strips(100, List.of(0.0, 45.0, 0.0, 0.0)), FaceProfile.strips(100, List.of(0.0, 40.0, 0.0, 0.0)),
                FaceProfile.sound(80), FaceProfile.sound(80));
        assertTrue(through.parted());
        assertEquals(List.of(4000.0, 2000.0), through.pieces().stream().map(piece -> (double) Math.round(piece.areaMm2())).toList());
        assertEquals(6000, through.together().orElseThrow().areaMm2(), 1e-6);
        SoundSection nothing = SoundSection.of(100, 80, FaceProfile.even(100, 40), FaceProfile.even(100, 40), FaceProfile.sound(80), FaceProfile.sound(80));
        assertTrue(nothing.together().isEmpty() && nothing.pieces().isEmpty());
        assertEquals(0, nothing.areaKept());
        assertTrue(SoundSection.of(100, 80, FaceProfile.even(100, 200), FaceProfile.sound(100), FaceProfile.sound(80), FaceProfile.sound(80)).together().isEmpty(), "deeper than it is thick");
    }

    @Test
    void softer_by_any_face_never_leaves_more() {
        long seed = 57;
        var random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double w = 100, d = 140;
            FaceProfile front = profile(random, w, 90), back = profile(random, w, 90), left = profile(random, d, 60), right = profile(random, d, 60);
            double by = random.nextDouble() * 8;
            FaceProfile deeper = new FaceProfile(front.points().stream().map(at -> new FaceProfile.At(at.acrossMm(), at.depthMm() + by)).toList());
            assertTrue(SoundSection.of(w, d, deeper, back, left, right).areaKept() <= SoundSection.of(w, d, front, back, left, right).areaKept() + 1e-12, "seed " + seed + ", draw " + i);
        }
    }

    @Test
    void the_maps_of_a_post_are_laid_on_the_faces_of_its_section() {
        Member post = member(MemberKind.POST, Member.Run.UPRIGHT), beam = member(MemberKind.BEAM, Member.Run.LEVEL);
        // one row of three columns along, two rows across: 20 mm soft at the first half of the face, 0 at the second, in the middle column
        DepthMap left = new DepthMap(Member.Face.LEFT, 3, 2, 3000, 140, 90, new double[] {0, 20, 0, 0, 20, 0}, new double[] {0, 30, 0, 0, 30, 0}, new double[6], List.of(), Interval.exactly(0));
        assertEquals(1, SoundSection.at(post, List.of(left), 100, false).areaKept(), 1e-12);
        assertEquals(70.0 / 90, SoundSection.at(post, List.of(left), 1500, false).areaKept(), 1e-12);
        assertEquals(60.0 / 90, SoundSection.at(post, List.of(left), 1500, true).areaKept(), 1e-12);
        assertEquals(20, SoundSection.at(post, List.of(left), 1500, false).together().orElseThrow().leftMm(), 1e-12);
        DepthMap bottom = new DepthMap(Member.Face.BOTTOM, 1, 2, 3000, 140, 90, new double[] {30, 10}, new double[] {30, 10}, new double[2], List.of(), Interval.exactly(0));
        Section left2 = SoundSection.at(beam, List.of(bottom), 5, false).together().orElseThrow();
        assertEquals(10, left2.leftMm(), 1e-12, "the bottom of a level member is the left of its section");
        assertTrue(left2.yMm() > 70, "softer toward the front");
    }

    private static Member member(MemberKind kind, Member.Run run) {
        Quantity none = Quantity.read("0mm", Kind.LENGTH);
        return new Member("m", "south", kind, "m", Member.Role.BEARS_LOAD, "pine-eastern-white", run, Quantity.read("90mm", Kind.LENGTH), Quantity.read("140mm", Kind.LENGTH),
                Quantity.read("3m", Kind.LENGTH), none, none, Optional.empty(), Member.EndGrain.BARE, Member.EndGrain.BARE, Member.Coat.NONE, Member.Contact.NONE);
    }
}
