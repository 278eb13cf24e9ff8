package sillwright.work;

import module java.base;

import sillwright.work.joint.Scarf;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// The lead rule, the weather for paint and the scarf, beyond what the check files hold.
@DisplayNameGeneration(ReplaceUnderscores.class)
class SiteTest {
    private static LeadSafe.Job outside(double areaFt2, double toLineFt, double heightFt, double mph) {
        return new LeadSafe.Job(1912, areaFt2 * 92903.04, true, 0, toLineFt * 304.8, heightFt * 304.8, mph * 0.44704);
    }

    @Test
    void near_the_line_the_cover_stops_at_it_and_a_barrier_stands_there() {
        LeadSafe.Plan plan = LeadSafe.plan(outside(35, 8, 0, 0));
        assertTrue(plan.covered() && plan.barrier());
        assertEquals(8 * 304.8, plan.coverMm(), 1e-9);
        assertTrue(plan.duties().stream().anyMatch(duty -> duty.startsWith("raise a vertical barrier") && duty.endsWith("(745.85(a)(2)(ii)(D))")));
        assertFalse(LeadSafe.plan(outside(35, 40, 0, 0)).duties().stream().anyMatch(duty -> duty.startsWith("raise a vertical barrier")));
        assertTrue(LeadSafe.plan(outside(35, 10, 0, 0)).barrier(), "at just ten feet the line is within ten feet");
    }

    @Test
    void every_duty_names_its_section_and_its_basis_says_how_it_is_known() {
        LeadSafe.Plan plan = LeadSafe.plan(LeadSafe.Job.outside(1912, 35 * 92903.04));
        for (String duty : plan.duties()) assertTrue(duty.matches(".*\\(745\\.[^ ].*\\)"), duty);
        assertTrue(plan.basis().stream().anyMatch(basis -> basis.where().contains("745.84") && basis.words().endsWith("(from memory)")));
    }

    @Test
    void minor_work_has_no_duties_but_is_not_called_safe() {
        LeadSafe.Plan plan = LeadSafe.plan(outside(12, 40, 0, 0));
        assertFalse(plan.covered());
        assertTrue(plan.duties().isEmpty());
        assertTrue(plan.cautions().stream().anyMatch(caution -> caution.contains("may hold lead all the same")));
    }

    @Test
    void above_twenty_miles_an_hour_the_first_word_is_stop() {
        assertTrue(LeadSafe.plan(outside(35, 40, 0, 21)).cautions().getFirst().startsWith("stop"));
        assertTrue(LeadSafe.plan(outside(35, 40, 0, 20)).cautions().stream().noneMatch(caution -> caution.startsWith("stop")));
    }

    @Test
    void six_feet_is_never_printed_as_a_rule_for_ladders() {
        String high = String.join("\n", LeadSafe.plan(outside(35, 40, 20, 0)).cautions());
        assertTrue(high.contains("one out for four up") && high.contains("asks for none on a portable ladder"));
        String low = String.join("\n", LeadSafe.plan(outside(35, 40, 5, 0)).cautions());
        assertTrue(low.contains("one out for four up") && !low.contains("6 ft"));
    }

    @Test
    void inside_the_floor_is_covered_and_the_property_line_is_no_matter() {
        LeadSafe.Plan plan = LeadSafe.plan(new LeadSafe.Job(1912, 7 * 92903.04, false, 0, 1000, 0, 0));
        assertTrue(plan.covered() && !plan.barrier());
        assertEquals(6 * 304.8, plan.coverMm(), 1e-9);
        assertTrue(plan.duties().stream().noneMatch(duty -> duty.contains("cover the ground")));
    }

    @Test
    void half_a_window_is_refused() {
        assertThrows(Refused.class, () -> Figures.named("lead-safe").answer(Map.of("built", "1912", "area", "1ft2", "side", "interior", "windows", "0.5")));
        assertThrows(Refused.class, () -> Figures.named("lead-safe").answer(Map.of("built", "1912.5", "area", "1ft2", "side", "interior")));
    }

    @Test
    void a_ladder_foot_stands_a_quarter_of_its_height_out() {
        assertEquals(1371.6, Figures.named("lead-safe").answer(Map.of("built", "1912", "area", "30ft2", "side", "exterior", "height", "18ft")).own("ladderOut"), 1e-9);
    }

    @Test
    void all_that_speaks_against_painting_is_said_at_once() {
        PaintWindow.Verdict verdict = PaintWindow.judge(5, 4, 0.95, 0.22, PaintWindow.LEAST_C);
        assertFalse(verdict.ok());
        assertEquals(5, verdict.reasons().size(), verdict.reasons().toString());
        assertTrue(verdict.reasons().contains("the air is below 50 °F (10 °C)"));
    }

    @Test
    void the_margin_is_the_surface_over_the_dew_point() {
        Answer answer = Figures.named("paint-window").answer(Map.of("air", "70F", "surface", "60F", "rh", "50%", "mc", "12%"));
        assertEquals(60 - 50.5283, answer.own("margin") * 9 / 5, 0.0001);
    }

    @Test
    void pulled_wood_peels_and_pressed_wood_closes_the_joint() {
        assertTrue(scarf("1200lb", "0ft-lb").own("peel") > 0);
        Answer pressed = scarf("-1200lb", "0ft-lb");
        assertTrue(pressed.own("peel") < 0 && pressed.own("shear") > 0);
        assertTrue(scarf("-1200lb", "900ft-lb").own("peel") > 0, "bending pulls one edge of it open");
        assertEquals(scarf("0lb", "900ft-lb").own("shear"), scarf("0lb", "-900ft-lb").own("shear"), 1e-12);
    }

    /// 6 M / b d² at the edge, by hand: 900 ft-lb on 5.5 × 5.5 in is 389.48 psi.
    @Test
    void bending_counts_at_the_outer_edge() {
        assertEquals(900 * 12 * 6 / Math.pow(5.5, 3) * 8 / 65 * 0.006894757293168361, scarf("0lb", "900ft-lb").own("shear"), 1e-9);
    }

    private static Answer scarf(String axial, String moment) {
        return Figures.named("scarf").answer(Map.of("width", "5.5in", "depth", "5.5in", "slope", "1:8", "axial", axial, "moment", moment));
    }

    @Test
    void a_flatter_scarf_is_longer_and_never_weaker() {
        for (double slope = 1; slope < 30; slope += 0.5) {
            assertTrue(Scarf.efficiency(slope + 0.5) >= Scarf.efficiency(slope));
            assertTrue(Scarf.shearMPa(10, slope + 0.5) < Scarf.shearMPa(10, slope));
            assertTrue(Scarf.lengthMm(100, slope + 0.5) > Scarf.lengthMm(100, slope));
        }
        assertTrue(Scarf.efficiency(1) > 0.25 && Scarf.efficiency(100) <= 0.95);
    }
}
