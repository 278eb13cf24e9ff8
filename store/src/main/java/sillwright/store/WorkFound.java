package sillwright.store;

import static sillwright.store.Nodes.basis;
import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.words;

import sillwright.walk.Choice;
import sillwright.work.Repair;
import sillwright.work.SafePlan;
import sillwright.work.WorkFindings;
import sillwright.work.schedule.Timetable;
import tools.jackson.databind.node.ObjectNode;

/// What the work stage found, as its part of `findings.json`.
final class WorkFound {
    private WorkFound() {}

    static void put(ObjectNode node, WorkFindings work) {
        each(node.putArray("repairs"), work.repairs(), WorkFound::repair);
        each(node.putArray("order"), work.order(), (n, line) -> words(n.put("item", line.item()).put("measure", Choice.word(line.measure())).put("need", line.need())
                .put("buy", line.buy()).put("packs", line.packs()).put("waste", line.waste()).put("note", line.note()).putArray("repairs"), line.repairs()));
        each(node.putArray("tools"), work.plan().tools(), (n, tool) -> words(n.put("name", tool.name()).put("size", tool.size()).put("job", tool.job()).put("count", tool.count()).putArray("repairs"), tool.repairs()));
        each(node.putArray("cuts"), work.cuts(), (n, plan) -> {
            n.put("species", plan.species()).put("section", plan.bought().name()).put("quality", Choice.word(plan.quality())).put("widthMm", plan.widthMm()).put("depthMm", plan.depthMm()).put("kerfMm", plan.kerfMm()).put("proven", plan.proven()).put("gap", plan.gap());
            each(n.putArray("bars"), plan.bars(), WorkFound::bar);
        });
        each(node.putArray("leftOver"), work.leftOvers(), (n, left) -> n.put("bar", left.bar()).put("species", left.species()).put("section", left.name()).put("widthMm", left.widthMm()).put("depthMm", left.depthMm())
                .put("lengthMm", left.lengthMm()));
        each(node.putArray("tasks"), work.tasks(), (n, task) -> {
            n.put("id", task.id()).put("kind", Choice.word(task.kind())).put("title", task.title()).put("words", task.words()).put("start", task.start().toString()).put("end", task.end().toString());
            words(n.putArray("after"), task.after());
            words(n.putArray("refs"), task.refs());
            n.put("hours", task.hours()).put("lot", task.lot());
        });
        each(node.putArray("safety"), work.safety(), (n, side) -> {
            n.put("side", side.side()).put("paintMm2", side.paintMm2()).put("leadRuleApplies", side.leadApplies()).put("coverMm", side.coverMm()).put("sheetingMm2", side.sheetingMm2()).put("barrier", side.barrier());
            words(n.putArray("duties"), side.duties());
            words(n.putArray("cautions"), side.cautions());
            basis(n.putArray("basis"), side.basis());
            if (!side.plan().equals(SafePlan.NONE)) safe(n.putObject("plan"), side.plan());
        });
        work.plan().timetable().ifPresent(timetable -> timetable(node.putObject("timetable"), timetable));
        CostFound.put(node.putObject("cost"), work.plan().cost());
        words(node.putArray("gaps"), work.gaps());
    }

    /// Millimetres: x along the wall from the side's left end, y out from it.
    private static void safe(ObjectNode n, SafePlan plan) {
        area(n.putObject("work"), plan.work());
        area(n.putObject("sheet"), plan.sheet());
        if (Double.isFinite(plan.line())) n.put("line", plan.line());
        if (plan.barrier() > 0) n.put("barrier", plan.barrier());
        each(n.putArray("closed"), plan.openings(), (o, near) -> o.put("opening", near.number()).put("door", near.door()).put("left", near.left()).put("right", near.right()).put("onSheet", near.inSheet()));
        each(n.putArray("stands"), plan.stands(), (s, stand) -> {
            s.put("kind", stand.scaffold() ? "scaffold" : "ladder").put("height", stand.height()).put("ladderLength", stand.length());
            area(s.putObject("foot"), stand.foot());
            words(s.putArray("repairs"), stand.repairs());
        });
        each(n.putArray("props"), plan.shores(), (s, shore) -> s.put("x", shore.x()).put("y", shore.y()).put("pad", shore.pad()).put("repair", shore.repair()));
        area(n.putObject("waste"), plan.waste());
        each(n.putArray("lines"), plan.lines(), (l, line) -> l.put("topic", line.topic()).put("words", line.words()).put("source", line.basis().source()).put("where", line.basis().where()).put("known", line.basis().known().words()));
    }

