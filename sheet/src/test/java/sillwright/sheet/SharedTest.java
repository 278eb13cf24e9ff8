package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/// Words told once and named by a letter.
@DisplayNameGeneration(ReplaceUnderscores.class)
class SharedTest {
    private static final List<String> ALL = List.of("close the doors", "sheet the ground", "wet the paint", "tie the bags", "wash the hands", "note the day");

    @Test
    void letters_in_a_row_are_told_from_the_first_to_the_last() {
        Shared shared = new Shared(List.of(ALL, ALL, ALL), Shared.MANY);
        assertEquals("a to f", shared.letters(ALL));
        assertEquals("a, c", shared.letters(List.of("wet the paint", "close the doors", "read the sheet")));
        assertEquals("a to d, f", shared.letters(List.of("close the doors", "sheet the ground", "wet the paint", "tie the bags", "note the day")));
        assertEquals("", shared.letters(List.of("read the sheet")));
    }

    @Test
    void what_fewer_say_stays_with_them() {
        Shared shared = new Shared(List.of(ALL, ALL, List.of("read the sheet")), Shared.MANY);
        assertEquals("", shared.letters(ALL));
        assertEquals(ALL, shared.own(ALL));
    }
}
