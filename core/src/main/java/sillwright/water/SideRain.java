package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Building.Month;
import sillwright.walk.Side;
import sillwright.walk.Side.Edge;
import sillwright.walk.Side.RoofEdge;
import sillwright.water.WaterFindings.RainCheck;

/// Wind-driven rain on a side, month by month, from the normals of the place.
///
/// Normals name no direction of wind in rain, so wind from all round alike is taken: a wall then gets 1/π of what a wall that always faces
/// the wind would get. What falls in a month is taken to fall at [#RATE_MM_H]. A roof that hangs over keeps off what the deposition factor says.
final class SideRain {
    private SideRain() {}

    /// Rate at which the rain of a month is taken to fall, mm/h: moderate rain. Own choice.
    static final double RATE_MM_H = 2;
    private static final Basis EVEN = Basis.own("wind in rain from all round alike, rain at 2 mm/h: normals name neither");
    private static final double WIDE_MM = 12 * 25.4;

    /// Share of the free wind's rain that strikes a wall. Source: Straube, Digest 148: at most 0.5 under a peaked roof with a 12 in
    /// overhang, 1.0 near the top of an exposed wall (read); 0.35 for a deep overhang (ASHRAE 160, under a steep roof, from memory).
    static double deposition(Side side) {
        Optional<RoofEdge> edge = side.edges().stream().findFirst();
        if (edge.isEmpty() || edge.get().kind() == Edge.RAKE || edge.get().overhang().own() < WIDE_MM / 3) return 1.0;
        return edge.get().overhang().own() >= 2 * WIDE_MM ? 0.35 : 0.5;
    }

    static RainCheck of(Side side, List<Month> months, Units units) {
        List<Double> facing = new ArrayList<>(), onSide = new ArrayList<>();
        double share = deposition(side) / Math.PI;
        for (Month month : months) {
            double free = month.rain().own() / RATE_MM_H * DrivingRain.freeWind(month.wind().own(), 0, RATE_MM_H);
            facing.add(free);
            onSide.add(free * share);
        }
        double year = onSide.stream().mapToDouble(d -> d).sum();
        int worst = 0;
        for (int m = 1; m < onSide.size(); m++) if (onSide.get(m) > onSide.get(worst)) worst = m;
        String amount = units == Units.US ? Words.significant(year / 25.4, 2) + " in" : Words.number(year, 0) + " mm";
        String words = "About " + amount + " of rain a year is driven onto this wall, most in " + java.time.Month.of(worst + 1).getDisplayName(java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH)
                + "; its roof lets " + Words.percent(deposition(side)) + " of the free wind's rain strike it.";
        return new RainCheck(side.id(), facing, onSide, words, List.of(DrivingRain.FREE_WIND, DrivingRain.DROPS, EVEN));
    }
}
