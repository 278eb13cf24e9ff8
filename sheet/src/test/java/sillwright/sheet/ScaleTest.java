package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import sillwright.measure.Units;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ScaleTest {
    @ParameterizedTest(name = "1:{0}")
    @CsvSource({"1, full size", "2, half size", "4, 3 in = 1 ft (1:4)", "8, 1-1/2 in = 1 ft (1:8)", "12, 1 in = 1 ft (1:12)",
            "16, 3/4 in = 1 ft (1:16)", "24, 1/2 in = 1 ft (1:24)", "48, 1/4 in = 1 ft (1:48)",
            "96, 1/8 in = 1 ft (1:96)", "192, 1/16 in = 1 ft (1:192)", "384, 1:384"})
    void a_scale_is_said_as_an_architects_rule_has_it(double ratio, String words) { assertEquals(words, new Scale(ratio, Units.US).words()); }

    @ParameterizedTest
    @EnumSource(Units.class)
    void what_is_to_be_drawn_always_fits_the_paper(Units units) {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            double wide = Math.pow(10, random.nextDouble() * 6), high = Math.pow(10, random.nextDouble() * 6);
            Scale scale = Scale.fitting(wide, high, 180, 120, units);
            assertTrue(scale.paper(wide) <= 180.001 && scale.paper(high) <= 120.001, "draw " + i + " of seed 3");
        }
    }

    @Test
    void a_scale_is_not_smaller_than_it_must_be() {
        assertEquals(48, Scale.fitting(48 * 180, 1, 180, 120, Units.US).ratio());
        assertEquals(64, Scale.fitting(48 * 180 + 1, 1, 180, 120, Units.US).ratio());
    }
}
