package sillwright.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// The decay beneath one face, worked from its probe readings: the map, the soft stretches, and draws of the whole field.
final class FaceStudy {
    private static final int DRAWS = 200;
    private static final int OTHER_FIELDS = 6;
    /// A reading speaks for the rows of the grid this near to it: lines are drawn along the tracks that were probed.
    private static final double SIGHT_ROWS = 0.75;
    private static final int MOST_CELLS = 280;

    final DepthMap map;
    /// Soft stretches along the member, each from one sound-wood line to the other, without the margin.
    final List<double[]> stretches = new ArrayList<>();
    private final Member member;
    private final int columns;
    private final int rows;
    private final double cellMm2;
    /// Depth at each cell of the grid of draws, mm: draw by draw, row by row.
    private final double[] draws;
    private final double[] likelyMm;
    private final double[] highMm;

    private FaceStudy(Member member, Member.Face face, List<ProbeReading> probes, RandomGenerator random) {
        this.member = member;
        double length = member.lengthMm(), across = member.acrossMm(face), through = member.throughMm(face);
        rows = (int) Math.max(2, Math.min(6, Math.round(across / 25)));
        columns = (int) Math.max(12, Math.min(MOST_CELLS / rows, Math.round(length / 15)));
        cellMm2 = length / columns * across / rows;
        int cells = columns * rows;
        likelyMm = new double[cells];
        highMm = new double[cells];
        draws = new double[DRAWS * cells];
        int fineColumns = (int) Math.max(24, Math.min(240, Math.round(length / 10))), fineRows = (int) Math.max(4, Math.min(12, Math.round(across / 10)));
        double[] depth = new double[fineColumns * fineRows], high = new double[depth.length], chance = new double[depth.length];
        boolean soft = probes.stream().anyMatch(FaceStudy::soft);
        Interval volume = Interval.exactly(0);
        if (soft) {
            List<DecayFit.Weighed> fields = DecayFit.plausible(Readings.of(probes), Feel.Shape.MATERN_5_2, OTHER_FIELDS, random);
            DecayField likeliest = fields.getFirst().field();
            paint(likeliest, through, fineColumns, fineRows, depth, high, chance);
            draw(fields, through, across, random);
            findStretches(likeliest, probes);
            volume = volume(stretches);
        }
        map = new DepthMap(face, fineColumns, fineRows, length, across, through, depth, high, chance, probes, volume);
    }

    static FaceStudy of(Member member, Member.Face face, List<ProbeReading> probes, RandomGenerator random) {
        return new FaceStudy(member, face, probes, random);
    }

    static boolean soft(ProbeReading probe) { return probe.ranOut() || probe.depthMm() > Decay.TOLERANCE_MM; }

    private void paint(DecayField field, double through, int fineColumns, int fineRows, double[] depth, double[] high, double[] chance) {
        double[] out = new double[2], scratch = new double[field.siteTau().length];
        double length = member.lengthMm(), across = cellMm2 * columns * rows / length;
        for (int r = 0; r < fineRows; r++)
            for (int c = 0; c < fineColumns; c++) {
                field.at((c + 0.5) * length / fineColumns, (r + 0.5) * across / fineRows, out, scratch);
                int cell = r * fineColumns + c;
                double deviation = Math.sqrt(out[1]);
                depth[cell] = clamp(out[0], through);
                high[cell] = clamp(out[0] + 1.645 * deviation, through);
                chance[cell] = deviation > 0 ? Normal.below((out[0] - Decay.TOLERANCE_MM) / deviation) : out[0] > Decay.TOLERANCE_MM ? 1 : 0;
            }
    }

