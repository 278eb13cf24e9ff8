package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.OpenChecks;
import sillwright.walk.Spot;
import sillwright.wood.Condition;
import sillwright.work.Comparison.Compared;
import sillwright.work.resin.Resin;

import static org.junit.jupiter.api.Assertions.*;

/// What is compared, what is dominated, and what would turn the choice.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ChoiceTest {
    private static Repair only(Scene scene) {
        List<Repair> repairs = scene.work().repairs();
        assertEquals(1, repairs.size());
        return repairs.getFirst();
    }

    @Test
    void the_one_taken_is_among_those_that_hold_and_nothing_beats_it_in_everything() {
        for (Repair repair : Scene.house().work().repairs()) {
            List<Compared> taken = repair.comparison().all().stream().filter(Compared::taken).toList();
            assertEquals(1, taken.size());
            assertEquals(repair.treatment(), taken.getFirst().treatment());
            assertTrue(taken.getFirst().holds() && taken.getFirst().worseThan().isEmpty(), () -> repair.comparison().toString());
            for (Compared one : repair.comparison().all()) assertEquals(one.holds(), one.hours() > 0 || one.holds() && one.hours() == 0);
        }
    }

    /// The depth at which a filled place would get a patch instead, tried on the damage itself.
    @Test
    void a_number_that_is_said_to_turn_the_choice_turns_it() {
        Member sill = Scene.sill();
        Repair shallow = only(new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.damage(sill, 1, 420, 520, 11, 8, 0, 0, 0, false)));
        assertInstanceOf(Treatment.Fill.class, shallow.treatment());
        assertTrue(shallow.comparison().turns().stream().anyMatch(turn -> turn.startsWith("If it were soft to more than 1-1/2 in") && turn.endsWith("dutchman.")), shallow.comparison().turns()::toString);
        Repair deeper = only(new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.damage(sill, 1, 420, 520, 38.1 + 0.1, 8, 0, 0, 0, false)));
        assertInstanceOf(Treatment.Dutchman.class, deeper.treatment());
        Repair below = only(new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.damage(sill, 1, 420, 520, 38.1 - 0.1, 8, 0, 0, 0, false)));
        assertInstanceOf(Treatment.Fill.class, below.treatment());
    }

    @Test
    void a_board_wet_behind_its_paint_is_taken_off_and_primed_behind_and_a_dry_one_only_painted() {
        Member casing = Scene.member("casing", "north", MemberKind.CASING, Member.Role.DECORATIVE, Member.Run.UPRIGHT, 114, 22, 1400, 1300, Member.Coat.FAILING, Member.Contact.NONE);
        assertInstanceOf(Treatment.Reseat.class, only(new Scene().add(casing, Condition.State.SOFTENED, 0.24, Scene.damage(casing, 1, 300, 500, 4, 2, 0, 0, 0, false))).treatment());
        assertInstanceOf(Treatment.Recoat.class, only(new Scene().add(casing, Condition.State.SOFTENED, 0.13, Scene.damage(casing, 1, 300, 500, 4, 2, 0, 0, 0, false))).treatment());
    }

    @Test
    void a_stretch_in_the_middle_of_a_long_board_is_replaced_between_two_joints() {
        Member fascia = Scene.member("fascia", "west", MemberKind.FASCIA, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 184, 19.05, 4800, 4800, Member.Coat.FAILING, Member.Contact.NONE);
        Repair repair = only(new Scene().add(fascia, Condition.State.DECAYED, 0.14, Scene.damage(fascia, 1, 2000, 2600, 19, 16, 3, 0, 0, false)));
        assertInstanceOf(Treatment.ReplacePart.class, repair.treatment());
        assertTrue(repair.woodLostMl() < 184 * 19.05 * 800 / 1000);
    }

    @Test
    void a_joist_that_keeps_too_little_for_a_patch_gets_a_sister_and_loses_nothing() {
        Member joist = Scene.member("joist", "south", MemberKind.JOIST, Member.Role.BEARS_LOAD, Member.Run.OUTWARD, 50, 190, 2400, 600, Member.Coat.NONE, Member.Contact.NONE);
        Repair repair = only(new Scene().add(joist, Condition.State.DECAYED, 0.14, Scene.damage(joist, 1, 900, 1300, 60, 30, 30, 0, 0, false)));
        assertInstanceOf(Treatment.Sister.class, repair.treatment(), repair.comparison()::words);
        assertEquals(0, repair.woodLostMl());
        assertTrue(repair.needs().stream().anyMatch(need -> need.material() == Material.BOLT && need.amount() >= 4));
    }

    @Test
    void no_fill_where_a_load_is_carried_in_bending() {
        Member beam = Scene.beam();
        Repair repair = only(new Scene().add(beam, Condition.State.SOFTENED, 0.13, Scene.damage(beam, 1, 1200, 1300, 12, 6, 0, 0, 0, false)));
        assertTrue(repair.comparison().all().stream().filter(one -> one.treatment() instanceof Treatment.Fill).allMatch(one -> one.refusals().stream().anyMatch(words -> words.contains("bends it"))));
        assertInstanceOf(Treatment.Dutchman.class, repair.treatment());
    }

    @Test
    void an_underside_with_no_room_beneath_it_is_neither_filled_nor_patched() {
        for (double above : new double[] {100, 600}) {
            Member sill = Scene.member("sill", "south", MemberKind.SILL, Member.Role.DECORATIVE, Member.Run.LEVEL, 140, 140, 3000, above, Member.Coat.SOUND, Member.Contact.NONE);
            Repair repair = only(new Scene().add(sill, Condition.State.SOFTENED, 0.13, Scene.damage(sill, 1, 900, 1000, 12, 6, 0, 12, 0, false)));
            List<String> against = repair.comparison().all().stream().filter(one -> one.treatment() instanceof Treatment.Fill || one.treatment() instanceof Treatment.Dutchman).flatMap(one -> one.refusals().stream())
                    .filter(words -> words.contains("beneath")).toList();
            assertEquals(above < 200 ? 2 : 0, against.size(), repair.comparison()::words);
            if (above < 200) assertTrue(against.getFirst().contains("3-15/16 in of room"), against::toString);
        }
    }

    /// Source: ASCE 7, sec. 4.5: 200 lbf on a rail (from memory). By hand: 889.6 N · 1500 mm / 4 over 89 · 89² / 6 mm³ is 2.84 MPa.
    @Test
    void a_rail_that_people_lean_on_gets_no_square_joint_and_the_push_is_said() {
        Member rail = Scene.member("rail", "south", MemberKind.RAIL, Member.Role.DECORATIVE, Member.Run.LEVEL, 89, 89, 1500, 900, Member.Coat.SOUND, Member.Contact.NONE);
        double may = sillwright.wood.strength.Adjusted.of(sillwright.wood.strength.DesignValues.orCareful(rail.species(), sillwright.wood.strength.Grade.NO2, 89, 89), 89, 89,
                sillwright.wood.strength.Adjusted.Service.of(sillwright.wood.strength.Duration.NORMAL, false)).bendingMPa();
        assertEquals(2.84 / may, Leaning.on(rail).whole(), 0.005 / may);
        Repair repair = only(new Scene().add(rail, Condition.State.DECAYED, 0.13, Scene.damage(rail, 1, 0, 200, 60, 60, 20, 40, 20, false)));
        Compared butt = repair.comparison().all().stream().filter(one -> one.treatment() instanceof Treatment.ButtSplice).findFirst().orElseThrow();
        assertTrue(butt.refusals().stream().anyMatch(words -> words.contains("a push of 200 lb")), butt.refusals()::toString);
        Member casing = Scene.member("casing", "south", MemberKind.CASING, Member.Role.DECORATIVE, Member.Run.LEVEL, 89, 89, 1500, 900, Member.Coat.SOUND, Member.Contact.NONE);
        assertEquals(0, Leaning.on(casing).pushN());
    }

    @Test
    void every_refusal_says_a_number_or_a_fact() {
        for (Repair repair : Scene.house().work().repairs())
            for (Compared one : repair.comparison().all()) for (String words : one.refusals()) assertTrue(words.length() > 10 && !words.contains("{}"), words);
    }

    @Test
    void checks_that_look_up_are_filled_those_that_stand_are_left_and_each_resin_is_counted_apart() {
        Member sill = Scene.sill();
        OpenChecks group = new OpenChecks(new Spot(sill.id(), Member.Face.TOP, Scene.mm(100), Scene.mm(20)), 5, Scene.mm(300), Scene.mm(2), Scene.mm(12));
        Scene scene = new Scene().add(sill, Condition.State.SOUND, 0.12);
        scene.checks.add(group);
        Repair repair = only(scene);
        assertInstanceOf(Treatment.Fill.class, repair.treatment());
        assertEquals(List.of(Resin.CONSOLIDANT, Resin.SKIM), repair.design().mixings().stream().map(mixing -> mixing.resin()).toList());
        assertEquals(5 * 300 * 2 * 12 / 2000.0, repair.design().mixings().getLast().likelyMl(), 1e-9);
        Member casing = Scene.member("casing", "north", MemberKind.CASING, Member.Role.DECORATIVE, Member.Run.UPRIGHT, 114, 22, 1400, 1300, Member.Coat.SOUND, Member.Contact.NONE);
        Scene upright = new Scene().add(casing, Condition.State.SOUND, 0.12);
        upright.checks.add(new OpenChecks(new Spot(casing.id(), Member.Face.FRONT, Scene.mm(100), Scene.mm(20)), 5, Scene.mm(300), Scene.mm(1.5), Scene.mm(6)));
        assertInstanceOf(Treatment.Watch.class, only(upright).treatment());
    }

    /// One member changed comes to the same as the whole house again.
    @Test
    void what_is_worked_again_is_only_what_was_touched() {
        Scene scene = Scene.house();
        Repairs before = Repairs.of(scene.survey(), scene.water(), scene.wood(), scene.start, scene.units, Outfit.COMMON);
        Member corner = Scene.corner(Member.Contact.MASONRY);
        scene.add(corner, Condition.State.DECAYED, 0.22, Scene.damage(corner, 1, 0, 260, 19.05, 15, 4.05, 0, 0, false));
        Repairs again = before.with(scene.survey(), scene.water(), scene.wood(), "corner-board", scene.start, scene.units, Outfit.COMMON);
        assertEquals(Repairs.of(scene.survey(), scene.water(), scene.wood(), scene.start, scene.units, Outfit.COMMON).all().toString(), again.all().toString());
        assertNotEquals(before.all().toString(), again.all().toString());
    }

    @Test
    void the_reader_of_inches_and_of_millimetres_is_told_the_same_treatment() {
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Member post = Scene.post();
            double deep = random.nextDouble() * 70, to = 60 + random.nextDouble() * 900;
            Scene us = new Scene().add(post, Condition.State.DECAYED, 0.14, Scene.damage(post, 1, 0, to, deep, deep, 0, 0, 0, false)), si = new Scene().add(post, Condition.State.DECAYED, 0.14, Scene.damage(post, 1, 0, to, deep, deep, 0, 0, 0, false));
            si.units = sillwright.measure.Units.SI;
            Repair one = only(us), other = only(si);
            if (Math.abs(to / 2438.4 - 0.5) < 0.3) continue;
            assertEquals(one.treatment().getClass(), other.treatment().getClass(), "seed " + seed);
            assertEquals(one.woodLostMl(), other.woodLostMl(), 0.03 * post.sectionMm2() * post.lengthMm() / 1000, "seed " + seed);
        }
    }
}
