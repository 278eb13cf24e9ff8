package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class BreaksTest {
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
            "soft up to 8 ft 6-3/8 in from the foot; soft |up |to |8 ft 6-3/8 in |from |the |foot",
            "pine-eastern-white, 5-1/2 in × 3 in; pine-|eastern-|white, |5-1/2 in |× |3 in",
            "93 % likely (26.2 in³ to 56.1 in³); 93 % |likely |(26.2 in³ |to |56.1 in³)",
            "scarf splice 1:5, 4.7 fl oz.; scarf |splice |1:5, |4.7 fl oz.",
            "in ft in; in |ft |in",
            "word; word"})
    void a_line_ends_between_words_but_never_within_a_measure(String text, String parts) {
        Breaks breaks = new Breaks();
        breaks.setText(text);
        List<String> found = new ArrayList<>();
        int from = 0;
        for (int to = breaks.next(); to >= 0; to = breaks.next()) {
            found.add(text.substring(from, to));
            from = to;
        }
        assertEquals(parts, String.join("|", found));
    }
}