    /// Draws of the whole field, shared out among the plausible fields by their weights.
    private void draw(List<DecayFit.Weighed> fields, double through, double across, RandomGenerator random) {
        int cells = columns * rows, drawn = 0;
        double[] alongs = new double[cells], acrosses = new double[cells], means = new double[cells], normal = new double[cells];
        for (int r = 0; r < rows; r++)
            for (int c = 0; c < columns; c++) {
                alongs[r * columns + c] = columnMm(c);
                acrosses[r * columns + c] = (r + 0.5) * across / rows;
            }
        double share = 0;
        for (int f = 0; f < fields.size(); f++) {
            share += fields.get(f).weight();
            int until = f == fields.size() - 1 ? DRAWS : (int) Math.round(share * DRAWS);
            if (f > 0 && until == drawn) continue;
            double[] triangle = fields.get(f).field().together(alongs, acrosses, means);
            if (f == 0) bounds(triangle, means, through);
            for (; drawn < until; drawn++) {
                for (int i = 0; i < cells; i++) normal[i] = random.nextGaussian();
                for (int cell = 0; cell < cells; cell++) {
                    double value = means[cell];
                    for (int k = 0; k <= cell; k++) value += triangle[cell * cells + k] * normal[k];
                    draws[drawn * cells + cell] = clamp(value, through);
                }
            }
        }
    }

    private void bounds(double[] triangle, double[] means, double through) {
        int cells = columns * rows;
        for (int cell = 0; cell < cells; cell++) {
            double variance = 0;
            for (int k = 0; k <= cell; k++) variance += triangle[cell * cells + k] * triangle[cell * cells + k];
            likelyMm[cell] = clamp(means[cell], through);
            highMm[cell] = clamp(means[cell] + 1.645 * Math.sqrt(variance), through);
        }
    }

    private static double clamp(double depth, double through) { return Math.max(0, Math.min(through, depth)); }

    private double columnMm(int column) { return (column + 0.5) * member.lengthMm() / columns; }

    /// The chance that the wood is soft anywhere at a column that a reading speaks for.
    private double doubt(int column, List<ProbeReading> probes, double sight) {
        int soft = 0, cells = columns * rows;
        boolean[] seen = new boolean[rows];
        double rowMm = cellMm2 * columns / member.lengthMm();
        for (ProbeReading probe : probes)
            for (int r = 0; r < rows; r++)
                seen[r] |= Math.abs(probe.spot().alongMm() - columnMm(column)) <= sight && Math.abs(probe.spot().acrossMm() - (r + 0.5) * rowMm) <= SIGHT_ROWS * rowMm;
        for (int d = 0; d < DRAWS; d++)
            for (int r = 0; r < rows; r++)
                if (seen[r] && draws[d * cells + r * columns + column] > Decay.TOLERANCE_MM) {
                    soft++;
                    break;
                }
        return soft / (double) DRAWS;
    }

    /// From each soft reading outward until the doubt is gone, or until readings are too far away to tell.
    private void findStretches(DecayField field, List<ProbeReading> probes) {
        double sight = Math.max(100, Math.min(300, field.feel().alongMm()));
        double[] doubt = new double[columns];
        for (int c = 0; c < columns; c++) doubt[c] = doubt(c, probes, sight);
        for (ProbeReading probe : probes) {
            if (!soft(probe)) continue;
            double at = probe.spot().alongMm();
            double from = walk(doubt, probes, at, -1, sight), to = walk(doubt, probes, at, 1, sight);
            merge(stretches, from, to, 0);
        }
    }

    private double walk(double[] doubt, List<ProbeReading> probes, double at, int step, double sight) {
        double end = step < 0 ? 0 : member.lengthMm();
        int column = Math.max(0, Math.min(columns - 1, (int) (at / member.lengthMm() * columns)));
        double before = doubt[column];
        for (int c = column + step; c >= 0 && c < columns; c += step) {
            double here = columnMm(c);
            double nearest = Double.MAX_VALUE;
            for (ProbeReading probe : probes) nearest = Math.min(nearest, Math.abs(probe.spot().alongMm() - here));
            if (nearest > sight) return here;
            if (doubt[c] < Decay.DOUBT) {
                double share = before > doubt[c] ? (before - Decay.DOUBT) / (before - doubt[c]) : 1;
                double from = Math.abs(columnMm(c - step) - at) < Math.abs(here - at) ? columnMm(c - step) : at;
                double line = from + Math.max(0, Math.min(1, share)) * (here - from);
                return step < 0 ? Math.min(line, at) : Math.max(line, at);
            }
            before = doubt[c];
        }
        return end;
    }

