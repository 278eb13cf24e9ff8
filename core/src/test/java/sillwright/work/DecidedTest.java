package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Decision;
import sillwright.walk.Decision.About;
import sillwright.walk.Decision.By;
import sillwright.walk.Decision.Verdict;
import sillwright.walk.Member;
import sillwright.wood.Condition;
import sillwright.work.Comparison.Compared;

import static org.junit.jupiter.api.Assertions.*;

/// What the work stage makes of a decision, on the invented house.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DecidedTest {
    private static Decision about(String member, double along, Verdict verdict, String taken) {
        return new Decision(new About.Wood(member, Scene.mm(along)), verdict, taken, By.OWNER, verdict == Verdict.ACCEPTED ? "" : "the old wood is to be seen");
    }

    private static Repair on(Scene scene, String member) { return scene.work().repairs().stream().filter(repair -> repair.damage().member().id().equals(member)).findFirst().orElseThrow(); }

    private static Repair decided(String member, double along, Verdict verdict, String taken) {
        Scene scene = Scene.house();
        scene.decisions.add(about(member, along, verdict, taken));
        return on(scene, member);
    }

    @Test
    void another_that_would_hold_is_designed_in_place_of_the_one_recommended() {
        Repair was = on(Scene.house(), "porch-post-3");
        Treatment other = was.comparison().all().stream().filter(one -> one.holds() && !one.taken()).findFirst().orElseThrow().treatment();
        Repair now = decided("porch-post-3", 100, Verdict.OVERRULED, other.ownWord());
        assertEquals(other, now.treatment());
        assertNotEquals(was.steps(), now.steps());
        assertEquals(was.treatment(), now.ruling().orElseThrow().recommended());
        assertEquals("chosen by the owner in place of " + was.treatment().words() + ", because the old wood is to be seen", now.ruling().get().words());
        assertEquals(List.of(), now.ruling().get().cautions(), "nothing refuses it");
        assertTrue(now.reasons().getFirst().startsWith("Chosen by the owner") && now.reasons().get(1).startsWith("Recommended was: "), now.reasons()::toString);
        assertEquals(1, now.comparison().all().stream().filter(one -> one.recommended() && one.treatment().equals(was.treatment()) && !one.taken()).count());
    }

    @Test
    void one_that_a_limit_refuses_is_designed_and_the_number_stands_beside_it() {
        Repair was = on(Scene.house(), "porch-post-3");
        Compared refused = was.comparison().all().stream().filter(one -> one.treatment() instanceof Treatment.Watch).findFirst().orElseThrow();
        Repair now = decided("porch-post-3", 100, Verdict.OVERRULED, "watch");
        assertInstanceOf(Treatment.Watch.class, now.treatment());
        for (String words : refused.refusals()) assertTrue(now.cautions().getFirst().contains(words), now.cautions()::toString);
        assertTrue(now.cautions().get(1).contains("licensed engineer"), "it bears load");
        Compared done = now.comparison().all().stream().filter(Compared::taken).findFirst().orElseThrow();
        assertTrue(!done.holds() && done.worked() && done.refusals().equals(refused.refusals()) && done.lasting().stopped() > 0);
    }

    @Test
    void every_treatment_of_every_damage_can_be_taken_and_is_told_as_what_it_is() {
        for (Repair was : Scene.house().work().repairs())
            for (Compared one : was.comparison().all()) {
                Repair now = decided(was.damage().member().id(), (was.damage().fromMm() + was.damage().toMm()) / 2, Verdict.OVERRULED, one.treatment().ownWord());
                assertEquals(one.treatment().ownWord(), now.treatment().ownWord(), was.damage().id());
                assertEquals(!one.holds(), now.ruling().orElseThrow().cautions().stream().anyMatch(words -> words.contains("a limit refuses it")), one.treatment().words());
            }
    }

    @Test
    void one_that_is_refused_gives_way_to_the_next_that_would_hold() {
        Repair was = on(Scene.house(), "window-sill"), now = decided("window-sill", 470, Verdict.REFUSED, was.treatment().word());
        Treatment next = was.comparison().all().stream().filter(one -> one.holds() && !one.treatment().word().equals(was.treatment().word())).findFirst().orElseThrow().treatment();
        assertEquals(next, now.treatment());
        assertTrue(now.ruling().orElseThrow().words().contains("was refused by the owner, because"));
    }

    /// The decision stays with the place while the damage grows from 420 to 300 mm and gets a sister before it.
    @Test
    void a_decision_is_found_again_by_its_station_when_damages_are_numbered_anew() {
        Member sill = Scene.sill();
        Scene scene = new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.damage(sill, 1, 20, 80, 8, 6, 0, 0, 0, false), Scene.damage(sill, 2, 300, 560, 11, 8, 0, 0, 0, false));
        scene.decisions.add(about("window-sill", 470, Verdict.OVERRULED, "replace"));
        WorkFindings work = scene.work();
        assertEquals(List.of("window-sill/2"), work.repairs().stream().filter(repair -> repair.ruling().isPresent()).map(repair -> repair.damage().id()).toList());
        scene.decisions.set(0, about("window-sill", 560 + 150, Verdict.OVERRULED, "dutchman"));
        assertEquals(1, scene.work().repairs().stream().filter(repair -> repair.ruling().isPresent()).count(), "6 in away is the same place");
        scene.decisions.set(0, about("window-sill", 560 + 160, Verdict.OVERRULED, "dutchman"));
        work = scene.work();
        assertTrue(work.repairs().stream().allMatch(repair -> repair.ruling().isEmpty()));
        assertTrue(work.gaps().stream().anyMatch(gap -> gap.contains("no wood is soft there any more")), work.gaps()::toString);
    }

    @Test
    void what_was_agreed_to_forces_nothing_and_is_called_in_question_when_the_recommendation_changes() {
        Repair same = decided("window-sill", 470, Verdict.ACCEPTED, on(Scene.house(), "window-sill").treatment().word());
        assertEquals(on(Scene.house(), "window-sill").treatment(), same.treatment());
        assertEquals(List.of(), same.ruling().orElseThrow().cautions());
        Repair changed = decided("window-sill", 470, Verdict.ACCEPTED, "replace");
        assertEquals(same.treatment(), changed.treatment());
        assertTrue(changed.cautions().getFirst().contains("decide again"), changed.cautions()::toString);
    }

    @Test
    void what_is_not_thought_of_there_is_named_with_what_is() {
        Repair repair = decided("window-sill", 470, Verdict.OVERRULED, "sister");
        assertEquals(on(Scene.house(), "window-sill").treatment(), repair.treatment());
        assertTrue(repair.cautions().getFirst().contains("not thought of") && repair.cautions().getFirst().contains("dutchman"), repair.cautions()::toString);
    }
}
