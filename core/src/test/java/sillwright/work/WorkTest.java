package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.WorkDone;
import sillwright.water.Source;
import sillwright.wood.Condition;
import sillwright.work.WorkFindings.TaskKind;

import static org.junit.jupiter.api.Assertions.*;

/// Scenes of an invented house.
@DisplayNameGeneration(ReplaceUnderscores.class)
class WorkTest {
    private static Repair only(Scene scene) {
        List<Repair> repairs = scene.work().repairs();
        assertEquals(1, repairs.size(), repairs::toString);
        return repairs.getFirst();
    }

    private static Repair repairOf(WorkFindings work, String member) {
        return work.repairs().stream().filter(repair -> repair.damage().member().id().equals(member)).findFirst().orElseThrow();
    }

    @Test
    void a_decorative_corner_board_that_stands_on_masonry_gets_a_built_up_base_off_the_stone() {
        Member corner = Scene.corner(Member.Contact.MASONRY);
        Repair repair = only(new Scene().add(corner, Condition.State.DECAYED, 0.14, Scene.cornerFoot(corner)));
        assertEquals(new Treatment.BuildUp(28 * 6.35), repair.treatment());
        assertFalse(repair.urgent());
        assertTrue(repair.needs().stream().anyMatch(need -> need.material() == Material.CAPILLARY_BREAK));
        assertEquals(27 * 6.35, repair.pieces().getFirst().lengthMm(), 1e-9, "a quarter of an inch is left clear beneath");
        assertTrue(repair.steps().stream().anyMatch(step -> step.contains("1/4 in clear")), repair.steps()::toString);
    }

    @Test
    void the_same_foot_hanging_free_gets_a_butt_splice() {
        Member corner = Scene.corner(Member.Contact.NONE);
        Repair repair = only(new Scene().add(corner, Condition.State.DECAYED, 0.14, Scene.cornerFoot(corner)));
        assertEquals(new Treatment.ButtSplice(28 * 6.35), repair.treatment());
    }

    @Test
    void a_bearing_post_with_a_rotten_foot_is_propped_and_gets_a_new_foot_by_a_half_lap() {
        Member post = Scene.post();
        Scene scene = new Scene().add(post, Condition.State.DECAYED, 0.27, Scene.postFoot(post));
        Repair repair = only(scene);
        double cut = 34 * 6.35, lap = 3 * post.widthMm(), scarf = 1397;
        assertEquals(new Treatment.HalfLap(cut + lap, lap), repair.treatment());
        assertTrue(repair.alternatives().stream().anyMatch(other -> other.treatment().equals(new Treatment.ScarfSplice(cut + scarf, 10, scarf, 0))), "the scarf was weighed, and takes more");
        assertTrue(repair.needs().stream().anyMatch(need -> need.material() == Material.BOLT && need.amount() == 2 && need.size().contains("×")));
        assertTrue(repair.urgent());
        assertTrue(repair.cautions().getFirst().contains("licensed engineer"));
        assertTrue(repair.steps().getFirst().startsWith("Prop"));
        assertTrue(scene.work().tasks().stream().anyMatch(task -> task.kind() == TaskKind.SHORE && task.refs().contains("R1")));
        assertTrue(repair.alternatives().stream().anyMatch(other -> other.treatment() instanceof Treatment.Fill && other.against().contains("no structural member")));
    }

