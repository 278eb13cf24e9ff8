package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldBookTest {
    private static Survey fold(Entry... more) { return FieldBook.fold("", begunWith(more)); }

    private static List<String> depths(Survey survey) {
        return survey.probes().stream().map(noted -> noted.what().depth().text()).toList();
    }

    private static Fault onlyFault(Survey survey) {
        assertEquals(1, survey.faults().size(), () -> survey.faults().toString());
        return survey.faults().getFirst();
    }

    private static Entry amend(String id, long at, String target, Body instead) { return entry(id, at, new Body.Amended(target, instead)); }

    private static Entry strike(String id, long at, String target) { return entry(id, at, new Body.Struck(target, "a slip")); }

    @Test
    void a_reading_stands_as_it_was_written_with_its_entry_and_its_time() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "5/8 in")));
        assertEquals(List.of(), survey.faults());
        assertEquals(List.of(new Survey.Noted<>("r", 9, probe("post", "3 in", "5/8 in"))), survey.probes());
        assertEquals(4, survey.entries());
        assertEquals("a shed", survey.name());
    }

    @Test
    void an_amended_reading_says_what_it_was_amended_to_and_keeps_its_entry_and_time() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "3-5/8 in")), amend("a", 10, "r", probe("post", "3 in", "5/8 in")));
        assertEquals(List.of(), survey.faults());
        assertEquals(List.of(new Survey.Noted<>("r", 9, probe("post", "3 in", "5/8 in"))), survey.probes());
    }

    @Test
    void the_last_of_two_amendments_stands() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), amend("late", 11, "r", probe("post", "3 in", "3 in")),
                amend("early", 10, "r", probe("post", "3 in", "2 in")));
        assertEquals(List.of("3 in"), depths(survey));
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void a_struck_amendment_gives_way_to_the_one_before_it() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), amend("early", 10, "r", probe("post", "3 in", "2 in")),
                amend("late", 11, "r", probe("post", "3 in", "3 in")), strike("x", 12, "late"));
        assertEquals(List.of("2 in"), depths(survey));
    }

    @Test
    void a_struck_reading_is_gone() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), entry("q", 10, probe("post", "5 in", "1/2 in")), strike("x", 11, "r"));
        assertEquals(List.of("1/2 in"), depths(survey));
        assertEquals(List.of(), survey.faults());
        assertEquals(6, survey.entries());
    }

    @Test
    void a_struck_strike_restores_what_it_struck_and_a_third_strike_takes_it_away_again() {
        Entry reading = entry("r", 9, probe("post", "3 in", "1 in"));
        assertEquals(List.of("1 in"), depths(fold(reading, strike("x", 10, "r"), strike("y", 11, "x"))));
        assertEquals(List.of(), depths(fold(reading, strike("x", 10, "r"), strike("y", 11, "x"), strike("z", 12, "y"))));
    }

    @Test
    void an_entry_struck_twice_comes_back_only_when_both_strikes_are_struck() {
        Entry reading = entry("r", 9, probe("post", "3 in", "1 in"));
        assertEquals(List.of(), depths(fold(reading, strike("x", 10, "r"), strike("y", 11, "r"), strike("z", 12, "x"))));
        assertEquals(List.of("1 in"), depths(fold(reading, strike("x", 10, "r"), strike("y", 11, "r"), strike("z", 12, "x"), strike("w", 13, "y"))));
    }

    @Test
    void an_amendment_after_a_strike_does_not_bring_the_entry_back_and_is_named() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), strike("x", 10, "r"), amend("a", 11, "r", probe("post", "3 in", "2 in")));
        assertEquals(List.of(), depths(survey));
        Fault fault = onlyFault(survey);
        assertEquals("entry a", fault.entry());
        assertFalse(fault.grave());
    }

    @Test
    void an_amendment_after_a_strike_stands_once_the_strike_is_struck() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), strike("x", 10, "r"), amend("a", 11, "r", probe("post", "3 in", "2 in")),
                strike("y", 12, "x"));
        assertEquals(List.of("2 in"), depths(survey));
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void an_amendment_of_another_kind_is_set_aside_and_the_good_one_before_it_stands() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), amend("a", 10, "r", probe("post", "3 in", "2 in")),
                amend("b2", 11, "r", sighting("south", Sign.FUNGUS)));
        assertEquals(List.of("2 in"), depths(survey));
        assertEquals(List.of(), survey.sightings());
        Fault fault = onlyFault(survey);
        assertEquals("entry b2", fault.entry());
        assertTrue(fault.grave());
    }

    @Test
    void an_amendment_of_an_amendment_is_set_aside_and_told_how_to_be_mended() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), amend("a", 10, "r", probe("post", "3 in", "2 in")),
                amend("c", 11, "a", probe("post", "3 in", "3 in")));
        assertEquals(List.of("2 in"), depths(survey));
        assertEquals("amend the first entry again, or strike the amendment", onlyFault(survey).mend());
    }

    @Test
    void an_entry_that_names_none_or_a_later_one_or_itself_is_set_aside() {
        assertTrue(onlyFault(fold(strike("x", 9, "nowhere"))).what().contains("'nowhere'"));
        assertTrue(onlyFault(fold(strike("x", 9, "r"), entry("r", 10, probe("post", "3 in", "1 in")))).what().contains("not earlier"));
        assertTrue(onlyFault(fold(strike("x", 9, "x"))).grave());
    }

    @Test
    void the_same_entry_twice_counts_once() {
        Entry reading = entry("r", 9, probe("post", "3 in", "1 in"));
        Survey survey = fold(reading, reading, entry("r", 9, probe("post", "3 in", "1 in")));
        assertEquals(fold(reading), survey);
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void of_two_entries_with_one_id_the_earlier_stands_and_the_other_is_named_once_however_often_it_came() {
        Entry first = entry("r", 9, probe("post", "3 in", "1 in")), other = entry("r", 10, probe("post", "3 in", "2 in"));
        Survey survey = fold(other, first, other, other);
        assertEquals(List.of("1 in"), depths(survey));
        Fault fault = onlyFault(survey);
        assertEquals("id", fault.field());
        assertTrue(fault.grave());
        assertEquals(survey, fold(first, other));
    }

    @Test
    void a_reading_on_a_member_that_nobody_described_is_set_aside_with_the_nearest_name() {
        Survey survey = fold(entry("r", 9, probe("pots", "3 in", "1 in")), entry("q", 10, probe("post", "3 in", "1/2 in")));
        assertEquals(List.of("1/2 in"), depths(survey));
        Fault fault = onlyFault(survey);
        assertEquals("entry r, member: 'pots' is not described in this book; did you mean post?", fault.line());
    }

    @Test
    void a_reading_off_the_member_off_its_face_or_on_a_face_it_has_not_is_set_aside() {
        assertEquals("along", onlyFault(fold(entry("r", 9, probe("post", "85 in", "1 in")))).field());
        assertEquals("across", onlyFault(fold(entry("r", 9,
                new ProbeReading(spot("post", Member.Face.LEFT, "3 in", "4 in"), mm("1 in"), mm("4 in"), false)))).field());
        assertEquals("face", onlyFault(fold(entry("r", 9,
                new ProbeReading(spot("post", Member.Face.TOP, "3 in", "1 in"), mm("1 in"), mm("4 in"), false)))).field());
        assertEquals("along", onlyFault(fold(entry("r", 9, moisture("post", "90 in", "20%")))).field());
    }

    @Test
    void a_reading_at_the_very_edge_of_a_face_is_on_it() {
        Survey survey = fold(entry("r", 9, new ProbeReading(spot("post", Member.Face.FRONT, "7 ft", "5-1/2 in"), mm("3-1/2 in"), mm("4 in"), false)));
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void a_reading_deeper_than_the_member_from_that_face_is_set_aside() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "3-5/8 in")));
        assertEquals(List.of(), survey.probes());
        assertEquals("3-5/8 in is deeper than the member, which is 3-1/2 in through from its front face", onlyFault(survey).what());
        assertEquals(List.of(), fold(entry("r", 9,
                new ProbeReading(spot("post", Member.Face.LEFT, "3 in", "1 in"), mm("3-5/8 in"), mm("4 in"), false))).faults());
    }

    @Test
    void a_member_of_unknown_species_is_kept_and_said_to_be_counted_as_a_careful_one() {
        Survey survey = FieldBook.fold("", List.of(entry("s", 2, side("south")), entry("p", 3, post("post", "south", "pine-old", "3 ft"))));
        assertEquals(Set.of("post"), survey.members().keySet());
        Fault fault = onlyFault(survey);
        assertFalse(fault.grave());
        assertEquals("species", fault.field());
        assertTrue(fault.what().contains("counted as " + Species.orCareful("pine-old").name()), fault.what());
    }

    @Test
    void a_member_on_a_side_that_nobody_described_is_set_aside_and_so_is_what_was_read_on_it() {
        Survey survey = fold(entry("m", 9, post("lost", "nowhere")), entry("r", 10, probe("lost", "3 in", "1 in")));
        assertEquals(Set.of("post"), survey.members().keySet());
        assertEquals(List.of("side", "member"), survey.faults().stream().map(Fault::field).toList());
    }

    @Test
    void a_member_described_again_on_an_unknown_side_keeps_its_good_description() {
        Survey survey = fold(entry("m", 9, post("post", "nowhere")));
        assertEquals("south", survey.members().get("post").side());
        assertEquals("side", onlyFault(survey).field());
    }

    @Test
    void a_thing_described_twice_stands_as_described_last_and_says_so() {
        Survey survey = fold(entry("b2", 9, building("another")), entry("s2", 10, side("south")),
                entry("p2", 11, post("post", "south", "oak-white", "4 ft")));
        assertEquals("another", survey.name());
        assertEquals("oak-white", survey.members().get("post").species());
        assertEquals(3, survey.faults().size());
        assertTrue(survey.faults().stream().noneMatch(Fault::grave));
    }

    @Test
    void a_side_may_be_described_after_the_members_that_are_on_it() {
        Survey survey = FieldBook.fold("", List.of(entry("p", 3, post("post", "south")), entry("s", 4, side("south"))));
        assertEquals(Set.of("post"), survey.members().keySet());
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void a_member_that_starts_off_its_side_is_kept_and_named() {
        Survey survey = fold(entry("m", 9, post("far", "south", "oak-white", "25 ft")));
        assertTrue(survey.members().containsKey("far"));
        assertEquals("25 ft is off the side, which is 24 ft long", onlyFault(survey).what());
    }

    @Test
    void sightings_and_photos_need_a_side_and_a_member_that_were_described() {
        Sighting onNone = new Sighting(Sign.FUNGUS, true, "south", Optional.of("ghost"), Optional.empty(), Optional.empty(), "");
        Photo pinned = new Photo("photos/a.jpg", "south", Optional.of(spot("post", Member.Face.FRONT, "8 ft", "1 in")), "");
        assertEquals("side", onlyFault(fold(entry("g", 9, sighting("north", Sign.FUNGUS)))).field());
        assertEquals("member", onlyFault(fold(entry("g", 9, onNone))).field());
        assertEquals("along", onlyFault(fold(entry("g", 9, pinned))).field());
    }

    @Test
    void faults_found_while_reading_come_first_and_carry_their_file() {
        Fault read = new Fault("a.survey.json", "entry 4", "depth", "is not a length", "", true);
        Survey survey = FieldBook.fold("b.survey.json", begunWith(strike("x", 9, "nowhere")), List.of(read));
        assertEquals(read, survey.faults().getFirst());
        assertEquals("b.survey.json", survey.faults().getLast().file());
    }

    @Test
    void an_empty_book_is_an_empty_survey() {
        Survey survey = FieldBook.fold("", List.of());
        assertEquals("a building not yet described", survey.name());
        assertEquals(1900, survey.yearBuilt());
        assertEquals(0, survey.walkedMs());
        assertEquals(List.of(), survey.faults());
    }

    @Test
    void the_later_of_two_readings_at_one_spot_stands_on_the_face_and_both_stay_in_the_book() {
        Survey survey = fold(entry("r", 9, probe("post", "3 in", "1 in")), entry("q", 10, probe("post", "76 mm", "1-1/4 in")),
                entry("o", 11, probe("post", "6 in", "0 in")));
        assertEquals(List.of("1-1/4 in", "0 in"), survey.probesOn("post", Member.Face.FRONT).stream().map(p -> p.depth().text()).toList());
        assertEquals(3, survey.probes().size());
        assertEquals(List.of(), survey.probesOn("post", Member.Face.BACK));
    }

    @Test
    void the_day_of_the_walk_is_that_of_the_last_reading_of_any_kind() {
        assertEquals(12, fold(entry("r", 9, probe("post", "3 in", "1 in")), entry("m", 12, moisture("post", "3 in", "24%"))).walkedMs());
        assertEquals(13, fold(entry("g", 13, sighting("south", Sign.FUNGUS)), entry("m", 12, moisture("post", "3 in", "24%"))).walkedMs());
    }
}