    private static void area(ObjectNode n, SafePlan.Area area) { n.put("left", area.left()).put("right", area.right()).put("near", area.near()).put("far", area.far()); }

    private static void timetable(ObjectNode n, Timetable t) {
        n.put("confidence", t.confidence()).put("finish", t.finish().toString()).put("middle", t.middle().toString()).put("bound", t.bound().toString()).put("proven", t.proven())
                .put("gapDays", t.gapDays()).put("years", t.years()).put("words", t.words());
        each(n.putArray("slots"), t.slots(), (s, slot) -> s.put("start", slot.first().toString()).put("end", slot.last().toString()).put("floatDays", slot.floatDays()));
        each(n.putArray("stints"), t.stints(), (s, stint) -> s.put("day", stint.day().toString()).put("crew", stint.crew() + 1).put("task", "T" + (stint.activity() + 1)).put("minutes", stint.minutes()));
        t.wetMonth().ifPresent(wet -> n.putObject("wetMonth").put("month", wet.month()).put("finish", wet.finish().toString()));
    }

    private static void repair(ObjectNode n, Repair r) {
        n.put("id", r.id()).put("member", r.damage().member().id()).put("damage", r.damage().id()).put("treatment", r.treatment().word()).put("words", r.treatment().words())
                .put("urgent", r.urgent()).put("woodLostMl", r.woodLostMl());
        words(n.putArray("waterFirst"), r.waterFirst());
        words(n.putArray("reasons"), r.reasons());
        each(n.putArray("alternatives"), r.alternatives(), (a, one) -> a.put("treatment", one.treatment().word()).put("words", one.treatment().words())
                .put("woodLostMl", one.lostMl()).put("against", one.against()));
        words(n.putArray("steps"), r.steps());
        each(n.putArray("pieces"), r.pieces(), WorkFound::piece);
        each(n.putArray("needs"), r.needs(), (need, one) -> need.put("material", Choice.word(one.material())).put("size", one.size()).put("measure", Choice.word(one.material().measure())).put("amount", one.amount()));
        words(n.putArray("cautions"), r.cautions());
        r.ruling().ifPresent(ruling -> RepairFound.put(n.putObject("decision"), ruling));
        RepairFound.put(n.putObject("comparison"), r.comparison());
        RepairFound.put(n.putObject("design"), r.design());
        basis(n.putArray("basis"), r.basis());
    }

    private static void bar(ObjectNode n, WorkFindings.Bar bar) {
        n.put("stockMm", bar.stockMm()).put("leftMm", bar.leftMm()).put("longestLeftMm", bar.longestLeftMm()).put("inHand", bar.inHand());
        each(n.putArray("pieces"), bar.pieces(), WorkFound::piece);
        bar.startsMm().forEach(n.putArray("startsMm")::add);
        each(n.putArray("flaws"), bar.flaws(), (f, flaw) -> f.put("fromMm", flaw.fromMm()).put("toMm", flaw.toMm()));
    }

    private static void piece(ObjectNode n, Repair.Piece p) {
        n.put("label", p.label()).put("repair", p.repair()).put("species", p.species()).put("widthMm", p.widthMm()).put("depthMm", p.depthMm()).put("lengthMm", p.lengthMm()).put("quality", Choice.word(p.quality())).put("set", p.set());
    }
}
