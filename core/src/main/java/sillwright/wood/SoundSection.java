package sillwright.wood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import sillwright.walk.Member;
import sillwright.wood.Section.Point;

/// The sound wood of a section whose faces have gone soft by a depth that changes across them: exact for profiles of straight lines.
///
/// Losses that meet at a corner count once. Where the softness of two opposite faces meets, the section is parted or hollowed through; where it
/// meets everywhere nothing is left.
///
/// @param widthMm  of the whole section
/// @param depthMm  of the whole section
/// @param together all that is sound, counted as one; empty where nothing is
/// @param pieces   the sound pieces that do not touch, the largest first: parted wood does not bend as one, whatever `together` says
/// @param slabs    the sound wood as upright slabs side by side, each by its corners, for a drawing
public record SoundSection(double widthMm, double depthMm, Optional<Section> together, List<Section> pieces, List<List<Point>> slabs) {
    public SoundSection {
        pieces = List.copyOf(pieces);
        slabs = List.copyOf(slabs);
    }

    /// Nearer than this, mm, two lines are one.
    private static final double NONE_MM = 1e-9;

    /// Less than this, mm², is no wood.
    private static final double SPECK_MM2 = 1e-7;

    public boolean parted() { return pieces.size() > 1; }

    /// The share of the whole area that is sound.
    public double areaKept() { return together.map(Section::areaMm2).orElse(0.0) / (widthMm * depthMm); }

    /// Of a rectangle with softness from its four faces.
    public static SoundSection of(double widthMm, double depthMm, FaceProfile front, FaceProfile back, FaceProfile left, FaceProfile right) {
        return new Slabs(widthMm, depthMm, front, back, left, right).section();
    }

    /// Of a member at a station, by the maps of its faces; a face without one counts as sound.
    ///
    /// @param high the depth exceeded one time in twenty, in place of the most likely
    public static SoundSection at(Member member, List<DepthMap> maps, double stationMm, boolean high) { return outline(member, maps, stationMm, high).sound(); }

    /// The softness of the four sides that [#at] takes.
    static SectionLeft.Outline outline(Member member, List<DepthMap> maps, double stationMm, boolean high) {
        double width = member.widthMm(), depth = member.depthMm();
        FaceProfile[] sides = {FaceProfile.sound(width), FaceProfile.sound(width), FaceProfile.sound(depth), FaceProfile.sound(depth)};
        for (DepthMap map : maps) {
            int column = Math.max(0, Math.min(map.columns() - 1, (int) (stationMm / map.lengthMm() * map.columns())));
            List<Double> depths = new ArrayList<>();
            for (int row = 0; row < map.rows(); row++) depths.add(high ? map.highMm(column, row) : map.depthMm(column, row));
            int side = member.sectionSide(map.face()).ordinal();
            sides[side] = FaceProfile.sloping(side < 2 ? width : depth, depths);
        }
        return new SectionLeft.Outline(sides[0], sides[1], sides[2], sides[3]);
    }

    /// Cuts the section into upright slabs in which no two edges cross, and keeps the trapezoids that are sound.
    private static final class Slabs {
        private final double width;
        private final double depth;
        private final FaceProfile front;
        private final FaceProfile back;
        private final FaceProfile left;
        private final FaceProfile right;
        private final List<Edge> edges = new ArrayList<>();
        private final List<Trapezoid> kept = new ArrayList<>();

        /// A straight edge from left to right.
        private record Edge(double x0, double y0, double x1, double y1) {
            double at(double x) { return y0 + (y1 - y0) * (x - x0) / (x1 - x0); }
        }

        /// @param piece index of the piece it belongs to; pieces that touch are joined
        private record Trapezoid(double x0, double x1, double low0, double low1, double high0, double high1, int piece) {
            List<Point> corners() { return List.of(new Point(x0, low0), new Point(x1, low1), new Point(x1, high1), new Point(x0, high0)); }
        }

        Slabs(double width, double depth, FaceProfile front, FaceProfile back, FaceProfile left, FaceProfile right) {
            this.width = width;
            this.depth = depth;
            this.front = front;
            this.back = back;
            this.left = left;
            this.right = right;
            edge(0, 0, width, 0);
            edge(0, depth, width, depth);
            for (int i = 1; i < front.points().size(); i++) edge(across(front, i - 1), deep(front, i - 1), across(front, i), deep(front, i));
            for (int i = 1; i < back.points().size(); i++) edge(across(back, i - 1), depth - deep(back, i - 1), across(back, i), depth - deep(back, i));
            for (int i = 1; i < left.points().size(); i++) edge(deep(left, i - 1), across(left, i - 1), deep(left, i), across(left, i));
            for (int i = 1; i < right.points().size(); i++) edge(width - deep(right, i - 1), across(right, i - 1), width - deep(right, i), across(right, i));
        }

