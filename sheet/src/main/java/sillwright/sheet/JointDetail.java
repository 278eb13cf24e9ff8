package sillwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.sheet.Canvas.Anchor;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;

/// The joint of a repair larger than its views, lying, the new wood to the left: from the face its fasteners are driven into and from the edge, with every size that is
/// marked on the wood: length, nibs, halves, and the string of each fastener from end and edge.
final class JointDetail {
    private static final double LEFT = 28, WIDE = 100, HIGH = 47, STRING = 5;
    /// So many places along are told one by one; of more, the first and the rest as so many like steps.
    private static final int STRUNG = 5;

    private final Canvas canvas;
    private final Repair repair;
    private final Joint joint;
    private final Joinery joinery;
    private final Fixings fixings;
    private final Units units;
    private final double fromMm;
    private final double toMm;
    private final Scale scale;

    private JointDetail(Canvas canvas, Repair repair, Joint joint, Joinery joinery, Fixings fixings, Units units) {
        this.canvas = canvas;
        this.repair = repair;
        this.joint = joint;
        this.joinery = joinery;
        this.fixings = fixings;
        this.units = units;
        double first = Math.min(0, alongs().getFirst() - reach()), last = Math.max(joinery.lengthMm(), alongs().getLast() + reach()), past = Math.max(25, 0.12 * (last - first));
        this.fromMm = first - past;
        this.toMm = last + past;
        this.scale = Scale.fitting(toMm - fromMm, Math.max(joinery.wideMm(), joinery.throughMm()), WIDE, HIGH, units);
    }

    /// Empty where nothing is jointed and fixed, or the joint is as long as its views show it anyhow.
    static Optional<JointDetail> of(Canvas canvas, Repair repair, Joint joint, Units units) {
        boolean end = switch (repair.treatment()) {
            case Treatment.ScarfSplice _, Treatment.HalfLap _, Treatment.ButtSplice _, Treatment.BuildUp _ -> true;
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _, Treatment.ReplacePart _, Treatment.Replace _ -> false;
        };
        boolean stops = joint.newMm() < repair.damage().member().lengthMm() - 0.5;
        return repair.design().joint().filter(_ -> end && stops).flatMap(joinery -> joinery.fixings().filter(fixings -> !fixings.places().isEmpty())
                .map(fixings -> new JointDetail(canvas, repair, joint, joinery, fixings, units)));
    }

    /// A dowel lies along, half in each.
    private double reach() { return fixings.sort() == Fixings.Sort.DOWEL ? fixings.lengthMm() / 2 : 0; }

    private List<Double> alongs() { return fixings.places().stream().map(Fixings.Place::alongMm).map(JointDetail::tenth).distinct().sorted().toList(); }

    private List<Double> rows() { return fixings.places().stream().map(Fixings.Place::acrossMm).map(JointDetail::tenth).distinct().sorted().toList(); }

    private static double tenth(double mm) { return Math.round(mm * 100) / 100.0; }

    /// @return how far down it reaches
    double draw(double top) {
        double[] bottom = {top};
        canvas.part(scale.ratio(), LEFT, top, () -> bottom[0] = both(top));
        canvas.heighten(bottom[0]);
        return bottom[0];
    }

    private double both(double top) {
        String end = joint.end() == 0 ? Said.startName(repair.damage().member()) : Said.farName(repair.damage().member());
        canvas.write(0.5, top, "the joint, " + scale.words() + ", drawn lying, " + end + " to the left", Ink.SMALL, Anchor.START, Ink.BLACK);
        double y = top + 4 + scale.paper(joinery.wideMm()), edge = face(y) + 5 + scale.paper(joinery.throughMm());
        return edge(edge) + 2;
    }

    private double x(double along) { return LEFT + scale.paper(along - fromMm); }

    private void shape(double y, double... corners) {
        double[] points = new double[corners.length];
        for (int i = 0; i < corners.length; i += 2) {
            points[i] = x(corners[i]);
            points[i + 1] = y - scale.paper(corners[i + 1]);
        }
        canvas.polygon(Hatch.NEW_LEVEL.fill(), Ink.FIRM, points);
    }

    private void line(double y, double a, double over, double b, double over2, Ink.Pen pen) { canvas.line(x(a), y - scale.paper(over), x(b), y - scale.paper(over2), pen); }

    /// Old and new run on to the right and to the left.
    private void outline(double y, double high, String name) {
        line(y, fromMm, 0, toMm, 0, Ink.FIRM);
        line(y, fromMm, high, toMm, high, Ink.FIRM);
        for (double at : new double[] {fromMm, toMm}) Marks.broken(canvas, x(at), y - scale.paper(high), x(at), y);
        canvas.write(x(toMm) + 3, y - scale.paper(high) / 2 + 1, name, Ink.SMALL, Anchor.START, Ink.BLACK);
    }

