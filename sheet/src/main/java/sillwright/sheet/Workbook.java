package sillwright.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.dhatim.fastexcel.Worksheet;

import sillwright.Assessment;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.work.Repair;
import sillwright.work.Tool;
import sillwright.work.WorkFindings;

/// All tables as one workbook, Office Open XML: a sheet for each, its first row the heads, amounts as plain numbers in the unit that the head names.
public final class Workbook {
    private final Assessment assessment;
    private final Unit length;
    private final Unit volume;

    private Workbook(Assessment assessment) {
        boolean us = assessment.settings().units() == Units.US;
        this.assessment = assessment;
        this.length = us ? Unit.INCH : Unit.MILLIMETRE;
        this.volume = us ? Unit.CUBIC_INCH : Unit.MILLILITRE;
    }

    public static void write(Assessment assessment, OutputStream out) throws IOException { new Workbook(assessment).write(out); }

    private void write(OutputStream out) throws IOException {
        try (org.dhatim.fastexcel.Workbook book = new org.dhatim.fastexcel.Workbook(out, "Sillwright", "1.0")) {
            sheet(book, "Members", members());
            sheet(book, "Damages", damages());
            sheet(book, "Water", water());
            sheet(book, "Repairs", repairs());
            sheet(book, "Order", order());
            sheet(book, "Tools", tools());
            sheet(book, "Cuts", cuts());
            sheet(book, "Left over", leftOver());
            sheet(book, "Work", work());
            sheet(book, "Watch", watch());
        }
    }

    private static void sheet(org.dhatim.fastexcel.Workbook book, String name, List<List<Object>> rows) throws IOException {
        Worksheet sheet = book.newWorksheet(name);
        for (int row = 0; row < rows.size(); row++)
            for (int column = 0; column < rows.get(row).size(); column++) {
                Object value = rows.get(row).get(column);
                switch (value) {
                    case Number number -> sheet.value(row, column, number);
                    case java.time.LocalDate day -> {
                        sheet.value(row, column, day);
                        sheet.style(row, column).format("yyyy-mm-dd").set();
                    }
                    default -> sheet.value(row, column, String.valueOf(value));
                }
            }
        sheet.range(0, 0, 0, Math.max(0, rows.getFirst().size() - 1)).style().bold().set();
        sheet.freezePane(0, 1);
        sheet.finish();
    }

    private double in(Unit unit, double own) { return Math.round(unit.fromOwn(own) * 1000) / 1000.0; }

    private List<List<Object>> members() {
        List<List<Object>> rows = heads("side", "number", "id", "member", "kind", "species", "role", "width_" + length.symbol(), "depth_" + length.symbol(), "length_" + length.symbol(), "condition",
                "wettest_percent");
        for (String side : assessment.survey().sides().keySet()) {
            Map<String, Integer> numbers = Elevation.numbers(assessment, side);
            for (Member member : assessment.survey().membersOn(side)) {
                Condition condition = assessment.wood().of(member.id());
                rows.add(List.of(side, numbers.get(member.id()), member.id(), Said.title(member), Choice.word(member.kind()), member.species(), Choice.word(member.role()),
                        in(length, member.widthMm()), in(length, member.depthMm()), in(length, member.lengthMm()), condition == null ? "" : Choice.word(condition.state()),
                        condition == null ? "" : condition.wettest().<Object>map(moisture -> Math.round(moisture * 1000) / 10.0).orElse("")));
            }
        }
        return rows;
    }

    private List<List<Object>> damages() {
        List<List<Object>> rows = heads("id", "member", "face", "from_" + length.symbol(), "to_" + length.symbol(), "deepest_" + length.symbol(), "soft_" + volume.symbol(), "soft_low",
                "soft_high", "area_left", "area_left_low", "bending_level_left", "bending_upright_left", "probe_ran_out");
        for (Damage damage : assessment.wood().damages())
            rows.add(List.of(damage.id(), damage.member().id(), Choice.word(damage.worst()), in(length, damage.fromMm()), in(length, damage.toMm()), in(length, damage.deepestMm()),
                    in(volume, damage.volumeMl().median()), in(volume, damage.volumeMl().low()), in(volume, damage.volumeMl().high()), damage.section().areaKept(), damage.section().keptLow(),
                    damage.section().sxKept(), damage.section().syKept(), damage.ranOut() ? "yes" : "no"));
        return rows;
    }

