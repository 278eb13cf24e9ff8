package sillwright.wood;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// A cross-section: its area, its middle, and how it stands against bending.
///
/// x runs left to right, y from the front to the back. Second moments are about the centroid: `ix` resists bending about the x axis (over
/// the depth), `iy` about the y axis.
///
/// @param ixyMm4 product of inertia; not nothing where the section is skew, as with one corner gone
public record Section(double areaMm2, double xMm, double yMm, double ixMm4, double iyMm4, double ixyMm4, double leftMm, double rightMm, double frontMm,
                      double backMm) {

    /// A corner of an outline.
    public record Point(double xMm, double yMm) {}

    /// A whole section and what is left of it.
    ///
    /// @param shiftXMm how far the centroid moved to the right
    /// @param shiftYMm how far it moved to the back
    public record Kept(Section whole, Section rest, double shiftXMm, double shiftYMm) {
        public double area() { return rest.areaMm2 / whole.areaMm2; }

        public double sx() { return rest.sxMm3() / whole.sxMm3(); }

        public double sy() { return rest.syMm3() / whole.syMm3(); }
    }

    /// Of a rectangle with wood lost evenly from its faces, mm each.
    ///
    /// @throws Refused where the losses meet and nothing is left
    public static Kept left(double widthMm, double depthMm, double frontMm, double backMm, double leftMm, double rightMm) {
        across("left and right", leftMm, rightMm, "width", widthMm);
        across("front and back", frontMm, backMm, "depth", depthMm);
        Section whole = rectangle(0, widthMm, 0, depthMm), rest = rectangle(leftMm, widthMm - rightMm, frontMm, depthMm - backMm);
        return new Kept(whole, rest, rest.xMm - whole.xMm, rest.yMm - whole.yMm);
    }

    private static void across(String faces, double oneMm, double otherMm, String side, double wholeMm) {
        if (!(oneMm >= 0 && otherMm >= 0 && oneMm + otherMm < wholeMm))
            throw new Refused(faces, "losses of {} and {} meet within the " + side + " of {}: nothing is left to hold",
                    "measure the depth of soft wood again, or plan to replace the piece", length(oneMm), length(otherMm), length(wholeMm));
    }

    private static Answer.Measured length(double mm) { return new Answer.Measured(mm, Kind.LENGTH); }

    public static Section rectangle(double leftMm, double rightMm, double frontMm, double backMm) {
        return of(List.of(new Point(leftMm, frontMm), new Point(rightMm, frontMm), new Point(rightMm, backMm), new Point(leftMm, backMm)), List.of());
    }

    /// Of any outline less its holes, whichever way round each is walked; exact for straight edges.
    ///
    /// Source: Green's theorem over a polygon, a standard of texts on geometry of sections (from memory).
    ///
    /// @param outline corners in order, three or more, edges that do not cross
    /// @param holes   outlines that lie within, apart from each other
    public static Section of(List<Point> outline, List<List<Point>> holes) {
        Sums sums = new Sums();
        sums.add(outline, 1);
        for (List<Point> hole : holes) sums.add(hole, -1);
        return sums.section();
    }

    /// Of several outlines that do not overlap, counted as one section.
    static Section ofPieces(List<List<Point>> outlines) {
        Sums sums = new Sums();
        for (List<Point> outline : outlines) sums.add(outline, 1);
        return sums.section();
    }

    /// Moments about the origin, edge by edge.
    private static final class Sums {
        double area, x, y, xx, yy, xy, left = Double.MAX_VALUE, right = -Double.MAX_VALUE, front = Double.MAX_VALUE, back = -Double.MAX_VALUE;

        Section section() {
            if (!(area > 0)) throw new Refused("", "the section has no area", "give three corners or more, and holes that leave something");
            double middleX = x / area, middleY = y / area;
            return new Section(area, middleX, middleY, xx - area * middleY * middleY, yy - area * middleX * middleX, xy - area * middleX * middleY, left, right, front, back);
        }

        void add(List<Point> corners, double sign) {
            double turn = 0;
            Point before = corners.getLast();
            for (Point at : corners) {
                turn += before.xMm * at.yMm - at.xMm * before.yMm;
                before = at;
            }
            double way = turn < 0 ? -sign : sign;
            before = corners.getLast();
            for (Point at : corners) {
                double x0 = before.xMm, y0 = before.yMm, x1 = at.xMm, y1 = at.yMm, c = way * (x0 * y1 - x1 * y0);
                area += c / 2;
                x += (x0 + x1) * c / 6;
                y += (y0 + y1) * c / 6;
                xx += (y0 * y0 + y0 * y1 + y1 * y1) * c / 12;
                yy += (x0 * x0 + x0 * x1 + x1 * x1) * c / 12;
                xy += (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) * c / 24;
                if (sign > 0) {
                    left = Math.min(left, x1);
                    right = Math.max(right, x1);
                    front = Math.min(front, y1);
                    back = Math.max(back, y1);
                }
                before = at;
            }
        }
    }

    /// Section modulus toward one face: second moment over the distance from the centroid, mm³.
    public double sFrontMm3() { return ixMm4 / (yMm - frontMm); }

    public double sBackMm3() { return ixMm4 / (backMm - yMm); }

    public double sLeftMm3() { return iyMm4 / (xMm - leftMm); }

    public double sRightMm3() { return iyMm4 / (rightMm - xMm); }

    /// The lesser of front and back: bending about the x axis.
    public double sxMm3() { return Math.min(sFrontMm3(), sBackMm3()); }

    /// The lesser of left and right: bending about the y axis.
    public double syMm3() { return Math.min(sLeftMm3(), sRightMm3()); }

    /// The greatest second moment about any axis through the centroid.
    public double greatestMm4() { return (ixMm4 + iyMm4) / 2 + half(); }

    /// The least: a skew section buckles about this axis, and x and y alone would flatter it.
    public double leastMm4() { return (ixMm4 + iyMm4) / 2 - half(); }

    /// Section modulus that is safe for a skew section too: what bending about the x axis does at the worst corner of its bounds, taking the
    /// product of inertia at its worst. Equal to [#sxMm3] where there is none. Derived from the general formula of skew bending.
    public double carefulSxMm3() {
        double x = Math.max(xMm - leftMm, rightMm - xMm), y = Math.max(yMm - frontMm, backMm - yMm);
        return (ixMm4 * iyMm4 - ixyMm4 * ixyMm4) / (iyMm4 * y + Math.abs(ixyMm4) * x);
    }

    /// The same for bending about the y axis.
    public double carefulSyMm3() {
        double x = Math.max(xMm - leftMm, rightMm - xMm), y = Math.max(yMm - frontMm, backMm - yMm);
        return (ixMm4 * iyMm4 - ixyMm4 * ixyMm4) / (ixMm4 * x + Math.abs(ixyMm4) * y);
    }

    private double half() { return Math.hypot((ixMm4 - iyMm4) / 2, ixyMm4); }

    /// Least radius of gyration, mm.
    public double gyrationMm() { return Math.sqrt(leastMm4() / areaMm2); }
}