        private static double across(FaceProfile profile, int i) { return profile.points().get(i).acrossMm(); }

        private static double deep(FaceProfile profile, int i) { return profile.points().get(i).depthMm(); }

        private void edge(double x0, double y0, double x1, double y1) {
            if (x0 > x1) edges.add(new Edge(x1, y1, x0, y0));
            else edges.add(new Edge(x0, y0, x1, y1));
        }

        /// Where a slab may begin or end: at a corner, and where two edges cross.
        private double[] cuts() {
            List<Double> cuts = new ArrayList<>(List.of(0.0, width));
            for (int i = 0; i < edges.size(); i++) {
                Edge one = edges.get(i);
                cuts.add(one.x0);
                cuts.add(one.x1);
                for (int j = 0; j < i; j++) crossing(one, edges.get(j)).ifPresent(cuts::add);
            }
            return cuts.stream().filter(x -> x >= 0 && x <= width).mapToDouble(Double::doubleValue).sorted().toArray();
        }

        private static Optional<Double> crossing(Edge one, Edge other) {
            double from = Math.max(one.x0, other.x0), to = Math.min(one.x1, other.x1);
            if (!(to - from > NONE_MM)) return Optional.empty();
            double apart0 = one.at(from) - other.at(from), apart1 = one.at(to) - other.at(to);
            if (apart0 * apart1 >= 0) return Optional.empty();
            return Optional.of(from + (to - from) * apart0 / (apart0 - apart1));
        }

        private boolean sound(double x, double y) {
            return y > front.depthAtMm(x) && y < depth - back.depthAtMm(x) && x > left.depthAtMm(y) && x < width - right.depthAtMm(y);
        }

        SoundSection section() {
            double[] cuts = cuts();
            List<Trapezoid> before = List.of();
            double reached = 0;
            for (int i = 1; i < cuts.length; i++) {
                if (cuts[i] - reached <= NONE_MM) continue;
                List<Trapezoid> here = slab(reached, cuts[i]);
                for (Trapezoid one : before)
                    for (Trapezoid other : here)
                        if (Math.min(one.high1, other.high0) - Math.max(one.low1, other.low0) > NONE_MM) join(one, other);
                kept.addAll(here);
                before = here;
                reached = cuts[i];
            }
            if (kept.isEmpty()) return new SoundSection(width, depth, Optional.empty(), List.of(), List.of());
            List<Section> pieces = new ArrayList<>();
            for (int p : kept.stream().mapToInt(one -> root(one.piece)).distinct().toArray())
                pieces.add(Section.ofPieces(kept.stream().filter(one -> root(one.piece) == p).map(Trapezoid::corners).toList()));
            pieces.sort((a, b) -> Double.compare(b.areaMm2(), a.areaMm2()));
            List<List<Point>> slabs = kept.stream().map(Trapezoid::corners).toList();
            return new SoundSection(width, depth, Optional.of(Section.ofPieces(slabs)), pieces, slabs);
        }

        private List<Trapezoid> slab(double x0, double x1) {
            double middle = (x0 + x1) / 2;
            Edge[] over = edges.stream().filter(edge -> edge.x1 > edge.x0 && edge.x0 < middle && edge.x1 > middle).toArray(Edge[]::new);
            Arrays.sort(over, (a, b) -> Double.compare(a.at(middle), b.at(middle)));
            List<Trapezoid> here = new ArrayList<>();
            boolean touching = false;
            for (int i = 1; i < over.length; i++) {
                Edge low = over[i - 1], high = over[i];
                if (high.at(middle) - low.at(middle) <= NONE_MM || (high.at(middle) - low.at(middle)) * (x1 - x0) <= SPECK_MM2) continue;
                if (!sound(middle, (low.at(middle) + high.at(middle)) / 2)) {
                    touching = false;
                    continue;
                }
                here.add(new Trapezoid(x0, x1, low.at(x0), low.at(x1), high.at(x0), high.at(x1), fresh()));
                if (touching) join(here.get(here.size() - 2), here.getLast());
                touching = true;
            }
            return here;
        }

        private final List<Integer> parents = new ArrayList<>();

        private int fresh() {
            parents.add(parents.size());
            return parents.size() - 1;
        }

        private int root(int piece) {
            int at = piece;
            while (parents.get(at) != at) at = parents.get(at);
            return at;
        }

        private void join(Trapezoid one, Trapezoid other) { parents.set(root(other.piece), root(one.piece)); }
    }
}
