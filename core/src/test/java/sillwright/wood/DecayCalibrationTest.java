package sillwright.wood;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
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
            double[] x = new double[cells], y = new double[cells], means = new double[cells];
            for (int r = 0; r < ROWS; r++) for (int c = 0; c < COLUMNS; c++) {
                x[r * COLUMNS + c] = (c + 0.5) * LENGTH / COLUMNS;
                y[r * COLUMNS + c] = (r + 0.5) * ACROSS / ROWS;
            }
            double[] triangle = DecayField.of(Readings.of(new double[0], new double[0], new double[0], new Readings.Says[0]), feel).together(x, y, means);
            double[] latent = new double[cells], normal = random.doubles(cells).toArray();
            for (int i = 0; i < cells; i++) normal[i] = random.nextGaussian();
            for (int p = 0; p < cells; p++) {
                latent[p] = means[p];
                for (int q = 0; q <= p; q++) latent[p] += triangle[p * cells + q] * normal[q];
            }
            return new Truth(latent, feel);
        }

        double depth(int c, int r) { return Math.max(0, Math.min(THROUGH, latent[r * COLUMNS + c])); }

        double volumeMl() {
            double sum = 0;
            for (int c = 0; c < COLUMNS; c++) for (int r = 0; r < ROWS; r++) sum += depth(c, r);
            return sum * LENGTH / COLUMNS * ACROSS / ROWS / 1000;
        }

        List<ProbeReading> probe(Random random, int every) {
            List<ProbeReading> all = new ArrayList<>();
            for (int c = every / 2; c < COLUMNS; c += every)
                for (int r = 1; r < ROWS; r += 2) {
                    double push = latent[r * COLUMNS + c] + feel.handMm() * random.nextGaussian();
                    double depth = Math.max(0, Math.min(REACH, push));
                    all.add(new ProbeReading(new Spot("post", Member.Face.FRONT, mm((c + 0.5) * LENGTH / COLUMNS), mm((r + 0.5) * ACROSS / ROWS)), mm(depth), mm(REACH), push >= REACH));
                }
            return all;
        }
    }

    @Test
    void nine_in_ten_intervals_hold_the_true_volume() {
        long seed = 41;
        Random random = new Random(seed);
        int held = 0, all = 0;
        while (all < 150) {
            Truth face = Truth.draw(random);
            if (face.volumeMl() < 50) continue;
            List<ProbeReading> probes = face.probe(random, 4);
            if (probes.stream().noneMatch(FaceStudy::soft)) continue;
            FaceStudy study = FaceStudy.of(post(), Member.Face.FRONT, probes, new Random(random.nextLong()));
            Interval volume = study.wholeVolume();
            all++;
            if (volume.low() <= face.volumeMl() && face.volumeMl() <= volume.high()) held++;
        }
        double share = held / (double) all;
        assertTrue(share >= 0.84 && share <= 0.96, share + " held, seed " + seed);
    }
}
