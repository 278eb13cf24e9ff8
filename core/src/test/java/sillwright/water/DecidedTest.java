package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Choice;
import sillwright.walk.Decision;
import sillwright.walk.Decision.About;
import sillwright.walk.Decision.By;
import sillwright.walk.Decision.Verdict;
import sillwright.walk.Sign;
import sillwright.walk.Side.Surface;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings.RankedSource;
import sillwright.water.WaterFindings.Remedy;

import static org.junit.jupiter.api.Assertions.*;

/// What the water stage makes of a decision about a remedy.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DecidedTest {
    private static final List<String> SPLASH = List.of("lower-ground", "gravel-bed", "low-plants");

    private static WaterFindings found(Decision... decisions) {
        Survey s = new Scene().side("east", "90deg", List.of(), Scene.ground(Surface.SOIL, "1in", "")).seen("east", Sign.DIRT_BAND, Sign.PEELING_AT_BASE).survey();
        return Water.find(new Survey(s.building(), s.sides(), s.members(), s.probes(), s.moistures(), s.sightings(), s.photos(), s.works(), s.checks(), s.profiles(),
                Stream.of(decisions).map(one -> new Survey.Noted<>("d", 9, one)).toList(), s.faults(), s.entries()));
    }

    private static RankedSource splash(Decision... decisions) { return found(decisions).sources().stream().filter(one -> one.source() == Source.SPLASH_FROM_GROUND).findFirst().orElseThrow(); }

    private static Decision about(Verdict verdict, String taken) {
        return new Decision(new About.Water("splash-from-ground", "east", ""), verdict, taken, By.OWNER, verdict == Verdict.ACCEPTED ? "" : "the drain lies there");
    }

    private static List<String> words(RankedSource source) { return source.remedies().stream().map(Remedy::word).toList(); }

    @Test
    void the_remedy_taken_stands_first_and_one_refused_last() {
        assertEquals(SPLASH, words(splash()));
        RankedSource gravel = splash(about(Verdict.OVERRULED, "gravel-bed"));
        assertEquals(List.of("gravel-bed", "lower-ground", "low-plants"), words(gravel));
        assertEquals("chosen by the owner in place of lower ground, because the drain lies there", gravel.ruling().orElseThrow().words());
        assertTrue(gravel.ruling().get().caution().contains("the simplest (lower ground)"), gravel.ruling().get()::caution);
        assertEquals(List.of("gravel-bed", "low-plants", "lower-ground"), words(splash(about(Verdict.REFUSED, "lower-ground"))));
        assertEquals(SPLASH, words(splash(about(Verdict.ACCEPTED, "lower-ground"))));
    }

    @Test
    void a_decision_about_another_place_or_another_remedy_waits_and_says_so() {
        assertTrue(splash(about(Verdict.OVERRULED, "clear-gutter")).ruling().isEmpty());
        assertTrue(found(about(Verdict.OVERRULED, "clear-gutter")).gaps().stream().anyMatch(gap -> gap.contains("'clear-gutter', which is no remedy of it: take one of lower-ground")));
        Decision elsewhere = new Decision(new About.Water("ice-dam", "east", "main eave"), Verdict.ACCEPTED, "ice-barrier", By.OWNER, "");
        assertTrue(found(elsewhere).gaps().stream().anyMatch(gap -> gap.contains("ice dam, east side, main eave waits")), found(elsewhere).gaps()::toString);
    }

    @Test
    void every_source_has_remedies_and_no_word_twice() {
        for (Source source : Source.values()) {
            List<String> words = Water.remedies(source);
            assertTrue(!words.isEmpty() && words.stream().allMatch(word -> word.matches("[a-z]+(-[a-z]+)*")) && words.stream().distinct().count() == words.size(), Choice.word(source));
        }
    }
}
