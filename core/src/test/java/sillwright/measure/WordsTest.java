package sillwright.measure;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class WordsTest {
    @ParameterizedTest(name = "{0} mm is {1}")
    @CsvSource({"1384.3, 4 ft 6-1/2 in", "9.525, 3/8 in", "165.1, 6-1/2 in", "25.4, 1 in", "0, 0 in", "0.7, 0 in", "0.8, 1/16 in", "914.4, 3 ft", "913.7, 3 ft", "912, 35-7/8 in",
            "-165.1, -6-1/2 in", "-0.1, 0 in", "1371.6, 4 ft 6 in", "139.7, 5-1/2 in"})
    void a_length_is_said_to_the_nearest_sixteenth(double mm, String said) { assertEquals(said, Words.length(mm, Units.US)); }

    @ParameterizedTest(name = "{0} mm is {1}")
    @CsvSource({"1384.3, 1384 mm", "9.525, 10 mm", "7.9375, 8 mm", "4.7625, 4.8 mm", "4.97, 5 mm", "0, 0 mm", "-0.04, 0 mm"})
    void a_metric_length_is_said_in_millimetres(double mm, String said) { assertEquals(said, Words.length(mm, Units.SI)); }

    @Test
    void a_length_said_is_never_further_off_than_half_a_sixteenth_when_read_again() {
        long seed = 7;
        var random = new Random(seed);
        for (int i = 0; i < 10_000; i++) {
            double mm = (random.nextDouble() - 0.2) * 8000;
            double again = Quantity.read(Words.length(mm, Units.US), Kind.LENGTH).own();
            assertEquals(mm, again, 25.4 / 32 + 1e-9, "seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0} to {1} places is {2}")
    @CsvSource({"1.005, 2, 1.01", "2.5, 0, 3", "-0.001, 2, 0", "1200, 2, 1200", "1.50, 2, 1.5", "1e20, 0, 100000000000000000000"})
    void a_number_drops_the_zeros_that_say_nothing(double value, int places, String said) { assertEquals(said, Words.number(value, places)); }

    @ParameterizedTest(name = "{0} to {1} digits is {2}")
    @CsvSource({"0.0123456, 3, 0.0123", "123.456, 4, 123.5", "999.96, 4, 1000", "1.234e-10, 3, 1.23e-10", "9.996e-10, 3, 1e-9", "0, 3, 0", "-0.5, 2, -0.5", "1e12, 3, 1e12"})
    void a_number_is_said_to_so_many_digits(double value, int digits, String said) { assertEquals(said, Words.significant(value, digits)); }

    @Test
    void lists_and_counts_read_aloud() {
        assertEquals("one, two and three", Words.list(List.of("one", "two", "three")));
        assertEquals("none", Words.list(List.of()));
        assertEquals("1 reading", Words.count(1, "reading"));
        assertEquals("3 readings", Words.count(3, "reading"));
    }

    @Test
    void a_name_mistyped_is_answered_with_the_nearest() {
        assertEquals("pine-eastern-white", Words.near("pine-estern-white", List.of("oak-white", "pine-eastern-white", "teak")).getFirst());
        assertTrue(Words.near("zzzzzz", List.of("emc", "dewpoint")).isEmpty());
    }

    @Test
    void the_default_locale_changes_nothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertEquals("1.5", Words.number(1.5, 2));
            assertEquals(304.8, Quantity.read("12 IN", Kind.LENGTH).own(), 1e-9);
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource({"2026-06-12, 12 Jun 2026", "2025-12-01, 1 Dec 2025"})
    void a_day_is_said_as_one_writes_it(LocalDate day, String said) { assertEquals(said, Words.day(day)); }
}
