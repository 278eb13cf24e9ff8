package sillwright.wood;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Memo;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.ProbeReading;
import sillwright.walk.Spot;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DecayCalibrationTest {
    private static final double LENGTH = 900, ACROSS = 140, THROUGH = 140, REACH = 100;
    private static final int COLUMNS = 36, ROWS = 6;

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    static Member post() {
        return new Member("post", "south", MemberKind.POST, "post", Member.Role.BEARS_LOAD, "pine-eastern-white", Member.Run.UPRIGHT, mm(ACROSS), mm(THROUGH),
                mm(LENGTH), mm(0), mm(0), Optional.empty(), Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.NONE, Member.Contact.NONE);
    }

    /// A face whose latent depth is a draw of the field itself, its numbers drawn from what is taken before any reading.
    private record Truth(double[] latent, Feel feel) {
        static Truth draw(Random random) {
            double[] usual = Feel.USUAL.point(), width = {0.4, 0.7, 0.7, 0.7, 0.3}, point = new double[5];
            for (int i = 0; i < 5; i++) point[i] = usual[i] + width[i] * random.nextGaussian() * 0.7;
            Feel feel = Feel.USUAL.at(point);
            int cells = COLUMNS * ROWS;
            double[] x = new double[cells], y = new double[cells];
            for (int r = 0; r < ROWS; r++) for (int c = 0; c < COLUMNS; c++) {
                x[r * COLUMNS + c] = (c + 0.5) * LENGTH / COLUMNS;
                y[r * COLUMNS + c] = (r + 0.5) * ACROSS / ROWS;
            }
            double[][] strays = DecayField.of(Readings.of(new double[0], new double[0], new double[0], new Readings.Says[0]), feel).strays(x, y);
            double[] latent = new double[cells];
            java.util.Arrays.fill(latent, feel.meanMm());
            for (double[] stray : strays) {
                double normal = random.nextGaussian();
                for (int p = 0; p < cells; p++) latent[p] += normal * stray[p];
            }
            return new Truth(latent, feel);
        }

        double depth(int c, int r) { return Math.max(0, Math.min(THROUGH, latent[r * COLUMNS + c])); }

        double volumeMl() {
            double sum = 0;
            for (int c = 0; c < COLUMNS; c++) for (int r = 0; r < ROWS; r++) sum += depth(c, r);
            return sum * LENGTH / COLUMNS * ACROSS / ROWS / 1000;
        }

        double deepestMm() {
            double deepest = 0;
            for (int c = 0; c < COLUMNS; c++) for (int r = 0; r < ROWS; r++) deepest = Math.max(deepest, depth(c, r));
            return deepest;
        }

        /// Where the last softness ends, by a straight line between the middles of cells.
        double lastSoftMm() {
            for (int c = COLUMNS - 1; c >= 0; c--) {
                double far = -1;
                for (int r = 0; r < ROWS; r++)
                    if (depth(c, r) > Decay.TOLERANCE_MM) far = Math.max(far, c == COLUMNS - 1 ? 0.5 : (depth(c, r) - Decay.TOLERANCE_MM) / (depth(c, r) - depth(c + 1, r)));
                if (far >= 0) return (c + 0.5 + far) * LENGTH / COLUMNS;
            }
            return 0;
        }

        List<ProbeReading> probe(Random random, int every, Member.Face face) {
            List<ProbeReading> all = new ArrayList<>();
            for (int c = every / 2; c < COLUMNS; c += every)
                for (int r = 1; r < ROWS; r += 2) {
                    double push = latent[r * COLUMNS + c] + feel.handMm() * random.nextGaussian();
                    double depth = Math.max(0, Math.min(REACH, push));
                    all.add(new ProbeReading(new Spot("post", face, mm((c + 0.5) * LENGTH / COLUMNS), mm((r + 0.5) * ACROSS / ROWS)), mm(depth), mm(REACH), push >= REACH));
                }
            return all;
        }
    }

    /// How often the truth lay within, of how many.
    private static final class Held {
        private int within, all;

        void count(Interval interval, double truth) {
            all++;
            if (interval.low() <= truth && truth <= interval.high()) within++;
        }

        double share() { return within / (double) all; }
    }

    /// The least area that two faces of a square post leave, by strips.
    private static double leastKept(Truth front, Truth left) {
        double least = 1, w = ACROSS / ROWS;
        for (int c = 0; c < COLUMNS; c++) {
            double kept = 0;
            for (int i = 0; i < ROWS; i++)
                for (int j = 0; j < ROWS; j++) {
                    double tall = (j + 1) * w - Math.max(j * w, front.depth(c, i)), wide = (i + 1) * w - Math.max(i * w, left.depth(c, j));
                    if (tall > 0 && wide > 0) kept += tall * wide;
                }
            least = Math.min(least, kept / (ACROSS * THROUGH));
        }
        return least;
    }

    /// Works so many synthetic posts, two probed faces each: 40 here and as many as `-Dcalibration.cases=500` says on demand, when the bounds are those that are
    /// promised, 86 to 94 %. Faces with less than 50 mL of soft wood are passed over, as nobody probes them closely.
    @Test
    void nine_in_ten_intervals_hold_the_truth() {
        int cases = Integer.getInteger("calibration.cases", 40);
        double slack = cases >= 500 ? 0.04 : 0.12;
        long seed = 41;
        Random random = new Random(seed);
        Held volume = new Held(), deepest = new Held(), line = new Held(), section = new Held();
        while (section.all < cases) {
            Truth front = Truth.draw(random), left = Truth.draw(random);
            if (front.volumeMl() < 50 || left.volumeMl() < 50) continue;
            List<ProbeReading> onFront = front.probe(random, 4, Member.Face.FRONT), onLeft = left.probe(random, 4, Member.Face.LEFT);
            if (onFront.stream().noneMatch(MemberStudy::soft) || onLeft.stream().noneMatch(MemberStudy::soft)) continue;
            MemberStudy study = new MemberStudy(post(), Map.of(Member.Face.FRONT, onFront, Member.Face.LEFT, onLeft), random.nextLong(), Memo.NONE);
            FaceStudy face = study.soft().get(Member.Face.FRONT);
            volume.count(face.volumeMl(), front.volumeMl());
            deepest.count(face.deepestMm(), front.deepestMm());
            line.count(face.lastSoftMm(), front.lastSoftMm());
            section.count(study.section(0, LENGTH).shapes().orElseThrow().kept(), leastKept(front, left));
        }
        String held = "held: volume " + volume.share() + ", deepest " + deepest.share() + ", line " + line.share() + ", section " + section.share() + "; " + cases + " cases, seed " + seed;
        if (cases != 40) System.out.println(held);
        for (Held one : List.of(volume, deepest, line, section)) assertTrue(one.share() >= 0.9 - slack && one.share() <= 0.9 + slack, held);
    }
}
