package sillwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import sillwright.Assessment;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
import sillwright.water.WaterFindings;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.wood.Change;

import static sillwright.sheet.Text.*;

/// Where the water comes from, what speaks for it, and what stops it.
final class WaterSheet {
    /// Sources less likely than this are named in one line only. Own choice.
    private static final double WORTH_TELLING = 0.15;

    private static final int FEW = 6;

    private WaterSheet() {}

    static Markup page(Assessment assessment) {
        WaterFindings water = assessment.water();
        List<Markup> all = new ArrayList<>(List.of(h2("water", "Water")));
        all.add(p("Sources in order of how likely they are at work, all sightings weighed together. ",
                b("Find and stop these before any wood is cut.")));
        List<Markup> likely = new ArrayList<>();
        List<List<?>> lesser = new ArrayList<>();
        Map<String, Change> gains = gains(assessment);
        for (RankedSource source : water.sources()) {
            if (source.probability() >= WaterFindings.LIKELY) likely.add(likely(assessment, source, Optional.ofNullable(gains.get(source.id()))));
            else if (source.probability() >= WORTH_TELLING) lesser.add(lesser(assessment, source));
        }
        if (likely.isEmpty()) all.add(p("No source stands out on what was seen so far."));
        else all.add(small("The number behind each piece of evidence is how strongly it speaks: above 0 for the source, below 0 against it. Where it names no side, it is the side of the source."));
        all.addAll(likely);
        if (!lesser.isEmpty()) all.add(h3("lesser", "Less likely, and not ruled out"));
        all.addAll(table(List.of("", "Source", "Where", "Likely", "What speaks most for it or against it"), List.of(4, 31, 26, 5, 34), lesser));
        List<String> faint = water.sources().stream().filter(source -> source.probability() < WORTH_TELLING).map(source -> source.words() + " ("
                + Words.chance(source.probability()) + ")").toList();
        if (!faint.isEmpty()) all.add(notes("Hardly likely: " + String.join("; ", faint) + "."));
        water.nextLook().ifPresent(look -> all.add(div("keep", h3("next-look", "The next look worth taking"),
                p(Words.sentence(look.words()) + ": about " + Words.count((int) Math.round(look.minutes()), "minute") + ". It is expected to settle " + Words.number(look.bits(), 1)
                        + " bits of what is still open; one bit is one fair yes-or-no."))));
        all.addAll(rounds(assessment));
        all.addAll(lives(assessment));
        all.addAll(gutters(assessment));
        all.addAll(splashes(assessment));
        all.addAll(rains(assessment));
        water.cold().ifPresent(cold -> all.add(div("keep", h3("cold-wall", "Damp from indoors"), p(cold.words()))));
        return div("upright", all);
    }

    private static List<?> lesser(Assessment assessment, RankedSource source) {
        String strongest = weightiest(source).limit(1).map(one -> (one.weight() >= 0 ? "for: " : "against: ") + plain(one, source)).findFirst().orElse("");
        return List.of(source.id(), source.source().words(), where(assessment, source), n(Words.chance(source.probability())), strongest);
    }

    /// Without what stands before it already: which way it speaks; and the side of its source.
    private static String plain(WaterFindings.Evidence evidence, RankedSource source) {
        return evidence.words().replaceFirst(": speaks (for|against) it", "").replace(", " + source.side() + " side", "");
    }

    private static Stream<WaterFindings.Evidence> weightiest(RankedSource source) {
        return source.evidence().stream().sorted(Comparator.comparingDouble(one -> -Math.abs(one.weight())));
    }

    private static String where(Assessment assessment, RankedSource source) {
        return Said.sideTitle(assessment.survey(), source.side()) + (source.place().isEmpty() ? "" : ", " + source.place());
    }

    /// Of each source the change in the wood that stopping it brings most of, all worked at once.
    private static Map<String, Change> gains(Assessment assessment) {
        Map<String, Change> most = new HashMap<>();
        for (Change change : Change.all(assessment.water(), assessment.wood()))
            most.merge(change.source(), change, (one, other) -> one.hours() - one.hoursThen() >= other.hours() - other.hoursThen() ? one : other);
        return most;
    }