    /// @return how far down it reaches
    private double face(double y) {
        double wide = joinery.wideMm(), length = joinery.lengthMm();
        shape(y, fromMm, 0, fromMm, wide, length, wide, length, 0);
        if (length > 0) line(y, 0, 0, 0, wide, Ink.HIDDEN);
        outline(y, wide, fixings.sort() == Fixings.Sort.DOWEL ? "face" : "face they are driven into");
        for (Fixings.Place place : fixings.places()) {
            if (fixings.sort() == Fixings.Sort.DOWEL) dowel(y, place.alongMm(), place.acrossMm());
            else canvas.circle(x(place.alongMm()), y - scale.paper(place.acrossMm()), Math.max(0.5, scale.paper(fixings.diameterMm()) / 2), Ink.PAPER, Ink.THIN);
        }
        List<Double> across = new ArrayList<>(List.of(0.0));
        across.addAll(rows());
        across.add(wide);
        upright(y, across);
        return along(y);
    }

    private void upright(double y, List<Double> overs) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i + 1 < overs.size(); i++) words.add(Said.length(overs.get(i + 1) - overs.get(i), units));
        Chain.upright(canvas, overs.stream().map(over -> y - scale.paper(over)).toList(), words, x(fromMm), x(fromMm) - 4);
    }

    private void dowel(double y, double along, double across) {
        double half = fixings.lengthMm() / 2, r = fixings.diameterMm() / 2;
        canvas.polygon("none", Ink.HIDDEN, x(along - half), y - scale.paper(across - r), x(along + half), y - scale.paper(across - r), x(along + half), y - scale.paper(across + r), x(along - half), y - scale.paper(across + r));
    }

    /// From the start of the joint to each fastener, and on to its end; a square joint is measured from its line both ways.
    private double along(double y) {
        double length = joinery.lengthMm();
        List<Double> stops = new ArrayList<>(reach() > 0 ? List.of(-reach(), reach()) : alongs());
        List<String> words = new ArrayList<>();
        if (!stops.contains(0.0)) stops.add(0.0);
        if (length > 0 && !stops.contains(tenth(length))) stops.add(length);
        stops.sort(Double::compare);
        int inner = alongs().size();
        if (inner > STRUNG && length > 0) {
            double first = alongs().getFirst(), last = alongs().getLast();
            stops = List.of(0.0, first, last, length);
            words = List.of(Said.length(first, units), (inner - 1) + " × " + Said.length((last - first) / (inner - 1), units), Said.length(length - last, units));
        } else for (int i = 0; i + 1 < stops.size(); i++) words.add(Said.length(stops.get(i + 1) - stops.get(i), units));
        double deep = Chain.level(canvas, stops.stream().map(this::x).toList(), words, y, y + STRING);
        if (length <= 0) return deep;
        level(0, length, y, deep + STRING - 1, Said.length(length, units));
        return deep + STRING;
    }

    private void level(double a, double b, double y, double at, String words) { Chain.level(canvas, List.of(x(a), x(b)), List.of(words), y, at); }

    /// @return how far down it reaches
    private double edge(double y) {
        double high = joinery.throughMm(), length = joinery.lengthMm(), nib = joinery.sort() == Joinery.Sort.SCARF ? joinery.nibMm() : 0;
        switch (joinery.sort()) {
            case SCARF -> shape(y, fromMm, 0, fromMm, high, 0, high, 0, high - nib, length, nib, length, 0);
            case HALF_LAP -> shape(y, fromMm, 0, fromMm, high, 0, high, high / 12, high / 2, length, high / 2, length - high / 12, 0);
            case BUTT, INLAY, SISTER -> shape(y, fromMm, 0, fromMm, high, 0, high, 0, 0);
        }
        outline(y, high, "edge");
        for (double at : alongs()) fastener(y, at, high);
        upright(y, joinery.sort() == Joinery.Sort.HALF_LAP ? List.of(0.0, high / 2, high) : nib > 0 ? List.of(0.0, nib, high) : List.of(0.0, high));
        if (length <= 0) return y + 1;
        level(0, length, y, y + STRING, Said.length(length, units) + (joinery.sort() == Joinery.Sort.SCARF ? ", 1:" + Words.number(joinery.slope(), 0) : ", shoulders undercut 1:6"));
        return y + STRING + 5;
    }

    /// As long as it is: a screw from its face, a bolt right through, a dowel along.
    private void fastener(double y, double at, double high) {
        switch (fixings.sort()) {
            case DOWEL -> dowel(y, at, high / 2);
            case BOLT -> line(y, at, -high * 0.06, at, high * 1.06, Fixed.CENTRE);
            case SCREW -> line(y, at, 0, at, Math.min(high, fixings.lengthMm()), Fixed.CENTRE);
        }
    }
}
