package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Quantity;
import sillwright.walk.Side;
import sillwright.walk.Side.Downspout;
import sillwright.walk.Side.Edge;
import sillwright.walk.Side.RoofEdge;

/// The wall's outline and what sheds the water: gables, roofs, gutters, downspouts.
final class ElevationRoof {
    private final Canvas canvas;
    private final View view;
    private final Side side;

    ElevationRoof(Canvas canvas, View view, Side side) {
        this.canvas = canvas;
        this.view = view;
        this.side = side;
    }

    /// A roof is drawn up to here, and broken off: what is higher tells nothing of the wood below.
    private static final double SHOWN_MM = 1100;

    /// How high the roof stands above its edge as seen from the front, mm; nothing where its slope or depth is not known.
    private static double riseMm(RoofEdge edge) {
        if (edge.kind() != Edge.EAVE) return 0;
        return edge.pitch().map(Quantity::own).orElse(0.0) * edge.planDepth().map(Quantity::own).orElse(0.0);
    }

    private static double shownMm(RoofEdge edge) { return Math.min(riseMm(edge), SHOWN_MM); }

    static double topMm(Side side) {
        double top = side.topMm();
        for (RoofEdge edge : side.edges()) top = Math.max(top, edge.height().own() + shownMm(edge));
        return top;
    }

    /// The wall, the gables on it and the roof behind, before anything that stands in front.
    void behind() {
        double high = side.heightMm();
        for (RoofEdge edge : side.edges()) if (!stands(edge) && edge.kind() == Edge.EAVE) roof(edge);
        List<double[]> gables = gables();
        canvas.rect(view.box(0, 0, side.lengthMm(), high), Ink.PAPER, Ink.FIRM);
        for (double[] gable : gables) gable(gable);
        for (RoofEdge edge : side.edges()) if (!stands(edge)) edge(edge);
    }

    /// Porch and bay roofs, which hide what is behind them.
    void before() {
        for (RoofEdge edge : side.edges()) {
            if (!stands(edge)) continue;
            if (edge.kind() == Edge.EAVE) roof(edge);
            edge(edge);
        }
    }

    private static boolean stands(RoofEdge edge) { return edge.projects().isPresent(); }