    private List<List<Object>> water() {
        List<List<Object>> rows = heads("id", "source", "side", "place", "probability", "before", "members", "first_remedy");
        assessment.water().sources().forEach(source -> rows.add(List.of(source.id(), source.source().words(), source.side(), source.place(), source.probability(), source.prior(),
                String.join(" ", source.members()), source.remedies().isEmpty() ? "" : source.remedies().getFirst().words())));
        return rows;
    }

    private List<List<Object>> repairs() {
        List<List<Object>> rows = heads("id", "member", "side", "treatment", "cannot_wait", "original_wood_lost_" + volume.symbol(), "stop_first", "reasons");
        for (Repair repair : assessment.work().repairs())
            rows.add(List.of(repair.id(), Said.title(repair.damage().member()), repair.damage().member().side(), repair.treatment().words(), repair.urgent() ? "yes" : "no",
                    in(volume, repair.woodLostMl()), String.join(" ", repair.waterFirst()), String.join("; ", repair.reasons())));
        return rows;
    }

    private List<List<Object>> order() {
        List<List<Object>> rows = heads("item", "need", "buy", "unit", "packs", "repairs", "waste_percent", "note");
        for (WorkFindings.OrderLine line : assessment.work().order()) {
            Unit unit = OrderSheet.unit(line.measure(), assessment.settings().units());
            rows.add(List.of(line.item(), in(unit, line.need()), in(unit, line.buy()), line.measure() == WorkFindings.OrderLine.Measure.COUNT ? "pieces" : unit.symbol(), line.packs(),
                    String.join(" ", line.repairs()), 100 * line.waste(), line.note()));
        }
        return rows;
    }

    private List<List<Object>> tools() {
        List<List<Object>> rows = heads("tool", "size", "count", "job", "repairs");
        for (Tool tool : assessment.work().plan().tools()) rows.add(List.of(tool.name(), tool.size(), tool.count(), tool.job(), String.join(" ", tool.repairs())));
        return rows;
    }

    private List<List<Object>> leftOver() {
        List<List<Object>> rows = heads("bar", "species", "section", "width_" + length.symbol(), "depth_" + length.symbol(), "length_" + length.symbol());
        for (WorkFindings.LeftOver left : assessment.work().leftOvers())
            rows.add(List.of(left.bar(), left.species(), left.name(), in(length, left.widthMm()), in(length, left.depthMm()), in(length, left.lengthMm())));
        return rows;
    }

    private List<List<Object>> cuts() {
        List<List<Object>> rows = heads("species", "section", "quality", "width_" + length.symbol(), "depth_" + length.symbol(), "bar", "in_hand", "stock_length_" + length.symbol(), "piece", "repair",
                "starts_at_" + length.symbol(), "piece_length_" + length.symbol(), "set", "left_over_" + length.symbol());
        int number = 0;
        for (WorkFindings.CutPlan plan : assessment.work().cuts())
            for (WorkFindings.Bar bar : plan.bars()) {
                number++;
                for (int k = 0; k < bar.pieces().size(); k++) {
                    Repair.Piece piece = bar.pieces().get(k);
                    rows.add(List.of(plan.species(), plan.bought().name(), Choice.word(plan.quality()), in(length, plan.widthMm()), in(length, plan.depthMm()), number, bar.inHand() ? "yes" : "no", in(length, bar.stockMm()), piece.label(),
                            piece.repair(), in(length, bar.startsMm().get(k)), in(length, piece.lengthMm()), piece.set(), in(length, bar.longestLeftMm())));
                }
            }
        return rows;
    }

    private List<List<Object>> work() {
        List<List<Object>> rows = heads("id", "kind", "title", "start", "end", "after", "serves", "words");
        for (WorkFindings.Task task : assessment.work().tasks())
            rows.add(List.of(task.id(), Choice.word(task.kind()), task.title(), task.start(), task.end(), String.join(" ", task.after()), String.join(" ", task.refs()), task.words()));
        return rows;
    }

    private List<List<Object>> watch() {
        List<List<Object>> rows = heads("round", "first", "side", "place", "look", "last", "expected", "because");
        assessment.watch().rounds().forEach(round -> round.checks().forEach(check -> check.asks().forEach(ask -> rows.add(List.of(round.title(), round.first().<Object>map(day -> day).orElse(""),
                check.side(), check.place(), ask.words(), ask.last(), ask.expected(), check.because())))));
        return rows;
    }

    private static List<List<Object>> heads(String... names) {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(List.of((Object[]) names));
        return rows;
    }
}
