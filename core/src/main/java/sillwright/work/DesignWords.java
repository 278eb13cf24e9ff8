package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Species;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;
import sillwright.work.resin.Checks;
import sillwright.work.resin.Mixing;
import sillwright.work.resin.Resin;
import sillwright.work.stock.Outline;
import sillwright.work.stock.Stock;

/// A design as it is said: one line for each number that somebody sets a tool or a purse by, with its caution beside it.
public final class DesignWords {
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private DesignWords(Units units) { this.units = units; }

    public static List<String> of(Design design, Units units) {
        DesignWords words = new DesignWords(units);
        design.joint().ifPresent(words::joint);
        design.mixings().forEach(words::mixing);
        for (Checks checks : design.checks()) words.lines.add("Open checks: " + switch (checks.advice()) {
            case LEAVE -> "leave";
            case COAT -> "coat";
            case FILL -> "fill, about " + Words.volume(checks.skimMl().median(), units) + " of skim filler";
        } + "; " + checks.why() + ".");
        design.stock().ifPresent(stock -> words.stock(stock, design));
        design.outline().ifPresent(words::outline);
        words.lines.addAll(design.notes());
        return List.copyOf(words.lines);
    }

    /// The same in a few words, for a page that holds several: what a tool or a purse is set by, without its reasons and cautions, which stand once for all.
    public static List<String> brief(Design design, Units units) {
        DesignWords words = new DesignWords(units);
        design.joint().ifPresent(words::jointBriefly);
        for (Mixing m : design.mixings())
            words.lines.add(m.resin().words() + " " + Words.volume(m.likelyMl(), units) + ", buy " + Words.volume(m.buyMl(), units) + " in " + Words.count(m.batches().count(), "batch").replace("batchs", "batches") + ", "
                    + Words.number(m.workingS() / 60, 0) + " min at " + Words.temperature(m.tempC(), units) + (m.lifts() > 1 ? ", " + m.lifts() + " lifts" : "") + ", paint after " + Words.number(m.paintH(), 0) + " h");
        design.checks().stream().map(checks -> "checks: " + checks.why()).distinct().forEach(words.lines::add);
        design.stock().ifPresent(stock -> words.lines.add(Species.said(stock.species()) + " from " + stock.rough() + (stock.rings() > 0 ? ", " + Stock.rings(stock.rings(), units) : "") + design.rings().map(rings -> ", " + rings.words()).orElse("")));
        design.outline().ifPresent(outline -> words.lines.add("outline drawn full size, " + Words.count(outline.strokes().size(), "stroke")));
        words.lines.addAll(design.notes());
        return List.copyOf(words.lines);
    }

    private void jointBriefly(Joinery joint) {
        joint.fixings().ifPresent(fixings -> lines.add(Words.count(fixings.count(), fixings.sort().name().toLowerCase(java.util.Locale.ROOT)) + " " + fixings.size(units) + " × " + length(fixings.lengthMm()) + ", " + length(up(fixings.least().edgeMm())) + " from edges, "
                + length(up(fixings.least().endMm())) + " from ends at the least, " + Words.force(fixings.hold().lateralN(), units) + " each; " + joint.clamps() + " clamps"));
        if (joint.sort() == Joinery.Sort.SCARF) lines.add("glue face " + Words.number(joint.glueMm2() / joint.buttMm2(), 1) + " times the section, keeps " + Words.percent(joint.efficiency()) + (joint.nibMm() > 0 ? ", nibs " + length(joint.nibMm()) : ""));
        joint.strength().ifPresent(s -> lines.add("its load uses " + Words.significant(s.use(), 2) + " of the joint, by screening"));
    }

    private String length(double mm) { return Words.length(mm, units); }

    private String stress(double mpa) { return units == Units.US ? Words.significant(Unit.PSI.fromOwn(mpa), 3) + " psi" : Words.significant(mpa, 3) + " MPa"; }

    private void joint(Joinery joint) {
        String times = Words.number(joint.glueMm2() / Math.max(1, joint.buttMm2()), 1) + " times the section";
        switch (joint.sort()) {
            case SCARF -> lines.add("Scarf 1:" + Words.number(joint.slope(), 0) + " over " + length(joint.lengthMm()) + (joint.nibMm() > 0 ? ", nibs " + length(joint.nibMm()) : ", tips to nothing: clamp them on blocks") + "; glue face "
                    + Words.area(joint.glueMm2(), units) + ", " + times + "; keeps about " + Words.percent(joint.efficiency()) + " of clear wood's strength.");
            case HALF_LAP -> lines.add("Half lap " + length(joint.lengthMm()) + " long, " + length(joint.throughMm() / 2) + " deep, shoulders undercut; counted by one shoulder (" + Words.percent(joint.efficiency()) + ").");
            case BUTT -> lines.add("Square joint, glue face " + Words.area(joint.glueMm2(), units) + "; " + (joint.efficiency() >= 1 ? "pressed, it bears on its whole end." : "it has a quarter of the wood's strength at most."));
            case INLAY -> lines.add("Opening " + length(joint.lengthMm()) + " × " + length(joint.wideMm()) + " × " + length(joint.throughMm()) + " deep, edges of the patch back-cut 1:12, none to nothing; glue face " + Words.area(joint.glueMm2(), units)
                    + (joint.fixings().isEmpty() ? "; no screws: there is no room to cover their heads." : "; heads " + length(Joints.COVER_MM) + " deep and plugged."));
            case SISTER -> lines.add("Sister " + length(joint.throughMm()) + " × " + length(joint.wideMm()) + " × " + length(joint.lengthMm()) + ", sized to bear the whole load alone.");
        }
        joint.fixings().ifPresent(fixings -> fixings(fixings, joint));
        joint.strength().ifPresent(this::strength);
    }

