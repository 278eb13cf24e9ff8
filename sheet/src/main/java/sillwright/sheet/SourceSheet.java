package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.Assessment;
import sillwright.measure.Basis;
import sillwright.measure.Known;
import sillwright.measure.Words;
import sillwright.walk.Choice;

import static sillwright.sheet.Text.*;

/// How it was worked, and everything it rests on, parted by how it is known.
final class SourceSheet {
    /// So many places of one source stand in a paragraph, or fewer. Own choice.
    private static final int TOGETHER = 5;

    private SourceSheet() {}

    static Set<Basis> all(Assessment assessment) {
        Set<Basis> all = new LinkedHashSet<>();
        assessment.water().gutters().forEach(check -> all.addAll(check.basis()));
        assessment.water().splashes().forEach(check -> all.addAll(check.basis()));
        assessment.water().sources().forEach(source -> source.remedies().forEach(remedy -> all.add(remedy.basis())));
        assessment.wood().all().forEach(condition -> all.addAll(condition.basis()));
        assessment.work().repairs().forEach(repair -> all.addAll(repair.basis()));
        assessment.work().safety().forEach(side -> all.addAll(side.basis()));
        assessment.watch().rounds().forEach(round -> all.addAll(round.basis()));
        return all;
    }

    static Markup page(Assessment assessment) {
        List<Markup> page = new ArrayList<>(List.of(h2("sources", "Method, sources and cautions")));
        page.add(p("The walk is folded from its entries; nothing is overwritten. Sources of water are ranked by weighing every sighting at once. "
                + "Decayed depth between the probes is estimated with its uncertainty, and"
                + " the section left follows from it. The treatment that takes away least and holds is chosen; the others are shown with what "
                + "speaks against them. Hatching in the drawings goes by depth alone: up to "
                + Words.length(Hatch.SOFTENED_MM, assessment.settings().units()) + " softened, deeper decayed, " + Words.percent(Hatch.HOLLOW_SHARE)
                        + " of the way through hollow (this program's own choice)."));
        page.add(div("caution", b(Said.SCREENING + ". "),
                "Strength, load and safety figures sift what needs a closer look; they are no design. Prices, colours of mould and kinds of coating "
                        + "are not judged from here."));
        Set<Basis> all = all(assessment);
        if (all.isEmpty()) page.add(p("Nothing was worked, so nothing is cited."));
        for (Known known : Known.values()) {
            Map<String, Set<String>> where = new LinkedHashMap<>();
            for (Basis basis : all) if (basis.known() == known) where.computeIfAbsent(basis.source(), _ -> new LinkedHashSet<>()).add(basis.where());
            if (where.isEmpty()) continue;
            List<Markup> each = new ArrayList<>();
            where.forEach((source, places) -> each.addAll(paragraphs(source, places.stream().filter(place -> !place.isEmpty()).toList())));
            page.add(h3("known-" + Choice.word(known), Words.sentence(known.words())));
            page.add(twoColumns(each));
        }
        return div("upright runon", page);
    }

    /// A source and its places; many of them in paragraphs of a few, so that they part over two columns.
    private static List<Markup> paragraphs(String source, List<String> places) {
        List<Markup> all = new ArrayList<>();
        int runs = Math.max(1, (places.size() + TOGETHER - 1) / TOGETHER);
        for (int i = 0; i < runs; i++) {
            List<String> some = places.subList(places.size() * i / runs, places.size() * (i + 1) / runs);
            all.add(notes((i == 0 ? source + (some.isEmpty() ? "" : ": ") : "") + String.join("; ", some) + (i < runs - 1 ? ";" : "")));
        }
        return all;
    }
}
