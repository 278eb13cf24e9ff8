package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.Condition;
import sillwright.work.WorkFindings.SafeSide;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SafetyTest {
    private static Scene trim(int year, Member.Coat coat, String... sides) {
        Scene scene = new Scene();
        scene.year = year;
        for (String side : sides) {
            scene.side(side, "7ft");
            Member fascia = Scene.member(side + "-fascia", side, MemberKind.FASCIA, Member.Role.DECORATIVE, Member.Run.LEVEL, 250, 20, 5000, 3000, coat, Member.Contact.NONE);
            scene.add(fascia, Condition.State.DECAYED, 0.14, Scene.damage(fascia, 1, 0, 2000, 20, 16, 3, 0, 0, false));
        }
        return scene;
    }

    /// Source: 40 CFR 745.83, at most 20 ft² of exterior paint on one job is minor (read); EPA counts the whole outside (read).
    @Test
    void two_sides_each_under_twenty_square_feet_are_one_job_over_it() {
        List<SafeSide> one = trim(1912, Member.Coat.FAILING, "south").work().safety(), two = trim(1912, Member.Coat.FAILING, "south", "east").work().safety();
        double limit = 20 * 304.8 * 304.8;
        assertTrue(one.getFirst().paintMm2() < limit && 2 * one.getFirst().paintMm2() > limit, () -> one.getFirst().paintMm2() / limit + " of the limit");
        assertFalse(one.getFirst().leadApplies());
        assertTrue(two.stream().allMatch(SafeSide::leadApplies));
    }

    @Test
    void where_the_rule_binds_the_ground_is_covered_ten_feet_or_to_a_barrier_at_the_line() {
        WorkFindings work = trim(1912, Member.Coat.FAILING, "south", "east").work();
        SafeSide side = work.safety().getFirst();
        assertTrue(side.barrier());
        assertEquals(7 * 304.8, side.coverMm(), 1e-6);
        assertFalse(side.duties().isEmpty());
        assertTrue(work.order().stream().anyMatch(line -> line.item().equals(Material.SHEETING.words()) && line.need() >= 2 * side.coverMm() * 5000));
    }

    @Test
    void a_house_of_1978_or_bare_wood_is_not_under_the_rule() {
        for (Scene scene : List.of(trim(1978, Member.Coat.FAILING, "south", "east"), trim(1912, Member.Coat.NONE, "south", "east"))) {
            WorkFindings work = scene.work();
            assertTrue(work.safety().stream().noneMatch(SafeSide::leadApplies));
            assertTrue(work.order().stream().noneMatch(line -> line.item().equals(Material.SHEETING.words())));
        }
    }

    @Test
    void work_above_reach_brings_the_ladder_and_a_loaded_post_the_props() {
        assertTrue(trim(1912, Member.Coat.FAILING, "south").work().safety().getFirst().cautions().stream().anyMatch(caution -> caution.contains("one out for four up")));
        SafeSide south = Scene.house().work().safety().getFirst();
        assertEquals("south", south.side());
        assertTrue(south.cautions().stream().anyMatch(caution -> caution.contains("propped")), south.cautions()::toString);
    }
}
