package sillwright.store;

import java.util.List;
import java.util.function.BiConsumer;

import sillwright.Assessment;
import sillwright.measure.Basis;
import sillwright.walk.Choice;
import sillwright.walk.Fault;
import sillwright.walk.Member;
import sillwright.walk.Survey;
import sillwright.watch.WatchFindings;
import sillwright.water.WaterFindings;
import sillwright.wood.Capacity;
import sillwright.wood.Climate;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Forecast;
import sillwright.wood.Interval;
import sillwright.wood.Outlook;
import sillwright.wood.SectionLeft;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/// All that the five stages found, as one JSON document: `findings.json`. Its schema is `findings-1.schema.json`.
///
/// The unit of a number is in its name; a fraction is of one.
public final class FindingsFile {
    private static final JsonMapper JSON = JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private FindingsFile() {}

    public static String text(Assessment a) { return JSON.writeValueAsString(node(a)) + "\n"; }

    private static ObjectNode node(Assessment a) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("format", "sillwright-findings").put("version", 1);
        root.put("standing", "Screening, not engineering: load-bearing work, lead, asbestos, mould, work at height and electricity defer to local codes and licensed people.");
        Survey survey = a.survey();
        ObjectNode building = root.putObject("building");
        building.put("id", survey.building().map(b -> b.id()).orElse("")).put("name", survey.name()).put("note", survey.building().map(b -> b.note()).orElse(""));
        survey.building().ifPresent(b -> building.put("yearBuilt", b.yearBuilt()));
        ObjectNode walk = root.putObject("walk");
        walk.put("entries", survey.entries()).put("sides", survey.sides().size()).put("members", survey.members().size()).put("probes", survey.probes().size())
                .put("moistures", survey.moistures().size()).put("sightings", survey.sightings().size());
        each(walk.putArray("faults"), survey.faults(), FindingsFile::fault);
        water(root.putObject("water"), a.water());
        ObjectNode wood = root.putObject("wood");
        Climate.index(survey.building()).ifPresent(index -> wood.put("schefferIndex", index).put("climateHazard", Choice.word(Climate.hazard(index))));
        each(wood.putArray("members"), List.copyOf(a.wood().all()), FindingsFile::condition);
        each(wood.putArray("outlooks"), List.copyOf(a.wood().outlooks().values()), FindingsFile::outlook);
        each(wood.putArray("capacities"), List.copyOf(a.wood().capacities().values()), FindingsFile::capacity);
        words(wood.putArray("gaps"), a.wood().gaps());
        work(root.putObject("work"), a.work());
        each(root.putObject("watch").putArray("rounds"), a.watch().rounds(), FindingsFile::round);
        return root;
    }

    private static void fault(ObjectNode node, Fault f) {
        node.put("file", f.file()).put("entry", f.entry()).put("field", f.field()).put("what", f.what()).put("mend", f.mend()).put("setAside", f.grave());
    }

    private static void water(ObjectNode node, WaterFindings water) {
        each(node.putArray("sources"), water.sources(), (n, s) -> {
            n.put("id", s.id()).put("source", Choice.word(s.source())).put("words", s.words()).put("side", s.side()).put("place", s.place())
                    .put("probability", s.probability()).put("prior", s.prior()).put("toStop", s.probability() >= WaterFindings.LIKELY);
            each(n.putArray("evidence"), s.evidence(), (e, one) -> e.put("words", one.words()).put("weightBits", one.weight()));
            each(n.putArray("remedies"), s.remedies(), (r, one) -> basis(r.put("words", one.words()).put("hours", one.hours()).putArray("basis"), List.of(one.basis())));
            words(n.putArray("members"), s.members());
        });
        each(node.putArray("gutters"), water.gutters(), (n, g) -> basis(n.put("side", g.side()).put("edge", g.edge()).put("inflowLitrePerSecond", g.inflowLs())
                .put("capacityLitrePerSecond", g.capacityLs()).put("downspoutLitrePerSecond", g.downspoutLs()).put("overflows", g.overflows())
                .put("cloggedMinutes", finite(g.cloggedMinutes())).put("words", g.words()).putArray("basis"), g.basis()));
        each(node.putArray("splashes"), water.splashes(), (n, s) -> basis(n.put("side", s.side()).put("clearanceMm", s.clearanceMm()).put("reachMm", s.reachMm())
                .put("share", s.share()).put("words", s.words()).putArray("basis"), s.basis()));
        water.nextLook().ifPresent(look -> node.putObject("nextLook").put("side", look.side()).put("words", look.words()).put("minutes", look.minutes()).put("bits", look.bits()));
        words(node.putArray("gaps"), water.gaps());
    }

    /// JSON has no number without end.
    private static Double finite(double value) { return Double.isFinite(value) ? value : null; }

    private static void condition(ObjectNode node, Condition c) {
        Member m = c.member();
        node.put("id", m.id()).put("title", m.title()).put("side", m.side()).put("kind", Choice.word(m.kind())).put("role", Choice.word(m.role()))
                .put("state", Choice.word(c.state())).put("readings", c.readings()).put("words", c.words());
        c.wettest().ifPresent(wettest -> node.put("wettestMoisture", wettest));
        each(node.putArray("damages"), c.damages(), FindingsFile::damage);
        basis(node.putArray("basis"), c.basis());
    }

    private static void outlook(ObjectNode node, Outlook o) {
        node.put("member", o.member()).put("wettingHoursPerYear", o.wettingHours()).put("meanMoisture", o.meanMoisture()).put("dampDaysPerYear", o.dampDays()).put("limit", o.limit())
                .put("driesInAYear", o.driesInAYear()).put("atAnEnd", o.atAnEnd()).put("words", o.words()).put("caution", Outlook.CAUTION);
        interval(node.putObject("dryDownDays"), o.dryDownDays());
        forecast(node.putObject("asIs"), o.asIs());
        forecast(node.putObject("stopped"), o.stopped());
        basis(node.putArray("basis"), o.basis());
    }

    private static void capacity(ObjectNode node, Capacity c) {
        node.put("member", c.member().id()).put("verdict", Choice.word(c.verdict())).put("words", c.words()).put("shoreLoadN", c.shore().loadN()).put("shorePadSideMm", c.shore().padSideMm());
        c.alert().ifPresent(alert -> node.put("alert", alert));
        interval(node.putObject("utilisation"), c.utilisation());
        words(node.putArray("assumptions"), c.assumptions());
        basis(node.putArray("basis"), c.basis());
    }

    private static void forecast(ObjectNode node, Forecast f) {
        each(node.putArray("ratings"), f.ratings(), FindingsFile::interval);
        interval(node.putObject("doseDaysPerYear"), f.daysAYear());
        f.yearsToNext().ifPresent(years -> interval(node.putObject("yearsToNext"), years));
    }

    private static void damage(ObjectNode node, Damage d) {
        node.put("id", d.id()).put("worstFace", Choice.word(d.worst())).put("fromMm", d.fromMm()).put("toMm", d.toMm()).put("deepestMm", d.deepestMm())
                .put("areaMm2", d.areaMm2()).put("probeRanOut", d.ranOut());
        interval(node.putObject("volumeMl"), d.volumeMl());
        SectionLeft s = d.section();
        node.putObject("sectionLeft").put("stationMm", s.stationMm()).put("areaKept", s.areaKept()).put("areaKeptLow", s.keptLow()).put("sxKept", s.sxKept())
                .put("syKept", s.syKept()).put("shiftXMm", s.shiftXMm()).put("shiftYMm", s.shiftYMm());
    }

    private static void interval(ObjectNode node, Interval i) { node.put("low", i.low()).put("median", i.median()).put("high", i.high()); }

    private static void work(ObjectNode node, WorkFindings work) {
        each(node.putArray("repairs"), work.repairs(), FindingsFile::repair);
        each(node.putArray("order"), work.order(), (n, line) -> words(n.put("item", line.item()).put("measure", Choice.word(line.measure())).put("need", line.need())
                .put("buy", line.buy()).put("packs", line.packs()).putArray("repairs"), line.repairs()));
        each(node.putArray("cuts"), work.cuts(), (n, plan) -> {
            n.put("species", plan.species()).put("widthMm", plan.widthMm()).put("depthMm", plan.depthMm()).put("kerfMm", plan.kerfMm()).put("proven", plan.proven()).put("gap", plan.gap());
            each(n.putArray("bars"), plan.bars(), (b, bar) -> each(b.put("stockMm", bar.stockMm()).put("leftMm", bar.leftMm()).putArray("pieces"), bar.pieces(), FindingsFile::piece));
        });
        each(node.putArray("tasks"), work.tasks(), (n, task) -> {
            n.put("id", task.id()).put("kind", Choice.word(task.kind())).put("title", task.title()).put("words", task.words()).put("start", task.start().toString()).put("end", task.end().toString());
            words(n.putArray("after"), task.after());
            words(n.putArray("refs"), task.refs());
        });
        each(node.putArray("safety"), work.safety(), (n, side) -> {
            n.put("side", side.side()).put("paintMm2", side.paintMm2()).put("leadRuleApplies", side.leadApplies()).put("coverMm", side.coverMm()).put("barrier", side.barrier());
            words(n.putArray("duties"), side.duties());
            words(n.putArray("cautions"), side.cautions());
            basis(n.putArray("basis"), side.basis());
        });
        words(node.putArray("gaps"), work.gaps());
    }

    private static void repair(ObjectNode n, Repair r) {
        n.put("id", r.id()).put("member", r.damage().member().id()).put("damage", r.damage().id()).put("treatment", treatment(r.treatment())).put("words", r.treatment().words())
                .put("urgent", r.urgent()).put("woodLostMl", r.woodLostMl());
        words(n.putArray("waterFirst"), r.waterFirst());
        words(n.putArray("reasons"), r.reasons());
        each(n.putArray("alternatives"), r.alternatives(), (a, one) -> a.put("treatment", treatment(one.treatment())).put("words", one.treatment().words())
                .put("woodLostMl", one.lostMl()).put("against", one.against()));
        words(n.putArray("steps"), r.steps());
        each(n.putArray("pieces"), r.pieces(), FindingsFile::piece);
        each(n.putArray("needs"), r.needs(), (need, one) -> need.put("material", Choice.word(one.material())).put("measure", Choice.word(one.material().measure())).put("amount", one.amount()));
        words(n.putArray("cautions"), r.cautions());
        basis(n.putArray("basis"), r.basis());
    }

    private static String treatment(Treatment treatment) {
        return switch (treatment) {
            case Treatment.Watch _ -> "watch";
            case Treatment.Recoat _ -> "recoat";
            case Treatment.Consolidate _ -> "consolidate";
            case Treatment.Dutchman _ -> "dutchman";
            case Treatment.BuildUp _ -> "build-up";
            case Treatment.ButtSplice _ -> "butt-splice";
            case Treatment.HalfLap _ -> "half-lap-splice";
            case Treatment.ScarfSplice _ -> "scarf-splice";
            case Treatment.Replace _ -> "replace";
        };
    }

    private static void piece(ObjectNode n, Repair.Piece p) {
        n.put("label", p.label()).put("repair", p.repair()).put("species", p.species()).put("widthMm", p.widthMm()).put("depthMm", p.depthMm()).put("lengthMm", p.lengthMm());
    }

    private static void round(ObjectNode node, WatchFindings.Round round) {
        node.put("id", round.id()).put("title", round.title()).put("first", round.first().toString()).put("why", round.why());
        each(node.putArray("checks"), round.checks(), (n, c) -> {
            n.put("side", c.side()).put("words", c.words()).put("last", c.last()).put("expected", c.expected()).put("because", c.because());
            c.member().ifPresent(member -> n.put("member", member));
        });
        basis(node.putArray("basis"), round.basis());
    }

    private static void basis(ArrayNode array, List<Basis> all) {
        for (Basis one : all) array.addObject().put("source", one.source()).put("where", one.where()).put("known", one.known().words());
    }

    private static void words(ArrayNode array, List<String> all) { all.forEach(array::add); }

    private static <T> void each(ArrayNode array, List<T> all, BiConsumer<ObjectNode, T> put) { for (T one : all) put.accept(array.addObject(), one); }
}
