package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

/// How deep one face has gone soft, from one edge of it to the other, at one station along the member.
///
/// @param points how far across and how deep, across never going back; two at one place are a step; the first at 0, the last at the far edge
public record FaceProfile(List<At> points) {
    /// @param acrossMm from the left edge of a front or back, from the front edge of a left or right
    /// @param depthMm  soft so far in
    public record At(double acrossMm, double depthMm) {}

    public FaceProfile {
        points = List.copyOf(points);
        if (points.size() < 2 || points.getFirst().acrossMm != 0) throw new IllegalArgumentException("a profile goes from 0 to the far edge: " + points);
        for (int i = 0; i < points.size(); i++)
            if (!(points.get(i).depthMm >= 0) || i > 0 && !(points.get(i).acrossMm >= points.get(i - 1).acrossMm))
                throw new IllegalArgumentException("a profile goes forward at depths of 0 or more: " + points);
    }

    public static FaceProfile sound(double acrossMm) { return even(acrossMm, 0); }

    /// One depth over the whole face.
    public static FaceProfile even(double acrossMm, double depthMm) { return strips(acrossMm, List.of(depthMm)); }

    /// A depth for each of as many equal strips across the face, with a step between them.
    public static FaceProfile strips(double acrossMm, List<Double> depthsMm) {
        List<At> points = new ArrayList<>();
        double strip = acrossMm / depthsMm.size();
        for (int i = 0; i < depthsMm.size(); i++) {
            points.add(new At(i * strip, depthsMm.get(i)));
            points.add(new At(i + 1 == depthsMm.size() ? acrossMm : (i + 1) * strip, depthsMm.get(i)));
        }
        return new FaceProfile(points);
    }

    /// Depths at the middles of as many equal strips, with a straight line between them, and level from the outermost to the edges.
    public static FaceProfile sloping(double acrossMm, List<Double> depthsMm) {
        List<At> points = new ArrayList<>(List.of(new At(0, depthsMm.getFirst())));
        for (int i = 0; i < depthsMm.size(); i++) points.add(new At((i + 0.5) * acrossMm / depthsMm.size(), depthsMm.get(i)));
        points.add(new At(acrossMm, depthsMm.getLast()));
        return new FaceProfile(points);
    }

    public double acrossMm() { return points.getLast().acrossMm; }

    /// The depth at a place between two points.
    double depthAtMm(double acrossMm) {
        for (int i = 1; i < points.size(); i++) {
            At before = points.get(i - 1), at = points.get(i);
            if (acrossMm > at.acrossMm || at.acrossMm == before.acrossMm) continue;
            return before.depthMm + (at.depthMm - before.depthMm) * (acrossMm - before.acrossMm) / (at.acrossMm - before.acrossMm);
        }
        return points.getLast().depthMm;
    }
}
