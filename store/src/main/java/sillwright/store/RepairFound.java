package sillwright.store;

import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.words;

import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.work.Comparison;
import sillwright.work.Design;
import sillwright.work.Ruling;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;
import sillwright.work.resin.Checks;
import sillwright.work.resin.Mixing;
import sillwright.work.stock.Outline;
import sillwright.work.stock.Stock;
import tools.jackson.databind.node.ObjectNode;

/// What was weighed for one repair, and how it is designed, as their part of `findings.json`.
final class RepairFound {
    private RepairFound() {}

    static void put(ObjectNode n, Ruling ruling) {
        Decision decision = ruling.decision();
        n.put("verdict", Choice.word(decision.verdict())).put("taken", decision.taken()).put("by", Choice.word(decision.by())).put("because", decision.because())
                .put("recommended", ruling.recommended().word()).put("recommendedWords", ruling.recommended().words()).put("words", ruling.words());
        words(n.putArray("cautions"), ruling.cautions());
    }

    static void put(ObjectNode n, Comparison comparison) {
        n.put("words", comparison.words());
        words(n.putArray("turns"), comparison.turns());
        each(n.putArray("treatments"), comparison.all(), (t, one) -> {
            t.put("treatment", one.treatment().word()).put("word", one.treatment().ownWord()).put("words", one.treatment().words()).put("holds", one.holds()).put("taken", one.taken()).put("recommended", one.recommended()).put("keptShare", one.keptShare())
                    .put("undone", Choice.word(one.undone()));
            words(t.putArray("refusals"), one.refusals());
            one.use().ifPresent(use -> t.put("use", use));
            if (!one.worked()) return;
            t.put("yearsWaterStopped", one.lasting().stopped()).put("yearsWaterRunning", one.lasting().running()).put("hours", one.hours());
            one.money().ifPresent(money -> t.put("money", money));
            one.worseThan().ifPresent(better -> t.put("dominatedBy", better.words()));
        });
    }

    static void put(ObjectNode n, Design design) {
        design.joint().ifPresent(joint -> joint(n.putObject("joint"), joint));
        each(n.putArray("mixings"), design.mixings(), RepairFound::mixing);
        each(n.putArray("checks"), design.checks(), (c, one) -> c.put("advice", Choice.word(one.advice())).put("consolidantMl", one.consolidantMl()).put("skimMl", one.skimMl().median()).put("why", one.why()));
        design.stock().ifPresent(stock -> stock(n.putObject("stock"), stock));
        design.rings().ifPresent(rings -> n.put("rings", rings.words()).put("ringsWhy", rings.why()));
        design.outline().ifPresent(outline -> outline(n.putObject("outline"), outline));
        words(n.putArray("notes"), design.notes());
    }

    private static void joint(ObjectNode n, Joinery joint) {
        n.put("sort", Choice.word(joint.sort())).put("lengthMm", joint.lengthMm()).put("slope", joint.slope()).put("nibMm", joint.nibMm()).put("throughMm", joint.throughMm()).put("wideMm", joint.wideMm())
                .put("glueMm2", joint.glueMm2()).put("buttMm2", joint.buttMm2()).put("efficiency", joint.efficiency()).put("clamps", joint.clamps());
        joint.fixings().ifPresent(fixings -> fixings(n.putObject("fixings"), fixings));
        joint.strength().ifPresent(strength -> n.putObject("strength").put("alongMPa", strength.alongMPa()).put("bentMPa", strength.bentMPa()).put("shearMPa", strength.shearMPa())
                .put("squareMPa", strength.squareMPa()).put("shearMayMPa", strength.shearMayMPa()).put("wholeUse", strength.wholeUse()).put("fixingsUse", strength.fixingsUse()).put("use", strength.use())
                .put("governs", Choice.word(strength.governs())));
    }

    private static void fixings(ObjectNode n, Fixings fixings) {
        n.put("sort", Choice.word(fixings.sort())).put("name", fixings.name()).put("diameterMm", fixings.diameterMm()).put("lengthMm", fixings.lengthMm()).put("lateralN", fixings.hold().lateralN())
                .put("mode", fixings.hold().mode().word()).put("outNPerMm", fixings.hold().outNPerMm()).put("edgeMm", fixings.least().edgeMm()).put("endMm", fixings.least().endMm()).put("rowMm", fixings.least().rowMm())
                .put("apartMm", fixings.least().apartMm());
        each(n.putArray("places"), fixings.places(), (p, place) -> p.put("alongMm", place.alongMm()).put("acrossMm", place.acrossMm()));
    }

    private static void mixing(ObjectNode n, Mixing mixing) {
        n.put("resin", Choice.word(mixing.resin())).put("likelyMl", mixing.likelyMl()).put("buyMl", mixing.buyMl()).put("partAMl", mixing.parts().aMl()).put("partBMl", mixing.parts().bMl())
                .put("batches", mixing.batches().count()).put("batchMl", mixing.batches().eachMl()).put("workingS", mixing.workingS()).put("tempC", mixing.tempC()).put("lifts", mixing.lifts())
                .put("liftMm", mixing.liftMm()).put("againH", mixing.againH()).put("paintH", mixing.paintH());
        mixing.holes().ifPresent(holes -> n.putObject("holes").put("diameterMm", holes.diameterMm()).put("alongMm", holes.alongMm()).put("acrossMm", holes.acrossMm()).put("deepMm", holes.deepMm()).put("count", holes.count()));
    }

    private static void stock(ObjectNode n, Stock stock) {
        n.put("species", stock.species()).put("rings", stock.rings()).put("leastGravity", stock.leastDense()).put("apartMm", stock.apartMm()).put("rough", stock.rough()).put("planeMm", stock.planeMm()).put("why", stock.why());
        stock.sold().ifPresent(sold -> n.put("sold", Choice.word(sold)));
        words(n.putArray("others"), stock.others());
    }

    private static void outline(ObjectNode n, Outline outline) {
        n.put("worstMm", outline.worstMm());
        each(n.putArray("strokes"), outline.strokes(), (s, stroke) -> s.put("fromAcrossMm", stroke.fromX()).put("fromOutMm", stroke.fromY()).put("toAcrossMm", stroke.toX()).put("toOutMm", stroke.toY())
                .put("radiusMm", stroke.radiusMm()).put("cove", stroke.cove()).put("missMm", stroke.missMm()));
    }
}