    private static Markup likely(Assessment assessment, RankedSource source, Optional<Change> gain) {
        List<String> wets = source.members().stream().map(id -> named(assessment, id)).toList();
        String members = wets.isEmpty() ? "" : ". Wets " + (wets.size() <= FEW ? Words.list(wets) : String.join(", ", wets.subList(0, FEW)) + " and "
                + (wets.size() - FEW) + " more");
        List<WaterFindings.Evidence> weighty = weightiest(source).limit(4).toList();
        List<String> said = new ArrayList<>();
        for (WaterFindings.Evidence one : weighty) said.add((said.size() + 1) + " " + (one.weight() >= 0 ? "for: " : "against: ") + plain(one, source) + " (" + (one.weight() > 0 ? "+" : "") + Words.number(one.weight(), 1) + ")");
        List<Object> remedies = new ArrayList<>();
        source.ruling().ifPresent(ruling -> remedies.add(List.of(b(Words.sentence(ruling.words()) + ". "), new Node.Text(ruling.caution()))));
        source.remedies().stream().limit(2).forEach(remedy -> remedies.add(remedy.words() + ". " + Words.sentence(assessment.work().plan().cost().band(source.id(), remedy.word()).orElse(remedy.band())) + "."));
        gain.ifPresent(change -> remedies.add(List.of(b("Then "), new Node.Text(named(assessment, change.member()) + ": " + change.words()
                + (change.with().isEmpty() ? "" : ", with " + Words.list(change.with()) + " stopped too; " + change.aloneWords()) + "."))));
        Markup head = p(act(source.id() + "  "), b(Words.sentence(source.source().words())), new Node.Text(", " + where(assessment, source) + ": " + Words.chance(source.probability())
                + " likely (before anything was seen: " + Words.percent(source.prior()) + ")" + members + ".")).with("class", "head");
        List<Markup> chart = weighty.isEmpty() ? List.of() : List.of(drawing(EvidenceChart.draw(source.id(), weighty)));
        return div("source", head, Markup.of("table", Markup.of("tr", cell(10.5, chart), cell(32.5, said.isEmpty() ? List.of() : List.of(notes(String.join("; ", said) + "."))), cell(57, list(remedies).stream().map(one -> one.with("class", "notes")).toList()))).with("class", "grid"));
    }

    private static Markup cell(double percent, List<Markup> inside) { return Markup.of("td", inside).with("class", "half").with("style", "width: " + Markup.number(percent) + "%"); }

    private static String named(Assessment assessment, String member) {
        return assessment.survey().members().containsKey(member) ? Said.title(assessment.survey().members().get(member)) : member;
    }

    private static List<Markup> rounds(Assessment assessment) {
        List<Markup> all = new ArrayList<>();
        for (WaterFindings.Round round : assessment.water().rounds()) {
            List<List<?>> rows = new ArrayList<>();
            for (WaterFindings.Step step : round.steps())
                rows.add(List.of(String.valueOf(rows.size() + 1), Said.sideTitle(assessment.survey(), step.side()) + (step.place().isEmpty() ? "" : ", " + step.place()), step.words(),
                        n(Words.number(step.minutes(), 0) + " min"), n(Words.number(step.bits(), 2)), n(Words.chance(step.seen()))));
            all.add(h3("round-" + Choice.word(round.when()), "A round " + round.when().words() + ", about " + Words.count((int) Math.round(round.minutes()), "minute")));
            all.addAll(table(List.of("", "Where", "What to look for", "Takes", "Bits", "Seen?"), List.of(3, 31, 51, 5, 5, 5), rows));
            all.add(notes(round.outcome() + " A source is taken as settled at " + Words.percent(WaterFindings.SETTLED) + "."));
        }
        return all;
    }

