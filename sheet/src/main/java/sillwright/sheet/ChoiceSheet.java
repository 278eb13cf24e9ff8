package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.Comparison.Compared;
import sillwright.work.Costing;
import sillwright.work.Lasting;
import sillwright.work.Repair;
import sillwright.work.Treatment;

import static sillwright.sheet.Text.*;

/// What else was weighed for every repair: one table, the original wood each way would have cost, and what spoke against it.
final class ChoiceSheet {
    private ChoiceSheet() {}

    /// The repairs in one table, for those who pay for them and do not make them.
    static Markup owners(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("work", "Repairs")));
        if (assessment.work().repairs().isEmpty()) all.add(p("No repair is called for."));
        List<List<?>> rows = new ArrayList<>();
        for (Repair repair : assessment.work().repairs())
            rows.add(List.of(b(repair.id()), Said.title(repair.damage().member()) + ", " + Said.sideTitle(assessment.survey(), repair.damage().member().side()),
                    repair.urgent() ? List.of(new Node.Text(repair.treatment().words()), act(", cannot wait")) : repair.treatment().words(), Words.wood(repair.woodLostMl(), units),
                    String.join(", ", repair.waterFirst()), String.join("; ", repair.reasons())));
        all.addAll(Text.table(List.of("", "Member", "What is done", "Original wood lost", "Stop first", "Why"), List.of(4, 22, 17, 9, 8, 40), rows));
        all.addAll(table(assessment));
        return div("upright", all);
    }

    /// What speaks for each treatment that was taken, in numbers, with what would come next and what it would take.
    static List<Markup> chosen(Assessment assessment) {
        Costing cost = assessment.work().plan().cost();
        List<List<?>> rows = new ArrayList<>();
        boolean priced = cost.repairs().stream().anyMatch(part -> part.money().draws() > 0);
        for (Repair repair : assessment.work().repairs()) rows.add(chosen(repair, cost.repairs().stream().filter(part -> part.id().equals(repair.id())).findFirst(), priced));
        rows.removeIf(List::isEmpty);
        if (rows.isEmpty()) return List.of();
        List<String> heads = new ArrayList<>(List.of("", "Taken", "Wood kept", "Serves, years", "Load uses", "Hours alone"));
        List<Integer> widths = new ArrayList<>(List.of(4, 15, 6, 9, 7, 8));
        if (priced) heads.add("Cost alone");
        if (priced) widths.add(13);
        heads.addAll(List.of("Next would come", "Wood kept", "Serves", "Hours"));
        widths.addAll(List.of(priced ? 20 : 33, 7, 6, 5));
        List<Markup> all = new ArrayList<>(List.of(h3("why", "Why each was chosen")));
        all.add(small("Of all that would hold, the one that asks least of the old wood and lasts. Years: with the water stopped, and if it runs on where that is less. Hours and cost are of each repair alone: four in five of the draws lie within. "
                + "Next would come: another that would hold, and that nothing else beats in everything."));
        all.addAll(Text.table(heads, widths, rows));
        return all;
    }

    private static List<?> chosen(Repair repair, Optional<Costing.Part> part, boolean priced) {
        Optional<Compared> taken = repair.comparison().all().stream().filter(Compared::taken).findFirst();
        if (taken.isEmpty()) return List.of();
        Lasting lasting = taken.get().lasting();
        List<Object> row = new ArrayList<>(List.of(b(repair.id()), repair.treatment().words(), Words.percent(taken.get().keptShare()),
                Words.number(lasting.stopped(), 0) + (lasting.stopped() - lasting.running() < 1 ? "" : "; " + Words.number(lasting.running(), 0)), taken.get().use().map(use -> Words.significant(use, 2)).orElse("\u2013"),
                part.map(one -> Words.number(one.hours().low(), 0) + " to " + Words.number(one.hours().high(), 0)).orElse(Words.number(taken.get().hours(), 1))));
        if (priced) row.add(part.filter(one -> one.money().draws() > 0).map(one -> Costing.sum(one.money().low()) + " to " + Costing.sum(one.money().high())).orElse("\u2013"));
        Optional<Compared> next = repair.comparison().all().stream().filter(other -> other.holds() && !other.taken() && other.worseThan().isEmpty()).findFirst();
        row.addAll(next.<List<String>>map(other -> List.of(other.treatment().words(), Words.percent(other.keptShare()), Words.number(other.lasting().stopped(), 0), Words.number(other.hours(), 1)))
                .orElse(List.of("nothing else would hold", "", "", "")));
        return row;
    }

    static List<Markup> table(Assessment assessment) {
        List<Repair> repairs = assessment.work().repairs().stream().filter(repair -> !repair.alternatives().isEmpty()).toList();
        if (repairs.isEmpty()) return List.of();
        Units units = assessment.settings().units();
        List<Class<?>> kinds = kinds(repairs);
        Map<String, String> letters = new LinkedHashMap<>();
        List<List<?>> rows = new ArrayList<>();
        for (Repair repair : repairs) {
            List<Object> row = new ArrayList<>(List.of(b(repair.id())));
            for (Class<?> kind : kinds) row.add(cell(repair, kind, letters, units));
            rows.add(row);
        }
        List<String> heads = new ArrayList<>(List.of(""));
        for (Class<?> kind : kinds) heads.add(named(repairs, kind));
        List<Integer> widths = new ArrayList<>(List.of(5));
        for (int i = 0; i < kinds.size(); i++) widths.add(95 / kinds.size());
        List<Markup> all = new ArrayList<>(List.of(h3("weighed", "What else was weighed")));
        all.add(small("Original wood that each way takes away, " + (units == Units.US ? "in³" : "mL") + ", and by letter what speaks against it; bold: the one chosen. Dots stand for the "
                + "measures of each repair, which stand in full in the print for the board."));
        all.addAll(Text.table(heads, widths, rows));
        all.addAll(Shared.run("Against it:", letters));
        return all;
    }

    /// In the order that the trade prefers them.
    private static List<Class<?>> kinds(List<Repair> repairs) {
        Set<Class<?>> met = new LinkedHashSet<>();
        for (Repair repair : repairs) {
            met.add(repair.treatment().getClass());
            repair.alternatives().forEach(other -> met.add(other.treatment().getClass()));
        }
        return List.of(Treatment.class.getPermittedSubclasses()).stream().filter(met::contains).<Class<?>>map(kind -> kind).toList();
    }

    /// `scarf splice`, without its slope.
    private static String named(List<Repair> repairs, Class<?> kind) {
        for (Repair repair : repairs) {
            if (kind.isInstance(repair.treatment())) return plain(repair.treatment());
            for (Repair.Alternative other : repair.alternatives()) if (kind.isInstance(other.treatment())) return plain(other.treatment());
        }
        return "";
    }

    private static String plain(Treatment treatment) { return treatment.words().replaceAll("\\s+[0-9]+:[0-9]+", ""); }

    private static Object cell(Repair repair, Class<?> kind, Map<String, String> letters, Units units) {
        if (kind.isInstance(repair.treatment())) return b(amount(repair.woodLostMl(), units));
        for (Repair.Alternative other : repair.alternatives()) {
            if (!kind.isInstance(other.treatment())) continue;
            List<String> said = new ArrayList<>();
            for (String reason : other.against().split("; ")) said.add(letters.computeIfAbsent(pattern(reason), _ -> Shared.letter(letters.size(), 'a')));
            return amount(other.lostMl(), units) + " " + String.join(" ", said.stream().distinct().toList());
        }
        return "–";
    }

    private static String amount(double mL, Units units) { return mL <= 0 ? "0" : Words.woodNumber(mL, units); }

    /// The reason without its measures, so that it is told once for all repairs: `soft to ..., where ... is shallow`.
    static String pattern(String reason) {
        return reason.replaceAll("[0-9][0-9.,/ -]*(?:(?:ft|in|mm|m|%|in³|ft³|mL|L|h)(?![a-z])\\s*)*[0-9/.-]*(?:\\s*(?:in|mm|%)(?![a-z]))?", "... ").replaceAll("\\s+([,;:]|\\.(?!\\.)|$)", "$1").replaceAll(" {2,}", " ")
                .replaceAll("(\\.\\.\\.)(\\s*\\.\\.\\.)+", "$1").strip();
    }
}
