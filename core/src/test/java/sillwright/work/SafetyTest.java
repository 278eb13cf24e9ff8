package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.Figures;
import sillwright.measure.Csv;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.Condition;
import sillwright.work.WorkFindings.SafeSide;

import static org.junit.jupiter.api.Assertions.*;

/// The safe-work plan of a side: its sheets by the rule, what is closed, stands and props, and every collected fact of the rule used or named as not applying.
@DisplayNameGeneration(ReplaceUnderscores.class)
class SafetyTest {
    private static final double FOOT = 304.8;

    private static Scene fascia(String lotLine, double above) {
        Member fascia = Scene.member("fascia", "west", MemberKind.FASCIA, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 184, 19.05, 4000, above, Member.Coat.FAILING, Member.Contact.NONE);
        return new Scene().side("west", lotLine).add(fascia, Condition.State.DECAYED, 0.14, Scene.damage(fascia, 1, 3700, 4000, 19.05, 16, 3, 0, 0, false));
    }

    /// So much paint is broken that the rule binds.
    private static Scene large(String lotLine) {
        Member skirt = Scene.member("skirt", "west", MemberKind.SKIRT_BOARD, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 400, 19.05, 8000, 300, Member.Coat.FAILING, Member.Contact.NONE);
        return new Scene().side("west", lotLine).add(skirt, Condition.State.DECAYED, 0.14, Scene.damage(skirt, 1, 200, 7800, 19.05, 16, 3, 0, 0, false));
    }

    private static SafeSide only(Scene scene) { return scene.work().safety().getFirst(); }