    private static List<Markup> lives(Assessment assessment) {
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.InTheWood life : assessment.water().lives())
            rows.add(List.of(List.of(b(Words.sentence(life.life().words())), small(n(Words.chance(life.probability()) + " likely"))),
                    Said.sideTitle(assessment.survey(), life.side()) + (life.member().isEmpty() ? "" : ", " + named(assessment, life.member())), String.join("; ", life.signs()),
                    life.active(), life.water() + (life.sources().isEmpty() ? "" : " (" + Words.list(life.sources()) + ")") + ". " + (life.call().isEmpty() ? "" : "Call: " + life.call() + ".")));
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("in-the-wood", "What lives in the wood")));
        all.addAll(table(List.of("Likely", "Where", "By these signs", "Is it at it?", "The water behind it, and who is called"), List.of(9, 22, 14, 17, 38), rows));
        return all;
    }

    private static List<Markup> rains(Assessment assessment) {
        Units units = assessment.settings().units();
        List<List<?>> rows = new ArrayList<>();
        Map<List<Double>, List<String>> alike = new LinkedHashMap<>();
        for (WaterFindings.RainCheck rain : assessment.water().rains()) alike.computeIfAbsent(rain.onSideLM2(), _ -> new ArrayList<>()).add(Said.sideTitle(assessment.survey(), rain.side()));
        alike.forEach((months, sides) -> {
            List<Object> row = new ArrayList<>(List.of(String.join("; ", sides)));
            for (double month : months) row.add(n(units == Units.US ? Words.number(month / 25.4, 2) : Words.number(month, 0)));
            row.add(n(units == Units.US ? Words.number(months.stream().mapToDouble(d -> d).sum() / 25.4, 1) : Words.number(months.stream().mapToDouble(d -> d).sum(), 0)));
            rows.add(row);
        });
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("driven-rain", "Rain driven onto each wall by the wind, " + (units == Units.US ? "in" : "mm"))));
        List<String> heads = new ArrayList<>(List.of("Side"));
        for (java.time.Month month : java.time.Month.values()) heads.add(month.getDisplayName(java.time.format.TextStyle.SHORT, java.util.Locale.ENGLISH));
        heads.add("Year");
        all.addAll(table(heads, List.of(34, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 6), rows));
        all.add(notes("Were wind in rain to come from all round alike, less what the roof keeps off; normals name no direction. Look at the wall after a storm."));
        return all;
    }

    private static List<Markup> gutters(Assessment assessment) {
        Units units = assessment.settings().units();
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.GutterCheck check : assessment.water().gutters())
            rows.add(List.of(Said.sideTitle(assessment.survey(), check.side()) + ", " + check.edge(), n(Words.flow(check.inflowLs(), units)),
                    check.capacityLs() > 0 ? n(Words.flow(check.capacityLs(), units)) : "no gutter",
                    check.downspoutLs() > 0 ? n(Words.flow(check.downspoutLs(), units)) : "none", check.overflows()
                            ? List.of(act("overflows"), new Node.Text(". " + rain(check))) : rain(check)));
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("gutters", "Gutters against the rain they are sized for")));
        all.addAll(table(List.of("Roof edge", "Roof sends", "Gutter carries", "Downspouts carry", "Finding"), List.of(16, 7, 7, 9, 61), rows));
        return all;
    }

    /// Without what stands in the columns beside it.
    private static String rain(WaterFindings.GutterCheck check) { return Words.sentence(check.words().replaceFirst("^The roof sends .*? in the (?=design rain)", "")); }

    private static List<Markup> splashes(Assessment assessment) {
        Units units = assessment.settings().units();
        List<List<?>> rows = new ArrayList<>();
        for (WaterFindings.SplashCheck check : assessment.water().splashes())
            rows.add(List.of(Said.sideTitle(assessment.survey(), check.side()), Words.length(check.clearanceMm(), units),
                    Words.length(check.reachMm(), units), Words.percent(check.share()), Words.sentence(check.words().replaceFirst("^The lowest wood stands .*? as the wood: ", ""))));
        if (rows.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h3("splash", "Splash from the ground")));
        all.addAll(table(List.of("Side", "Lowest wood above ground", "Splash that matters rises", "Share that reaches wood", "Finding"),
                List.of(13, 9, 9, 9, 60), rows));
        return all;
    }
}