    /// Each gable as left foot, its height, peak place, peak height, right foot, its height. Two rakes that meet are the two
    /// halves of one gable; a rake alone is a whole one, its peak in the middle.
    private List<double[]> gables() {
        List<RoofEdge> rakes = new ArrayList<>(side.edges().stream().filter(edge -> edge.kind() == Edge.RAKE && !stands(edge)
                && edge.peak().isPresent()).toList());
        rakes.sort((a, b) -> Double.compare(a.left().own(), b.left().own()));
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < rakes.size(); i++) {
            RoofEdge rake = rakes.get(i);
            double left = rake.left().own(), end = left + rake.length().own();
            boolean pair = i + 1 < rakes.size() && Math.abs(rakes.get(i + 1).left().own() - end) < 300;
            if (pair) {
                RoofEdge other = rakes.get(++i);
                found.add(new double[] {left, rake.height().own(), end, Math.max(rake.peak().get().own(), other.peak().get().own()), end
                        + other.length().own(), other.height().own()});
            } else found.add(new double[] {left, rake.height().own(), (left + end) / 2, rake.peak().get().own(), end, rake.height().own()});
        }
        return found;
    }

    private void gable(double[] g) {
        double x1 = view.x(g[0]), y1 = view.y(g[1]), x2 = view.x(g[2]), y2 = view.y(g[3]), x3 = view.x(g[4]), y3 = view.y(g[5]);
        canvas.polygon(Ink.PAPER, Ink.HAIR, x1, y1, x2, y2, x3, y3);
        double thick = Math.max(0.7, view.scale().paper(140));
        canvas.polyline(Ink.FIRM, x1, y1, x2, y2, x3, y3);
        canvas.polyline(Ink.BOLD, x1 - thick, y1 - thick * 0.3, x2, y2 - thick * 1.3, x3 + thick, y3 - thick * 0.3);
    }

    private void roof(RoofEdge edge) {
        double rise = shownMm(edge), over = edge.kind() == Edge.EAVE ? edge.overhang().own() : 0;
        if (rise <= 0) return;
        Box box = view.box(edge.left().own() - over, edge.height().own(), edge.length().own() + 2 * over, rise);
        boolean cut = riseMm(edge) > SHOWN_MM;
        canvas.fill(box, Ink.PAPER);
        canvas.polyline(Ink.THIN, box.left(), box.top(), box.left(), box.bottom(), box.right(), box.bottom(), box.right(), box.top());
        if (cut) Marks.broken(canvas, box.left() - 1, box.top(), box.right() + 1, box.top());
        else canvas.line(box.left(), box.top(), box.right(), box.top(), Ink.THIN);
        double step = Math.max(1.7, box.height() / 14);
        int row = 0;
        for (double y = box.bottom() - step; y > box.top() + 0.3; y -= step, row++)
            for (double x = box.left() + 1 + row * 7 % 12; x < box.right() - 3; x += 12) canvas.line(x, y, Math.min(x + 7, box.right() - 0.5), y,
                    Ink.HAIR);
    }

    private void edge(RoofEdge edge) {
        if (edge.kind() == Edge.RAKE) return;
        double over = edge.kind() == Edge.EAVE ? edge.overhang().own() : 0;
        double x1 = view.x(edge.left().own() - over), x2 = view.x(edge.left().own() + edge.length().own() + over), y = view.y(edge.height().own());
        canvas.line(x1, y, x2, y, Ink.BOLD);
    }

    /// Gutters and downspouts, drawn over the members so that both are seen.
    void gutters() {
        for (RoofEdge edge : side.edges()) {
            double over = edge.kind() == Edge.EAVE ? edge.overhang().own() : 0;
            double x1 = view.x(edge.left().own() - over), x2 = view.x(edge.left().own() + edge.length().own() + over),
                    y = view.y(edge.height().own());
            edge.gutter().ifPresent(gutter -> gutter(gutter, x1, x2, y));
        }
    }

    private void gutter(Side.Gutter gutter, double x1, double x2, double y) {
        double deepMm = gutter.shape() == Side.GutterShape.HALF_ROUND ? gutter.size().own() / 2 : gutter.depth()
                .map(Quantity::own).orElse(gutter.size().own() * 0.75);
        double deep = Math.max(0.9, view.scale().paper(deepMm));
        canvas.rect(new Box(x1, y, x2 - x1, deep), "none", Ink.THIN);
        canvas.line(x1, y + deep * 0.3, x2, y + deep * 0.3, Ink.HAIR);
        for (Downspout spout : gutter.downspouts()) spout(spout, y + deep);
    }

    private void spout(Downspout spout, double top) {
        double wide = Math.max(0.8, view.scale().paper(spout.size().own())), x = view.x(spout.left().own()) - wide / 2;
        double ground = view.gradePaper(), foot = switch (spout.empties()) {
            case AT_FOOT, SPLASH_BLOCK, EXTENSION -> ground - Math.max(1, view.scale().paper(100));
            case DRAIN -> ground + 2;
            case CISTERN -> ground - Math.max(4, view.scale().paper(900));
        };
        canvas.rect(new Box(x, top, wide, Math.max(1, foot - top)), Ink.PAPER, Ink.THIN);
        canvas.line(x + wide / 2, top, x + wide / 2, foot, Ink.HAIR);
        switch (spout.empties()) {
            case AT_FOOT -> {}
            case SPLASH_BLOCK -> canvas.polygon(Ink.PAPER, Ink.FIRM, x - 0.6, ground, x + wide + 0.6, ground, x + wide + 0.2, ground - 0.8, x - 0.2,
                    ground - 0.8);
            case EXTENSION -> canvas.polygon(Ink.PAPER, Ink.THIN, x, foot, x + wide, foot, x + wide + 2.4, ground - 0.2, x + wide + 1.2,
                    ground - 0.2);
            case DRAIN -> canvas.rect(new Box(x - 0.5, ground - 0.7, wide + 1, 1.2), Ink.PAPER, Ink.FIRM);
            case CISTERN -> canvas.rect(new Box(x - 1.6, foot, wide + 3.2, ground - foot), Ink.PAPER, Ink.FIRM);
        }
    }
}
