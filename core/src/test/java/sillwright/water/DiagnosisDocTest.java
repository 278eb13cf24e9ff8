package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.*;

/// How well the diagnosis does: written cases, the same with every strength disturbed, and buildings drawn from the model. What comes
/// out stands in `docs/diagnosis.md`; `mvn -pl core test -Dtest=DiagnosisDocTest -Ddiagnosis.write=true` writes its tables anew.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DiagnosisDocTest {
    private static final int DRAWS = 200, BUILDINGS = 4000;
    private static final String MARK = "<!-- tables: made by DiagnosisDocTest -->";

    private record Told(Case of, int rank, List<WaterFindings.RankedSource> sources, int first, int second) {}

    private static final List<Told> TOLD = Case.all().stream().map(one -> {
        int first = 0, second = 0;
        for (int draw = 1; draw <= DRAWS; draw++) {
            int rank = one.rank(Case.disturbed(draw));
            first += rank == 1 ? 1 : 0;
            second += rank <= 2 ? 1 : 0;
        }
        return new Told(one, one.rank((_, _) -> 1), Water.find(one.survey()).sources(), first, second);
    }).toList();

    @Test
    void the_expected_source_leads_in_nine_cases_of_ten_and_is_among_the_first_two_in_all() {
        assertTrue(TOLD.size() >= 40 && TOLD.stream().map(told -> told.of.name()).distinct().count() == TOLD.size());
        assertEquals(EnumSet.allOf(Source.class), TOLD.stream().map(told -> told.of.leading()).collect(Collectors.toCollection(() -> EnumSet.noneOf(Source.class))));
        List<String> wrong = TOLD.stream().filter(told -> told.rank > 1).map(told -> told.of.name()).toList();
        assertTrue(wrong.size() <= 0.1 * TOLD.size(), wrong.toString());
        assertEquals(List.of(), TOLD.stream().filter(told -> told.rank > 2).map(told -> told.of.name()).toList());
    }

    @Test
    void with_every_strength_disturbed_by_three_tenths_it_still_leads_in_17_draws_of_20() {
        assertTrue(TOLD.stream().mapToInt(Told::first).sum() >= 0.85 * DRAWS * TOLD.size());
    }

    /// Of all posteriors that were said to be about so much, so many were at work.
    private record Tenth(int from, long count, double said, double atWork) {}

    private static final List<Tenth> TENTHS = tenths();

    private static List<Tenth> tenths() {
        double[] said = new double[10], atWork = new double[10];
        long[] count = new long[10];
        for (long seed = 1; seed <= BUILDINGS; seed++) {
            Buildings one = Buildings.drawn(seed, 40, 150, 4);
            List<Double> posterior = one.network().given(one.looks()).sources();
            for (int i = 0; i < posterior.size(); i++) {
                int tenth = Math.min(9, (int) (10 * posterior.get(i)));
                count[tenth]++;
                said[tenth] += posterior.get(i);
                atWork[tenth] += one.atWork()[i] ? 1 : 0;
            }
        }
        List<Tenth> tenths = new ArrayList<>();
        for (int t = 0; t < 10; t++) tenths.add(new Tenth(10 * t, count[t], said[t] / count[t], atWork[t] / count[t]));
        return tenths;
    }

    @Test
    void of_sources_said_to_be_so_likely_so_many_are_at_work_in_drawn_buildings() {
        for (Tenth tenth : TENTHS) {
            assertTrue(tenth.count > 200, tenth.toString());
            assertEquals(tenth.said, tenth.atWork, 0.05, tenth.toString());
        }
    }

    @Test
    void the_document_holds_these_tables() throws IOException {
        Path path = Path.of("..", "docs", "diagnosis.md");
        String text = Files.readString(path), head = text.substring(0, text.indexOf(MARK) + MARK.length());
        String now = head + "\n\n" + tables();
        if (Boolean.getBoolean("diagnosis.write")) Files.writeString(path, now);
        assertEquals(now, Files.readString(path));
    }

    private static String tables() {
        StringBuilder said = new StringBuilder();
        long leads = TOLD.stream().filter(told -> told.rank == 1).count(), two = TOLD.stream().filter(told -> told.rank <= 2).count();
        int first = TOLD.stream().mapToInt(Told::first).sum(), second = TOLD.stream().mapToInt(Told::second).sum(), all = DRAWS * TOLD.size();
        said.append("| | expected source leads | among the first two |\n| --- | --- | --- |\n");
        said.append("| ").append(TOLD.size()).append(" cases | ").append(leads).append(" (").append(percent(leads, TOLD.size())).append(") | ").append(two).append(" (").append(percent(two, TOLD.size())).append(") |\n");
        said.append("| every strength times 0.7 to 1.3, ").append(DRAWS).append(" draws | ").append(percent(first, all)).append(" | ").append(percent(second, all)).append(" |\n\n");
        said.append("## Drawn buildings\n\nOf all sources said to be so likely, how many were at work, in ").append(BUILDINGS).append(" buildings of 40 sources and 150 sightings drawn from the model.\n\n");
        said.append("| said | sources | mean said | at work |\n| --- | --- | --- | --- |\n");
        for (Tenth tenth : TENTHS)
            said.append("| ").append(tenth.from).append(" to ").append(tenth.from + 10).append(" % | ").append(tenth.count).append(" | ").append(three(tenth.said)).append(" | ").append(three(tenth.atWork)).append(" |\n");
        said.append("\n## The cases\n\nHeld: in how many of ").append(DRAWS).append(" draws with disturbed strengths the expected source still led.\n\n");
        said.append("| case | after | what is told | expected | leads | held |\n| --- | --- | --- | --- | --- | --- |\n");
        for (Told told : TOLD)
            said.append("| ").append(told.of.name()).append(" | ").append(told.of.document()).append(" (").append(told.of.known()).append(") | ").append(told.of.words()).append(" | ").append(told.of.leading().words())
                    .append(" | ").append(told.rank == 1 ? "yes" : "no: " + told.sources.getFirst().source().words()).append(", ").append(Math.round(100 * told.sources.getFirst().probability())).append(" % | ").append(told.first).append(" |\n");
        return said.toString();
    }

    private static String percent(long part, long of) { return Math.round(1000.0 * part / of) / 10.0 + " %"; }

    private static String three(double value) { return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).toPlainString(); }
}