    /// Source: `reference/rrp.csv`, facts of 40 CFR 745 and what was written about it, each with its section and how it is known.
    @Test
    void every_collected_fact_of_the_lead_rule_is_used_or_named_as_not_applying() throws IOException {
        String text = new String(SafetyTest.class.getResourceAsStream("/reference/rrp.csv").readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        List<String> duties = Csv.read(LeadRuleCsv.TEXT).rows().stream().map(row -> row.get("duty")).toList();
        List<String> lines = SafeLines.ALL.stream().map(row -> row.line().words()).toList();
        List<String> cautions = LeadSafe.plan(new LeadSafe.Job(1912, 1e7, true, 1, 1000, 9000, 12)).cautions();
        List<String> windy = LeadSafe.plan(new LeadSafe.Job(1912, 1e7, true, 1, 1000, 9000, 12)).cautions();
        Map<String, Double> constants = Map.of("FIRST_YEAR_FREE", (double) LeadSafe.FIRST_YEAR_FREE, "MINOR_EXTERIOR", LeadSafe.MINOR_EXTERIOR_MM2 / FOOT / FOOT, "MINOR_INTERIOR", LeadSafe.MINOR_INTERIOR_MM2 / FOOT / FOOT,
                "STOP_WIND", LeadSafe.STOP_WIND_MPS / 0.44704);
        int rows = 0;
        for (Csv.Row row : Csv.read(text).rows()) {
            rows++;
            String in = row.get("in"), topic = row.get("topic");
            switch (row.get("used")) {
                case "constant" -> assertTrue(Pattern.compile("(?<!\\d)" + Math.round(constants.get(in)) + "(?!\\d)").matcher(row.get("value")).find(), () -> topic + ": " + constants.get(in) + " is not in '" + row.get("value") + "'");
                case "duty" -> assertTrue(duties.stream().anyMatch(duty -> duty.contains(in)), () -> topic + ": no duty says '" + in + "'");
                case "line" -> assertTrue(lines.stream().anyMatch(line -> line.contains(in)), () -> topic + ": no line says '" + in + "'");
                case "caution" -> assertTrue(Stream.concat(cautions.stream(), windy.stream()).anyMatch(caution -> caution.contains(in)), () -> topic + ": no caution says '" + in + "'");
                case "not" -> assertTrue(in.length() > 20, topic);
                default -> fail(topic + " is used as '" + row.get("used") + "'");
            }
        }
        assertEquals(38, rows);
    }

    @Test
    void the_sheet_goes_ten_feet_beyond_the_work_on_three_sides() {
        SafePlan plan = only(large("")).plan();
        assertEquals(plan.work().left() - 10 * FOOT, plan.sheet().left(), 1e-6);
        assertEquals(plan.work().right() + 10 * FOOT, plan.sheet().right(), 1e-6);
        assertEquals(plan.work().far() + 10 * FOOT, plan.sheet().far(), 1e-6);
        assertEquals(0, plan.barrier());
        assertEquals(plan.sheet().mm2(), only(large("")).sheetingMm2(), 1e-6);
    }

    @Test
    void where_the_lot_ends_nearer_the_sheet_ends_there_at_a_barrier() {
        SafePlan plan = only(large("8ft")).plan();
        assertEquals(8 * FOOT, plan.sheet().far(), 1e-6);
        assertEquals(8 * FOOT, plan.barrier(), 1e-6);
    }

    @Test
    void a_house_of_after_1978_has_no_sheet_by_the_rule_but_its_other_lines() {
        Scene scene = fascia("", 4800);
        scene.year = 1985;
        SafeSide side = only(scene);
        assertFalse(side.leadApplies());
        assertEquals(0, side.plan().sheet().mm2());
        assertTrue(side.duties().isEmpty());
        assertTrue(side.plan().lines().stream().anyMatch(line -> line.topic().equals("electricity")));
        assertTrue(side.plan().lines().stream().noneMatch(line -> line.words().contains("P100")));
    }

    @Test
    void new_wood_high_up_is_let_in_from_a_scaffold_and_low_down_from_the_ground() {
        SafePlan.Stand high = only(fascia("", 4800)).plan().stands().getFirst();
        assertTrue(high.scaffold() && high.repairs().contains("R1"));
        SafePlan.Stand low = only(fascia("", 2300)).plan().stands().getFirst();
        assertFalse(low.scaffold());
        assertEquals(low.height() / 4, low.foot().far() - low.foot().near(), 1e-6);
        assertEquals(Math.hypot(low.height() + 3 * FOOT, (low.height() + 3 * FOOT) / 4), low.length(), 1e-6);
        assertTrue(only(fascia("", 1500)).plan().stands().isEmpty());
    }

    @Test
    void a_window_within_twenty_feet_is_closed() {
        SafePlan plan = only(fascia("", 4800)).plan();
        assertEquals(1, plan.openings().size());
        Member far = Scene.member("fascia", "west", MemberKind.FASCIA, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 184, 19.05, 12000, 4800, Member.Coat.FAILING, Member.Contact.NONE);
        SafePlan none = only(new Scene().side("west", "").add(far, Condition.State.DECAYED, 0.14, Scene.damage(far, 1, 11000, 12000, 19.05, 16, 3, 0, 0, false))).plan();
        assertTrue(none.work().left() - 1900 > 20 * FOOT && none.openings().isEmpty(), none::toString);
    }

    @Test
    void every_line_has_its_rule_beside_it_and_local_rules_go_before() {
        for (SafeSide side : Scene.house().work().safety()) {
            for (SafePlan.Line line : side.plan().lines()) assertTrue(line.said().matches("(?s).*\\((\\d+ (CFR|USC) .*|common practice|OSHA letter.*|National Park.*|EPA.*)\\)"), line.said());
            assertTrue(side.cautions().stream().anyMatch(caution -> caution.startsWith("local rules may be stricter; a certified firm where the law asks")));
        }
    }

    @Test
    void the_figure_sizes_the_sheet() {
        double area = Figures.named("lead-safe").answer(Map.of("built", "1912", "area", "30ft2", "side", "exterior", "length", "20ft", "toLine", "40ft")).own("sheetArea");
        assertEquals(10 * 40, area / FOOT / FOOT, 1e-6);
    }

    @Test
    void a_page_for_each_day_holds_all_the_work_and_the_weather_of_its_kind() {
        WorkFindings work = Scene.house().work();
        List<DayPlan> days = DayPlan.of(work);
        Map<String, Integer> minutes = new HashMap<>(), ended = new HashMap<>();
        for (DayPlan day : days) {
            for (DayPlan.Item item : day.items()) {
                minutes.merge(item.task().id(), item.minutes(), Integer::sum);
                if (item.ends()) ended.merge(item.task().id(), 1, Integer::sum);
            }
            boolean paints = day.items().stream().anyMatch(item -> item.task().kind() == WorkFindings.TaskKind.COAT || item.task().kind() == WorkFindings.TaskKind.PRIME);
            assertEquals(paints, day.weather().contains(DayPlan.PAINT), day::toString);
            assertEquals(day == days.getLast(), day.then().isEmpty());
            assertFalse(day.bring().isEmpty());
        }
        for (WorkFindings.Task task : work.tasks()) if (task.hours() > 0) {
            assertEquals(Math.round(60 * task.hours()), (long) minutes.get(task.id()), task::toString);
            assertEquals(1, (int) ended.get(task.id()), task::toString);
        }
        double paint = work.repairs().stream().flatMap(repair -> repair.needs().stream()).filter(need -> need.material() == Material.PAINT).mapToDouble(Repair.Need::amount).sum();
        assertEquals(paint, days.stream().flatMap(day -> day.needs().stream()).filter(need -> need.material() == Material.PAINT).mapToDouble(Repair.Need::amount).sum(), 1e-6);
    }
}
