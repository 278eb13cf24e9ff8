package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.wood.Condition;
import sillwright.work.Repair;

import static sillwright.sheet.Text.*;

/// The case before a review board: what original wood is kept, what else was weighed, under the published standards for treatment.
final class BoardSheet {
    private BoardSheet() {}

    static Markup page(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h1(assessment.survey().name()), small(Words.sentence(Said.walkedWords(assessment.survey())) + ".")));
        assessment.survey().building().filter(building -> !building.note().isBlank()).ifPresent(building -> all.add(small(building.note())));
        all.add(h2("board", "What is kept, and why"));
        all.add(lead(kept(assessment, units)));
        List<List<?>> rows = new ArrayList<>();
        Map<String, List<Repair>> ways = new LinkedHashMap<>();
        for (Repair repair : assessment.work().repairs()) ways.computeIfAbsent(repair.treatment().words().replaceAll("\\s+[0-9]+:[0-9]+", ""), _ -> new ArrayList<>()).add(repair);
        ways.forEach((way, repairs) -> rows.add(List.of(way, String.valueOf(repairs.size()), Words.wood(repairs.stream().mapToDouble(Repair::woodLostMl).sum(), units),
                String.join(", ", repairs.stream().map(Repair::id).toList()))));
        all.addAll(table(List.of("Treatment", "Members' damages", "Original wood taken away", "Repairs"), List.of(26, 14, 20, 40), rows));
        all.add(h3("standards", "The standards, and how each is met"));
        all.add(small("The Secretary of the Interior's Standards for the Treatment of Historic Properties, 36 CFR 68.3, told here in short and not in their words; which of the four treatments a "
                + "project falls under, and whether a feature is distinctive, are the board's to say."));
        all.addAll(table(List.of("Standard", "What it asks", "How it is met here"), List.of(22, 34, 44), standards(assessment, units)));
        all.add(div("caution", b(Said.SCREENING + ". "), "The local ordinance, the board and the building official decide; nothing here stands for their approval. Cite the edition in force."));
        return div("upright", all);
    }

    private static Markup h1(String words) { return Markup.of("h1", words); }

    private static String kept(Assessment assessment, Units units) {
        List<Repair> repairs = assessment.work().repairs();
        double whole = 0, lost = 0, ifReplaced = 0;
        for (Condition condition : assessment.wood().all()) whole += condition.member().sectionMm2() * condition.member().lengthMm() / 1000;
        for (Repair repair : repairs) lost += repair.woodLostMl();
        for (Condition condition : assessment.wood().all())
            if (repairs.stream().anyMatch(repair -> repair.damage().member().id().equals(condition.member().id()))) ifReplaced += condition.member().sectionMm2() * condition.member().lengthMm() / 1000;
        if (repairs.isEmpty() || whole <= 0) return "No repair is called for: all the wood that was surveyed is kept.";
        return "Of " + Words.wood(whole, units) + " of wood surveyed, " + Words.percent(1 - Math.min(1, lost / whole)) + " stays in place. The repairs take away " + Words.wood(lost, units)
                + "; to replace every damaged member whole would take " + Words.wood(ifReplaced, units) + ", so " + Words.percent(1 - Math.min(1, lost / ifReplaced)) + " of that is saved.";
    }

    private static List<List<?>> standards(Assessment assessment, Units units) {
        List<Repair> repairs = assessment.work().repairs();
        long whole = repairs.stream().filter(repair -> repair.treatment() instanceof sillwright.work.Treatment.Replace).count();
        long nothing = repairs.stream().filter(repair -> repair.woodLostMl() <= 0).count();
        long matched = repairs.stream().flatMap(repair -> repair.pieces().stream().filter(piece -> piece.species().equals(repair.damage().member().species()))).count();
        long pieces = repairs.stream().mapToLong(repair -> repair.pieces().size()).sum();
        return List.of(
                List.of("68.3(a)(2), 68.3(b)(2)", "Historic character is kept; taking out sound or repairable historic material is avoided.",
                        "Every damage is treated with what takes away least and still holds; what else was weighed stands beside each repair. " + Words.count((int) nothing, "repair") + " of "
                                + repairs.size() + " take no original wood." + decided(repairs)),
                List.of("68.3(a)(6), 68.3(b)(6)", "What has decayed is repaired rather than replaced; where the damage forces replacement, the new matches the old in design, texture and, where possible, material.",
                        Words.count((int) whole, "member") + " of " + repairs.size() + " damaged places are replaced whole, in kind, each with its reason; " + matched + " of " + pieces
                                + " new pieces are of the species they join."),
                List.of("68.3(a)(3)", "Work to stabilise and conserve is compatible, can be told on close inspection, and is recorded for those who come later.",
                        "Each repair is drawn to scale with its joint, dated by the order of work, and found again by its number on the elevations."),
                List.of("68.3(a)(5), 68.3(b)(5)", "Distinctive materials, features and craftsmanship are kept.",
                        "Sizes and outlines are taken from the members themselves; a member that is replaced is kept as the pattern."),
                List.of("68.3(a)(7), 68.3(b)(7)", "Chemical and physical treatments are the gentlest that do; none that harm historic material.",
                        "Water is stopped first (" + Words.count(assessment.water().toStop().size(), "source") + "). Scraping is damp and by hand; no open flame, no blasting; consolidant only into softened wood."));
    }

    private static String decided(List<Repair> repairs) {
        List<String> changed = repairs.stream().filter(repair -> repair.ruling().filter(ruling -> ruling.changes(repair.treatment())).isPresent()).map(Repair::id).toList();
        return changed.isEmpty() ? "" : " In place of what was recommended, another treatment was chosen at " + Words.list(changed) + "; the reason stands there.";
    }

    /// What was not chosen, where the treatments were not worked side by side.
    private static List<Markup> weighed(Repair repair, Units units) {
        List<List<?>> rows = new ArrayList<>();
        for (Repair.Alternative other : repair.alternatives()) rows.add(List.of(other.treatment().words(), Words.wood(other.lostMl(), units), other.against()));
        return table(List.of("Instead", "Wood lost", "What speaks against it"), List.of(24, 14, 62), rows);
    }

    /// Each repair with all that was weighed, in full.
    static Markup repairs(Assessment assessment) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("work", "Repairs, and what else was weighed"), Text.drawing(RepairDrawing.legend())));
        for (Repair repair : assessment.work().repairs()) {
            List<Markup> one = new ArrayList<>();
            one.add(h3("repair-text-" + repair.id(), repair.id() + "  " + Words.sentence(repair.treatment().words()) + ": " + Said.title(repair.damage().member())));
            List<Markup> words = new ArrayList<>(List.of(p(Said.sideTitle(assessment.survey(), repair.damage().member().side()) + ". Original wood taken away: "
                    + Words.wood(repair.woodLostMl(), units) + ". " + String.join(" ", repair.reasons().stream().map(reason -> reason.replaceFirst("[.;]$", "") + ".").toList()))));
            one.add(pair(List.of(Text.drawing(RepairDrawing.small(repair, units))), words));
            one.addAll(repair.comparison().all().isEmpty() ? weighed(repair, units) : ComparedSheet.of(repair));
            all.add(div("repair keep", one));
        }
        if (assessment.work().repairs().isEmpty()) all.add(p("No repair is called for."));
        return div("upright", all);
    }
}
