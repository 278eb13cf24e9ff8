package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.water.Source;
import sillwright.watch.WatchFindings.Ask;
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
    void there_are_two_rounds_a_year_at_least_in_the_order_they_come_and_one_that_waits_for_a_storm() {
        List<Round> rounds = watch(Scene.house()).rounds();
        assertEquals(List.of("autumn", "spring", "storm"), rounds.stream().map(Round::id).toList(), "the work begins in May");
        assertTrue(rounds.getFirst().first().get().isBefore(rounds.get(1).first().get()));
        assertEquals(Optional.empty(), rounds.getLast().first());
        Scene winter = Scene.house();
        winter.start = LocalDate.of(2027, 1, 11);
        assertEquals(List.of("spring", "autumn", "storm"), watch(winter).rounds().stream().map(Round::id).toList());
    }

    @Test
    void days_follow_the_normals_where_there_are_any() {
        assertEquals(new Seasons(MonthDay.of(4, 15), MonthDay.of(11, 15), Optional.empty(), false), Seasons.of(List.of()));
        Seasons chicago = Seasons.of(Months.chicago());
        assertTrue(within(chicago.spring(), 3, 15, 4, 20) && within(chicago.autumn(), 10, 20, 11, 15), chicago::toString);
        Seasons gulf = Seasons.of(Months.of(52, 55, 61, 68, 75, 81, 83, 82, 78, 70, 61, 54));
        assertTrue(within(gulf.spring(), 2, 1, 3, 1) && within(gulf.autumn(), 11, 1, 12, 1) && gulf.leafFall().isEmpty(), "a gulf coast " + gulf);
        Seasons north = Seasons.of(Months.of(2, 8, 22, 39, 53, 63, 68, 66, 56, 43, 26, 10));
        assertTrue(within(north.spring(), 4, 20, 5, 31) && within(north.autumn(), 9, 10, 10, 31), "far north " + north);
    }

    private static boolean within(MonthDay day, int fromMonth, int from, int toMonth, int to) { return !day.isBefore(MonthDay.of(fromMonth, from)) && !day.isAfter(MonthDay.of(toMonth, to)); }

    @Test
    void south_of_the_equator_the_rounds_keep_to_their_seasons() {
        List<sillwright.walk.Building.Month> north = Months.chicago(), south = new ArrayList<>(north.subList(6, 12));
        south.addAll(north.subList(0, 6));
        for (boolean spring : List.of(true, false)) {
            MonthDay here = spring ? Seasons.of(north).spring() : Seasons.of(north).autumn(), there = spring ? Seasons.of(south).spring() : Seasons.of(south).autumn();
            int apart = Math.floorMod(there.atYear(2025).getDayOfYear() - here.atYear(2025).getDayOfYear(), 365);
            assertEquals(182, apart, 6, here + " and " + there);
        }
    }

    @Test
    void in_seeded_climates_spring_comes_after_the_thaw_and_autumn_before_the_freeze() {
        long seed = 20261125;
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        for (int i = 0; i < 500; i++) {
            double mean = random.nextDouble(28, 80), swing = random.nextDouble(2, 38);
            double[] means = new double[12];
            for (int m = 0; m < 12; m++) means[m] = mean - swing * Math.cos(2 * Math.PI * m / 12);
            List<sillwright.walk.Building.Month> months = Months.of(means);
            Seasons seasons = Seasons.of(months);
            boolean frost = months.stream().anyMatch(month -> month.meanLow().own() < 0), always = months.stream().allMatch(month -> month.meanLow().own() < 0);
            if (!frost || always) continue;
            assertTrue(low(months, seasons.spring()) > 0 && low(months, seasons.autumn()) > 0, "seed " + seed + ", draw " + i + ": " + seasons);
        }
    }

    private static double low(List<sillwright.walk.Building.Month> months, MonthDay day) { return Seasons.on(months, month -> month.meanLow().own(), day.atYear(2025).getDayOfYear() - 1); }

    @Test
    void the_foot_of_a_mended_post_is_metered_where_it_was_and_told_what_it_was() {
        for (Round round : watch(Scene.house()).rounds().subList(0, 2)) {
            Check check = round.checks().stream().filter(one -> one.place().equals("foot of porch post 3")).findFirst().orElseThrow();
            Ask meter = check.asks().stream().filter(ask -> ask.kind() == Ask.Kind.METER).findFirst().orElseThrow();
            assertEquals("meter, 6 in up", meter.words());
            assertEquals("27 %", meter.last());
            assertEquals("15 % or less", meter.expected());
            assertEquals("porch-post-3", meter.spot().orElseThrow().member());
            assertEquals("R2", check.because());
            assertEquals(Optional.of("porch-post-3"), check.member());
        }
    }

    @Test
    void what_is_asked_at_one_place_is_one_stop() {
        for (Round round : watch(Scene.house()).rounds()) {
            List<String> places = round.checks().stream().map(check -> check.side() + "/" + check.place()).toList();
            assertEquals(places.size(), Set.copyOf(places).size(), places::toString);
            for (Check check : round.checks()) assertTrue(!check.place().isEmpty() && !check.asks().isEmpty() && check.minutes() > 0, check::toString);
        }
    }

    @Test
    void what_is_left_alone_is_probed_again_at_the_same_spots() {
        Member sill = Scene.member("skirt", "south", MemberKind.SKIRT_BOARD, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 180, 20, 3000, 200, Member.Coat.SOUND, Member.Contact.NONE);
        Round round = watch(new Scene().add(sill, Condition.State.SOFTENED, 0.14, Scene.damage(sill, 1, 500, 600, 4, 2, 0, 0, 0, false))).rounds().getFirst();
        assertTrue(round.checks().stream().anyMatch(check -> check.words().contains("probe the front face again at the same spots") && check.expected().contains("no deeper than 3/16 in")), round.checks()::toString);
    }

    @Test
    void each_stopped_source_is_watched_by_its_remedy_and_faint_ones_not_at_all() {
        Scene scene = Scene.house().source(Source.PLUMBING_LEAK, "east", 0.05, 2);
        Round round = round(watch(scene), "autumn");
        assertTrue(round.checks().stream().anyMatch(check -> check.because().contains("W1") && check.words().contains("clear and rehang it")));
        assertTrue(round.checks().stream().noneMatch(check -> check.because().contains("W4")));
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
    void one_walks_side_after_side_the_same_way_round_and_the_inside_last() {
        for (Round round : watch(Scene.house()).rounds().subList(0, 2)) {
            List<String> order = round.checks().stream().map(Check::side).distinct().toList();
            assertEquals(List.of("south", "east", "north", ""), order);
            List<String> south = round.checks().stream().filter(check -> check.side().equals("south")).map(Check::words).toList();
            assertTrue(at(south, "whole side") < at(south, "foot of porch post 3"), "first what is seen standing back: " + south);
        }
    }

    private static int at(List<String> words, String start) {
        for (int i = 0; i < words.size(); i++) if (words.get(i).startsWith(start)) return i;
        return fail("nothing begins with " + start + " in " + words);
    }

    @Test
    void a_house_of_sixty_members_is_walked_in_a_morning_and_what_may_fall_is_among_them() {
        Scene scene = Scene.house();
        for (int i = 0; i < 56; i++) {
            Member clapboard = Scene.member("clapboard-" + i, List.of("south", "east", "north").get(i % 3), MemberKind.CLAPBOARD, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 100, 15,
                    3000, 300 + 100 * i, Member.Coat.FAILING, Member.Contact.NONE);
            scene.add(clapboard, Condition.State.SOFTENED, 0.2, Scene.damage(clapboard, 1, 500, 600, 4, 4, 0, 0, 0, false));
        }
        List<Round> rounds = watch(scene).rounds();
        for (Round round : rounds) {
            assertTrue(round.checks().size() <= Walk.MOST_STOPS + 2 && round.minutes() <= Walk.MOST_MINUTES + 10, round.checks().size() + " stops, " + round.minutes());
            assertTrue(round.checks().stream().anyMatch(check -> check.words().startsWith("porch beam") && check.words().contains("look before you go near")), round.checks()::toString);
        }
        Set<String> both = new HashSet<>(), first = new HashSet<>();
        rounds.get(0).checks().forEach(check -> first.add(check.words()));
        rounds.get(1).checks().forEach(check -> { if (first.contains(check.words())) both.add(check.words()); });
        assertTrue(rounds.get(0).left() > 0 && both.size() < Walk.MOST_STOPS, "what one round leaves out the next takes up: " + both.size());
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
