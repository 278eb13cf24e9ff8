package sillwright.wood;

import java.util.List;
import java.util.function.DoubleBinaryOperator;

import sillwright.walk.Member;
import sillwright.walk.ProbeReading;

/// Depth maps for tests of other rooms, from a depth told outright instead of one fitted to probes.
public final class Maps {
    private Maps() {}

    /// @param depth of a point along and across, mm
    public static DepthMap of(Member member, Member.Face face, DoubleBinaryOperator depth, List<ProbeReading> probes) {
        int columns = Math.clamp(Math.round(member.lengthMm() / 40), 12, 80), rows = 6;
        double across = member.acrossMm(face), through = member.throughMm(face), cell = member.lengthMm() / columns * across / rows, volume = 0;
        double[] depths = new double[columns * rows], high = new double[columns * rows], chance = new double[columns * rows];
        for (int row = 0; row < rows; row++)
            for (int column = 0; column < columns; column++) {
                double d = Math.clamp(depth.applyAsDouble((column + 0.5) * member.lengthMm() / columns, (row + 0.5) * across / rows), 0, through);
                depths[row * columns + column] = d;
                high[row * columns + column] = Math.min(through, d * 1.4 + 2);
                chance[row * columns + column] = d > 3 ? 0.97 : 0.04;
                volume += d * cell / 1000;
            }
        return new DepthMap(face, columns, rows, member.lengthMm(), across, through, depths, high, chance, probes, new Interval(volume * 0.7, volume,
                volume * 1.5));
    }
}