    @Test
    void a_shallow_soft_place_in_a_sill_is_consolidated_and_filled() {
        Member sill = Scene.sill();
        Repair repair = only(new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.sillSpot(sill)));
        assertInstanceOf(Treatment.Fill.class, repair.treatment());
        assertTrue(((Treatment.Fill) repair.treatment()).fillMl() > 0);
        assertEquals(0, repair.woodLostMl());
        assertTrue(repair.pieces().isEmpty());
        assertFalse(repair.urgent());
    }

    @Test
    void a_deeper_place_in_the_same_sill_gets_a_dutchman() {
        Member sill = Scene.sill();
        Repair repair = only(new Scene().add(sill, Condition.State.DECAYED, 0.13, Scene.damage(sill, 1, 420, 560, 50, 45, 0, 0, 10, false)));
        assertInstanceOf(Treatment.Dutchman.class, repair.treatment(), repair.reasons()::toString);
    }

    @Test
    void a_hollow_beam_is_urgent_and_an_engineers_matter() {
        Member beam = Scene.beam();
        Repair repair = only(new Scene().add(beam, Condition.State.HOLLOW, 0.24, Scene.beamHollow(beam)));
        assertInstanceOf(Treatment.Replace.class, repair.treatment());
        assertTrue(repair.urgent());
        String caution = repair.cautions().getFirst();
        assertTrue(caution.startsWith("Stop") && caution.contains("prop") && caution.contains("licensed engineer"), caution);
    }

    @Test
    void a_soft_end_of_a_fascia_gets_a_scarf_that_sheds() {
        Member fascia = Scene.member("fascia", "west", MemberKind.FASCIA, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 184, 19.05, 4000, 4800, Member.Coat.FAILING,
                Member.Contact.NONE);
        Repair repair = only(new Scene().add(fascia, Condition.State.DECAYED, 0.14, Scene.damage(fascia, 1, 3700, 4000, 19.05, 16, 3, 0, 0, false)));
        assertInstanceOf(Treatment.ScarfSplice.class, repair.treatment());
        assertEquals(8, ((Treatment.ScarfSplice) repair.treatment()).slope());
        assertTrue(repair.pieces().getFirst().label().contains("right end"));
    }

    @Test
    void wet_wood_waits_for_its_water_and_then_for_the_meter() {
        Member corner = Scene.corner(Member.Contact.MASONRY);
        Scene scene = new Scene().add(corner, Condition.State.DECAYED, 0.27, Scene.cornerFoot(corner)).source(Source.SPLASH_FROM_GROUND, "north", 0.8, 8, "corner-board");
        Repair repair = only(scene);
        assertEquals(List.of("W1"), repair.waterFirst());
        assertTrue(repair.reasons().stream().anyMatch(reason -> reason.contains("27 %")), repair.reasons()::toString);
        List<WorkFindings.Task> tasks = scene.work().tasks();
        WorkFindings.Task stop = tasks.stream().filter(task -> task.kind() == TaskKind.STOP_WATER).findFirst().orElseThrow();
        WorkFindings.Task dry = tasks.stream().filter(task -> task.kind() == TaskKind.DRY).findFirst().orElseThrow();
        WorkFindings.Task open = tasks.stream().filter(task -> task.kind() == TaskKind.OPEN_AND_CUT).findFirst().orElseThrow();
        assertTrue(dry.start().isAfter(stop.end()) && open.start().isAfter(dry.end()));
    }

    /// Three days after the last thing it waited for was done, a wood has three days less to dry, and what is done does not come again.
    @Test
    void a_plan_made_anew_keeps_what_is_done_and_the_days_already_dried() {
        Member corner = Scene.corner(Member.Contact.MASONRY);
        Scene scene = new Scene().add(corner, Condition.State.DECAYED, 0.27, Scene.cornerFoot(corner)).source(Source.SPLASH_FROM_GROUND, "north", 0.8, 8, "corner-board");
        List<WorkFindings.Task> first = scene.work().tasks();
        WorkFindings.Task dry = first.stream().filter(task -> task.kind() == TaskKind.DRY).findFirst().orElseThrow();
        List<WorkFindings.Task> before = first.stream().filter(task -> dry.after().contains(task.id())).toList();
        assertFalse(before.isEmpty());
        for (WorkFindings.Task task : before)
            scene.works.add(new WorkDone(WorkDone.Done.OTHER, scene.start.plusDays(2), "north", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "", Optional.of(task.title()),
                    Optional.empty(), Optional.empty(), Optional.empty(), ""));
        scene.start = scene.start.plusDays(5);
        List<WorkFindings.Task> anew = scene.work().tasks();
        WorkFindings.Task rest = anew.stream().filter(task -> task.kind() == TaskKind.DRY).findFirst().orElseThrow();
        assertEquals(dry.title(), rest.title());
        assertEquals(ChronoUnit.DAYS.between(dry.start(), dry.end()) - 3, ChronoUnit.DAYS.between(rest.start(), rest.end()));
        assertEquals(scene.start, rest.start());
        for (WorkFindings.Task task : before) assertTrue(anew.stream().noneMatch(one -> one.title().equals(task.title())), task.title());
        assertEquals(first.size() - before.size(), anew.size());
    }

    @Test
    void wet_wood_whose_water_nobody_found_says_so() {
        Member corner = Scene.corner(Member.Contact.MASONRY);
        Repair repair = only(new Scene().add(corner, Condition.State.DECAYED, 0.27, Scene.cornerFoot(corner)));
        assertTrue(repair.cautions().stream().anyMatch(caution -> caution.contains("no source of the water is known")), repair.cautions()::toString);
    }

    @Test
    void grey_wood_that_is_hard_under_the_thumb_is_left_alone() {
        WorkFindings work = new Scene().add(Scene.sill(), Condition.State.SOUND, 0.12).work();
        assertTrue(work.repairs().isEmpty() && work.order().isEmpty() && work.tasks().isEmpty() && work.safety().isEmpty());
    }

    @Test
    void a_foot_in_the_ground_is_neither_filled_nor_patched() {
        Member post = Scene.member("newel", "south", MemberKind.NEWEL, Member.Role.DECORATIVE, Member.Run.UPRIGHT, 90, 90, 1200, 0, Member.Coat.FAILING, Member.Contact.GROUND);
        Repair repair = only(new Scene().add(post, Condition.State.SOFTENED, 0.14, Scene.damage(post, 1, 0, 60, 8, 8, 0, 0, 0, false)));
        assertInstanceOf(Treatment.BuildUp.class, repair.treatment());
    }

    @Test
    void two_soft_places_near_one_foot_are_one_splice() {
        Member corner = Scene.corner(Member.Contact.NONE);
        Repair repair = only(new Scene().add(corner, Condition.State.DECAYED, 0.14, Scene.cornerFoot(corner), Scene.damage(corner, 2, 250, 330, 19, 16, 3, 0, 0, false)));
        assertEquals("corner-board/2", repair.damage().id());
        assertTrue(repair.reasons().stream().anyMatch(reason -> reason.contains("corner-board/1")), repair.reasons()::toString);
    }

    @Test
    void splices_at_both_ends_that_renew_most_of_a_piece_are_one_new_piece() {
        Member corner = Scene.member("casing", "north", MemberKind.CASING, Member.Role.DECORATIVE, Member.Run.UPRIGHT, 90, 19.05, 1000, 300, Member.Coat.FAILING, Member.Contact.NONE);
        Repair repair = only(new Scene().add(corner, Condition.State.DECAYED, 0.14, Scene.damage(corner, 1, 0, 400, 19, 16, 3, 0, 0, false),
                Scene.damage(corner, 2, 550, 1000, 19, 16, 3, 0, 0, false)));
        assertInstanceOf(Treatment.Replace.class, repair.treatment());
        assertEquals(1, repair.pieces().size());
    }

    @Test
    void what_is_urgent_comes_first_and_what_bears_load_before_trim() {
        WorkFindings work = Scene.house().work();
        List<String> order = work.repairs().stream().map(repair -> repair.damage().member().id()).toList();
        assertEquals(Set.of("porch-post-3", "porch-beam"), Set.copyOf(order.subList(0, 2)));
        assertEquals(List.of("window-sill", "corner-board"), order.subList(2, 4));
        assertEquals(2, work.urgent().size());
        assertEquals("corner-board", repairOf(work, "corner-board").damage().member().id());
    }

    @Test
    void the_reader_of_millimetres_reads_no_inches() {
        Scene scene = Scene.house();
        scene.units = Units.SI;
        scene.stock = List.of(2400.0, 3000.0, 3600.0);
        WorkFindings work = scene.work();
        for (Repair repair : work.repairs())
            for (String line : Stream.of(repair.steps(), repair.reasons(), repair.alternatives().stream().map(Repair.Alternative::against).toList()).flatMap(List::stream).toList())
                assertFalse(line.matches(".*\\d (in|ft|fl oz|gal)\\b.*"), line);
        Treatment lap = repairOf(work, "porch-post-3").treatment();
        assertEquals(630, ((Treatment.HalfLap) lap).newMm(), 1e-9, "210 mm is a mark of the metric tape, and 419 goes up to 420");
    }

    @Test
    void steps_are_few_and_short() {
        for (Repair repair : Scene.house().work().repairs()) {
            assertTrue(repair.steps().size() >= 6 && repair.steps().size() <= 12, () -> repair.steps().size() + " steps: " + repair.steps());
            for (String step : repair.steps()) assertTrue(step.length() <= 200 && step.endsWith("."), step);
        }
    }

    @Test
    void a_piece_longer_than_any_stock_is_named_and_ordered_by_itself() {
        Scene scene = Scene.house();
        scene.stock = List.of(8 * 304.8);
        WorkFindings work = scene.work();
        assertTrue(work.gaps().stream().anyMatch(gap -> gap.contains("ordered by itself")), work.gaps()::toString);
        assertTrue(work.order().stream().anyMatch(line -> line.item().startsWith("special length") && line.buy() == 3600));
    }

    @Test
    void paint_waits_for_a_warm_month_and_the_end_is_told_with_its_bound() {
        Scene scene = Scene.house();
        scene.months = Months.chicago();
        scene.start = LocalDate.of(2027, 11, 1);
        WorkFindings work = scene.work();
        for (WorkFindings.Task task : work.tasks())
            if (task.kind() == TaskKind.COAT || task.kind() == TaskKind.PRIME) assertTrue(task.start().getMonthValue() >= 3 && task.start().getMonthValue() <= 11, task::toString);
        var timetable = work.plan().timetable().orElseThrow();
        assertEquals(work.tasks().size(), timetable.slots().size());
        assertFalse(timetable.bound().isAfter(timetable.finish()) || timetable.middle().isAfter(timetable.finish()));
        assertTrue(timetable.wetMonth().isPresent() && timetable.years() > 1);
    }
}
