package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.water.Source;
import sillwright.watch.WatchFindings.Check;
import sillwright.watch.WatchFindings.Round;
import sillwright.wood.Condition;
import sillwright.work.Months;
import sillwright.work.Scene;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class WatchTest {
    private static WatchFindings watch(Scene scene) { return Watch.find(scene.survey(), scene.water(), scene.wood(), scene.work(), scene.start, scene.units); }

    private static Round round(WatchFindings watch, String id) { return watch.rounds().stream().filter(round -> round.id().equals(id)).findFirst().orElseThrow(); }

    @Test
    void there_are_two_rounds_a_year_in_the_order_they_come() {
        List<Round> rounds = watch(Scene.house()).rounds();
        assertEquals(List.of("autumn", "spring"), rounds.stream().map(Round::id).toList(), "the work begins in May");
        assertTrue(rounds.getFirst().first().isBefore(rounds.getLast().first()));
        Scene winter = Scene.house();
        winter.start = LocalDate.of(2027, 1, 11);
        assertEquals(List.of("spring", "autumn"), watch(winter).rounds().stream().map(Round::id).toList());
    }

    @Test
    void months_follow_the_normals_where_there_are_any() {
        assertEquals(new Seasons(4, 11), Seasons.of(List.of()));
        assertEquals(new Seasons(4, 11), Seasons.of(Months.chicago()));
        assertEquals(new Seasons(2, 11), Seasons.of(Months.of(52, 55, 61, 68, 75, 81, 83, 82, 78, 70, 61, 54)), "a gulf coast");
        assertEquals(new Seasons(5, 10), Seasons.of(Months.of(2, 8, 22, 39, 53, 63, 68, 66, 56, 43, 26, 10)), "far north");
    }

    @Test
    void the_foot_of_a_mended_post_is_metered_where_it_was_and_told_what_it_was() {
        for (Round round : watch(Scene.house()).rounds()) {
            Check check = round.checks().stream().filter(one -> one.words().startsWith("meter the foot of porch post 3")).findFirst().orElseThrow();
            assertEquals("meter the foot of porch post 3, 6 in up", check.words());
            assertEquals("27 %", check.last());
            assertEquals("15 % or less", check.expected());
            assertEquals("R2", check.because());
            assertEquals(Optional.of("porch-post-3"), check.member());
        }
    }

    @Test
    void what_is_left_alone_is_probed_again_at_the_same_spots() {
        Member sill = Scene.member("skirt", "south", MemberKind.SKIRT_BOARD, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 180, 20, 3000, 200, Member.Coat.SOUND, Member.Contact.NONE);
        Round round = watch(new Scene().add(sill, Condition.State.SOFTENED, 0.14, Scene.damage(sill, 1, 500, 600, 4, 2, 0, 0, 0, false))).rounds().getFirst();
        assertTrue(round.checks().stream().anyMatch(check -> check.words().startsWith("probe skirt") && check.expected().equals("no deeper than 3/16 in")), round.checks()::toString);
    }

    @Test
    void each_stopped_source_is_watched_by_its_remedy_and_faint_ones_not_at_all() {
        Scene scene = Scene.house().source(Source.PLUMBING_LEAK, "east", 0.05, 2);
        Round round = round(watch(scene), "autumn");
        assertTrue(round.checks().stream().anyMatch(check -> check.because().equals("W1") && check.words().contains("clear and rehang it")));
        assertTrue(round.checks().stream().noneMatch(check -> check.because().equals("W4")));
    }

    @Test
    void wet_wood_that_needs_no_repair_is_metered_again() {
        Member sill = Scene.sill();
        Round round = watch(new Scene().add(sill, Condition.State.SOUND, 0.22)).rounds().getFirst();
        Check check = round.checks().stream().filter(one -> one.member().isPresent()).findFirst().orElseThrow();
        assertEquals("22 %", check.last());
        assertTrue(watch(new Scene().add(sill, Condition.State.SOUND, 0.12)).rounds().getFirst().checks().stream().allMatch(one -> one.member().isEmpty()));
    }

    @Test
    void one_walks_side_after_side_and_the_inside_last() {
        for (Round round : watch(Scene.house()).rounds()) {
            List<String> order = round.checks().stream().map(Check::side).distinct().toList();
            assertEquals(List.of("south", "east", "north", ""), order);
            List<String> south = round.checks().stream().filter(check -> check.side().equals("south")).map(Check::words).toList();
            int gutter = at(south, "clear and flush the gutter"), beam = at(south, "meter porch beam"), post = at(south, "meter the foot of porch post 3");
            assertTrue(gutter < beam && beam < post, south::toString);
        }
    }

    private static int at(List<String> words, String start) {
        for (int i = 0; i < words.size(); i++) if (words.get(i).startsWith(start)) return i;
        return fail("nothing begins with " + start + " in " + words);
    }

    @Test
    void a_house_of_sixty_members_is_walked_in_forty_checks_and_what_may_fall_is_among_them() {
        Scene scene = Scene.house();
        for (int i = 0; i < 56; i++) {
            Member clapboard = Scene.member("clapboard-" + i, List.of("south", "east", "north").get(i % 3), MemberKind.CLAPBOARD, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 100, 15,
                    3000, 300 + 100 * i, Member.Coat.FAILING, Member.Contact.NONE);
            scene.add(clapboard, Condition.State.SOFTENED, 0.2, Scene.damage(clapboard, 1, 500, 600, 4, 4, 0, 0, 0, false));
        }
        for (Round round : watch(scene).rounds()) {
            assertEquals(Watch.MOST_CHECKS, round.checks().size());
            assertTrue(round.checks().stream().anyMatch(check -> check.words().startsWith("look first at porch beam")));
        }
    }

    @Test
    void the_reader_of_millimetres_reads_no_inches() {
        Scene scene = Scene.house();
        scene.units = Units.SI;
        scene.stock = List.of(2400.0, 3600.0);
        for (Round round : watch(scene).rounds())
            for (Check check : round.checks()) assertFalse((check.words() + check.last() + check.expected()).matches(".*\\d (in|ft)\\b.*"), check::toString);
    }
}