    /// Adds a stretch, joined with any that it touches or comes nearer to than `gap`.
    static void merge(List<double[]> stretches, double from, double to, double gap) {
        double low = from, high = to;
        List<double[]> apart = new ArrayList<>();
        for (double[] one : stretches) {
            if (one[1] + gap < low || one[0] - gap > high) apart.add(one);
            else {
                low = Math.min(low, one[0]);
                high = Math.max(high, one[1]);
            }
        }
        apart.add(new double[] {low, high});
        apart.sort((a, b) -> Double.compare(a[0], b[0]));
        stretches.clear();
        stretches.addAll(apart);
    }

    /// Soft wood between two stations in one draw, mL.
    double volumeMl(int draw, double fromMm, double toMm) {
        double sum = 0;
        int cells = columns * rows;
        double half = member.lengthMm() / columns / 2;
        for (int c = 0; c < columns; c++) {
            double part = Math.max(0, Math.min(columnMm(c) + half, toMm) - Math.max(columnMm(c) - half, fromMm)) / (2 * half);
            if (part > 0) for (int r = 0; r < rows; r++) sum += part * draws[draw * cells + r * columns + c];
        }
        return sum * cellMm2 / 1000;
    }

    /// Soft wood beneath the whole face.
    Interval wholeVolume() { return volume(List.of(new double[] {0, member.lengthMm()})); }

    private Interval volume(List<double[]> between) {
        double[] volumes = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) for (double[] one : between) volumes[d] += volumeMl(d, one[0], one[1]);
        return interval(volumes);
    }

    static int draws() { return DRAWS; }

    /// The middle and the bounds that hold nine in ten.
    static Interval interval(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        return new Interval(sorted[(int) (0.05 * sorted.length)], sorted[sorted.length / 2], sorted[Math.min(sorted.length - 1, (int) (0.95 * sorted.length))]);
    }

    /// The loss beneath this face at a station, as a depth even across the face, mm.
    ///
    /// @param high the depth exceeded one time in twenty, in place of the most likely
    double lossMm(double stationMm, boolean high) {
        int c = Math.max(0, Math.min(columns - 1, (int) (stationMm / member.lengthMm() * columns)));
        double sum = 0;
        for (int r = 0; r < rows; r++) sum += (high ? highMm : likelyMm)[r * columns + c];
        return sum / rows;
    }

    /// Skin softer than the tolerance between two stations, mm².
    double softMm2(double fromMm, double toMm) {
        double sum = 0;
        for (int c = 0; c < columns; c++) {
            double at = columnMm(c);
            if (at < fromMm || at > toMm) continue;
            for (int r = 0; r < rows; r++) if (likelyMm[r * columns + c] > Decay.TOLERANCE_MM) sum += cellMm2;
        }
        return sum;
    }

    double deepestMm(double fromMm, double toMm) {
        double deepest = 0;
        for (int c = 0; c < columns; c++)
            if (columnMm(c) >= fromMm && columnMm(c) <= toMm) for (int r = 0; r < rows; r++) deepest = Math.max(deepest, likelyMm[r * columns + c]);
        for (ProbeReading probe : map.probes())
            if (probe.spot().alongMm() >= fromMm && probe.spot().alongMm() <= toMm) deepest = Math.max(deepest, probe.depthMm());
        return deepest;
    }

    List<Double> stations() {
        List<Double> all = new ArrayList<>();
        for (int c = 0; c < columns; c++) all.add(columnMm(c));
        return all;
    }
}
