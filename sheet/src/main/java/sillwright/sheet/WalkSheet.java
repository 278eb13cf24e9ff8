package sillwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Species;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.work.Repair;

import static sillwright.sheet.Text.*;

/// Each side: its elevation on a sheet of its own, then its members and what was seen there.
final class WalkSheet {
    private WalkSheet() {}

    /// The sides that stand upright first; then those whose drawings lie, each on a sheet turned for it, and their members together behind them: paper that is turned leaves what follows a page of its own.
    static List<Markup> pages(Assessment assessment) {
        List<Markup> all = new ArrayList<>(), lying = new ArrayList<>(), behind = new ArrayList<>();
        for (Side side : assessment.survey().sides().values()) {
            List<Markup> words = table(assessment, side);
            if (Elevation.wantsALyingSheet(assessment, side.id())) {
                lying.add(div("lying", Text.drawing(Elevation.draw(assessment, side.id()))));
                behind.add(div(behind.isEmpty() ? "upright" : "upright runon", words));
            } else {
                words.set(0, div("keep", words.getFirst(), Text.drawing(Elevation.standing(assessment, side.id()))));
                all.add(div(all.isEmpty() ? "upright" : "upright runon", words));
            }
        }
        all.addAll(lying);
        all.addAll(behind);
        return all;
    }

    /// The drawings alone, for those who have to find a member.
    static List<Markup> drawings(Assessment assessment) {
        return assessment.survey().sides().values().stream().map(side -> div("lying", Text.drawing(Elevation.draw(assessment, side.id())))).toList();
    }

    static List<Markup> table(Assessment assessment, Side side) {
        Units units = assessment.settings().units();
        List<Markup> all = new ArrayList<>(List.of(h2("side-" + side.id(), Said.title(side))));
        String clearance = side.ground().clearance().map(mm -> ", the lowest wood " + Said.length(mm.own(), units) + " above it").orElse("");
        all.add(p("Looks " + Said.point(side.bearing().own()) + " (" + Math.round(side.bearing().own()) + "°), " + Said.length(side.lengthMm(), units)
                + " long. At its foot: " + Choice.said(side.ground().surface()) + clearance + "."));
        Map<String, Integer> numbers = Elevation.numbers(assessment, side.id());
        List<List<?>> rows = new ArrayList<>();
        List<Member> members = assessment.survey().membersOn(side.id());
        String species = most(members, Member::species), role = most(members, member -> Choice.said(member.role()));
        if (!members.isEmpty()) all.add(p("Where the table says no more, a member is of " + Species.said(species) + " and " + role + "."));
        for (Member member : members) rows.add(row(assessment, member, numbers.get(member.id()), species, role, units));
        if (rows.isEmpty()) all.add(p("No member of this side was described."));
        all.addAll(Text.table(List.of("No.", "Member", "Size", "Condition", "Moisture", "Soft to", "Treatment"), List.of(4, 29, 22, 9, 7, 8, 21),
                rows));
        all.addAll(seen(assessment, side, "Seen here: ", true));
        all.addAll(seen(assessment, side, "Looked for and not seen: ", false));
        return all;
    }

    private static List<Markup> seen(Assessment assessment, Side side, String head, boolean seen) {
        List<String> all = new ArrayList<>();
        for (Sighting sighting : assessment.survey().sightingsOn(side.id()))
            if (sighting.seen() == seen) all.add(sighting.sign().words() + sighting.member().map(id -> ", " + Said.title(assessment.survey().members().get(id))).orElse("")
                    + (sighting.words().isBlank() ? "" : " – " + sighting.words()));
        return all.isEmpty() ? List.of() : List.of(notes(b(head), String.join("; ", all) + "."));
    }

    /// What most members of a side are, said once above their table.
    private static String most(List<Member> members, Function<Member, String> what) {
        return members.stream().collect(Collectors.groupingBy(what, LinkedHashMap::new, Collectors.counting())).entrySet().stream().max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey).orElse("");
    }

    private static List<?> row(Assessment assessment, Member member, int number, String species, String role, Units units) {
        Condition condition = assessment.wood().conditions().get(member.id());
        String state = condition == null ? "not worked" : Said.state(condition.state());
        String moisture = condition == null ? "" : condition.wettest().map(Words::percent).orElse("–");
        double deepest = condition == null ? 0 : condition.damages().stream().mapToDouble(Damage::deepestMm).max().orElse(0);
        List<Object> treatments = new ArrayList<>();
        assessment.work().repairs().stream().filter(repair -> repair.damage().member().id().equals(member.id())).forEach(repair ->
                treatments.add(p(treatment(repair))));
        boolean wet = condition != null && condition.wettest().orElse(0.0) >= 0.20;
        return List.of(String.valueOf(number), Said.title(member) + more(member, species, role),
                Said.size(member.widthMm(), member.depthMm(), member.lengthMm(), units), condition != null && condition.needsWork() ? b(state)
                        : new Node.Text(state), wet ? b(moisture) : new Node.Text(moisture),
                deepest > 0 ? Said.length(deepest, units) : "–", treatments.isEmpty() ? new Node.Text("–") : treatments);
    }

    private static String more(Member member, String species, String role) {
        String kind = Choice.said(member.kind());
        List<String> more = new ArrayList<>();
        if (!Said.title(member).contains(kind)) more.add(kind);
        if (!member.species().equals(species)) more.add(Species.said(member.species()));
        if (!Choice.said(member.role()).equals(role)) more.add(Choice.said(member.role()));
        return more.isEmpty() ? "" : " (" + String.join(", ", more) + ")";
    }

    private static List<Node> treatment(Repair repair) {
        String words = repair.id() + " " + repair.treatment().words();
        Node urgent = repair.urgent() ? act(", cannot wait") : new Node.Text("");
        return words.contains(":") ? List.of(n(words), urgent) : List.of(new Node.Text(words), urgent);
    }
}
