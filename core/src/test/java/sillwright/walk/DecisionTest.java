package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Refused;
import sillwright.walk.Decision.About;
import sillwright.walk.Decision.By;
import sillwright.walk.Decision.Verdict;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

/// What is decided about a recommendation, in the field book of an invented shed.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DecisionTest {
    private static Decision wood(String along, String taken) { return new Decision(new About.Wood("post", mm(along)), Verdict.OVERRULED, taken, By.OWNER, "the old foot is to be seen"); }

    private static Decision water(String place, String taken) { return new Decision(new About.Water("gutter-clogged", "south", place), Verdict.ACCEPTED, taken, By.PRACTITIONER, ""); }

    private static List<String> taken(Survey survey) { return survey.decisions().stream().map(noted -> noted.what().taken()).toList(); }

    @Test
    void the_last_that_stands_about_a_place_wins_and_a_strike_brings_the_earlier_back() {
        Entry first = entry("1", 10, wood("6 in", "dutchman")), second = entry("2", 20, wood("10 in", "replace")), far = entry("3", 30, wood("40 in", "watch"));
        assertEquals(List.of("replace", "watch"), taken(FieldBook.fold("", begunWith(far, second, first))), "within 6 in it is one place, whatever the order of arrival");
        assertEquals(List.of("watch", "dutchman"), taken(FieldBook.fold("", begunWith(first, second, far, entry("4", 40, new Body.Struck("2", "changed her mind"))))).reversed());
        assertEquals(List.of("dutchman"), taken(FieldBook.fold("", begunWith(first, second, entry("4", 40, new Body.Amended("2", wood("6 in", "dutchman")))))));
    }

    @Test
    void a_place_of_water_is_its_source_its_side_and_its_place() {
        Survey survey = FieldBook.fold("", begunWith(entry("1", 10, water("main eave", "clear-gutter")), entry("2", 20, water("porch eave", "clear-gutter")), entry("3", 30, water("main eave", "fit-strainer"))));
        assertEquals(List.of(), survey.faults());
        assertEquals(List.of("clear-gutter", "fit-strainer"), taken(survey));
        assertEquals(2, survey.unread().decisions().size(), "the water stage is told of it");
        assertEquals(List.of(), FieldBook.fold("", begunWith(entry("1", 10, wood("6 in", "dutchman")))).unread().decisions(), "and not of what was decided about wood");
    }

    @Test
    void to_overrule_wants_a_reason_and_to_agree_does_not() {
        assertEquals("because", assertThrows(Refused.class, () -> new Decision(new About.Wood("post", mm("6 in")), Verdict.OVERRULED, "replace", By.OWNER, " ")).where());
        assertEquals("because", assertThrows(Refused.class, () -> new Decision(new About.Wood("post", mm("6 in")), Verdict.REFUSED, "replace", By.OWNER, "")).where());
        assertEquals("agreed to by the owner", new Decision(new About.Wood("post", mm("6 in")), Verdict.ACCEPTED, "replace", By.OWNER, "").words("replace in kind", "replace in kind"));
        assertEquals("chosen by the owner in place of replace in kind, because the old foot is to be seen", wood("6 in", "dutchman").words("dutchman", "replace in kind"));
    }

    @Test
    void a_decision_about_what_is_not_there_is_set_aside_and_named() {
        assertEquals(List.of("along"), FieldBook.fold("", begunWith(entry("1", 10, wood("9 ft", "dutchman")))).faults().stream().map(Fault::field).toList());
        Decision nowhere = new Decision(new About.Water("gutter-clogged", "north", ""), Verdict.ACCEPTED, "clear-gutter", By.OWNER, "");
        assertEquals(List.of("side"), FieldBook.fold("", begunWith(entry("1", 10, nowhere))).faults().stream().map(Fault::field).toList());
    }
}