    private void fixings(Fixings fixings, Joinery joint) {
        String what = switch (fixings.sort()) {
            case SCREW -> "screw";
            case BOLT -> "bolt";
            case DOWEL -> "dowel";
        };
        lines.add(Words.count(fixings.count(), what) + " " + fixings.size(units) + " × " + length(fixings.lengthMm()) + " in " + Words.count(fixings.rows(), "row") + ", " + joint.clamps() + " clamps; not nearer than " + length(up(fixings.least().edgeMm()))
                + " to an edge, " + length(up(fixings.least().endMm())) + " to an end, " + length(up(fixings.least().rowMm())) + " in a row" + (fixings.rows() > 1 ? ", " + length(up(fixings.least().apartMm())) + " between rows" : "")
                + "; each bears about " + Words.force(fixings.hold().lateralN(), units) + " sideways (mode " + fixings.hold().mode().word() + ") in sound dry wood.");
    }

    private double up(double mm) {
        double step = units == Units.US ? 25.4 / 16 : 1;
        return Math.ceil(mm / step - 1e-9) * step;
    }

    private void strength(Joinery.Strength s) {
        lines.add("Under its load: " + stress(Math.abs(s.alongMPa())) + (s.alongMPa() < 0 ? " pressed" : s.alongMPa() > 0 ? " pulled" : " along") + (s.bentMPa() > 0 ? ", " + stress(s.bentMPa()) + " bent" : "")
                + (s.shearMPa() > 0 ? "; glue line " + stress(s.shearMPa()) + " shear where wood may bear " + stress(s.shearMayMPa()) + ", " + stress(Math.abs(s.squareMPa())) + (s.squareMPa() > 0 ? " pulled open" : " pressed shut") : "")
                + (s.fixingsUse() > 0 ? "; fixings use " + Words.significant(s.fixingsUse(), 2) + " against a side push" : "") + ". It uses " + Words.significant(s.use(), 2) + " of the joint ("
                + switch (s.governs()) {
                    case WOOD -> "the wood";
                    case GLUE_LINE -> "the glue line";
                    case FIXINGS -> "the fixings";
                } + " governs). Screening; a licensed engineer settles it.");
    }

    private void mixing(Mixing m) {
        lines.add(Words.sentence(m.resin().words()) + ": likely " + Words.volume(m.likelyMl(), units) + ", buy " + Words.volume(m.buyMl(), units) + " (" + Words.volume(m.parts().aMl(), units) + " + " + Words.volume(m.parts().bMl(), units)
                + " at " + Words.number(m.resin().ratio(), 0) + ":1); " + Words.count(m.batches().count(), "batch").replace("batchs", "batches") + " of " + Words.volume(m.batches().eachMl(), units) + ", " + Words.number(m.workingS() / 60, 0) + " min at "
                + Words.temperature(m.tempC(), units) + (m.resin() == Resin.CONSOLIDANT ? "" : "; " + Words.count(m.lifts(), "lift") + " of at most " + length(m.liftMm())) + "; next after " + Words.number(m.againH(), 0) + " h, paint after "
                + Words.number(m.paintH(), 0) + " h; wood at " + Words.percent(Resin.MOST_MOISTURE) + " or less. The label goes before these; gloves, eyes covered, moving air.");
        m.holes().ifPresent(holes -> lines.add("Holes for it: " + holes.count() + " of " + length(holes.diameterMm()) + ", rows " + length(holes.acrossMm()) + " apart, " + length(holes.alongMm()) + " along, each row set off by half, " + length(holes.deepMm()) + " deep, aslant, none through."));
    }

    private void stock(Stock stock, Design design) {
        lines.add("Stock: " + stock.why());
        lines.add("Ask for " + Species.said(stock.species()) + " from " + stock.rough() + (stock.planeMm() > 0.8 ? " (" + length(stock.planeMm()) + " to plane off)" : "") + stock.sold().map(sold -> ", " + switch (sold) {
            case YARD -> "in most yards";
            case ORDER -> "to order";
            case RECLAIMED -> "salvaged";
        }).orElse("") + (stock.rings() > 0 ? ", " + Stock.rings(stock.rings(), units) + " or closer" : "") + ", no lighter than " + Words.number(stock.leastDense(), 2) + " oven-dry; " + design.rings().map(rings -> rings.words() + ", since " + rings.why()).orElse("") + ".");
        if (!stock.others().isEmpty()) lines.add("Or: " + String.join("; ", stock.others()) + ".");
    }

    private void outline(Outline outline) {
        long arcs = outline.strokes().stream().filter(Outline.Stroke::arc).count();
        lines.add("Its outline is drawn full size: " + Words.count(outline.strokes().size(), "stroke") + ", " + Words.count((int) arcs, "arc") + "; no step of the gauge lies further off than " + length(Math.max(outline.worstMm(), units == Units.US ? 25.4 / 64 : 0.5)) + ".");
    }
}
