package sillwright.measure;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// An inch is 25.4 mm, a pound 4.4482216152605 N, a gallon 231 cubic inches: exact by definition, so the tolerance is rounding.
@DisplayNameGeneration(ReplaceUnderscores.class)
class QuantityTest {
    private static double own(String text, Kind kind) { return Quantity.read(text, kind).own(); }

    @ParameterizedTest(name = "{0} is {1} mm")
    @CsvSource(delimiter = '|', value = {
            "3/8 in | 9.525", "3/8in | 9.525", "3 / 8 in | 9.525", "6-1/2in | 165.1", "6 1/2 in | 165.1", "6½\" | 165.1", "6 ½ in | 165.1", "½in | 12.7",
            "6-½ in | 165.1", "4' 6-1/2\" | 1384.3", "4'6-1/2\" | 1384.3", "4′ 6½″ | 1384.3", "4’ 6 1/2” | 1384.3", "4'6'' | 1371.6", "4ft 6-1/2in | 1384.3",
            "4ft 6 1/2in | 1384.3", "4ft6in | 1371.6", "4ft6-1/2in | 1384.3", "4 feet 6 inches | 1371.6", "4feet6inches | 1371.6", "4 ft 6.5 in | 1384.3",
            "4 ft. 6 in. | 1371.6", "-4ft 6in | -1371.6", "−4′ 6″ | -1371.6", "-0ft 6in | -152.4", "114 mm | 114", "114mm | 114", "1.5m | 1500", "1.5 m | 1500", ".5in | 12.7",
            "5. in | 127", "+2in | 50.8", "2 yd | 1828.8", "12cm | 120", "6 1⁄2 in | 165.1", "⅞ in | 22.225", "1⅛″ | 28.575", "12 IN | 304.8", "1e3mm | 1000"})
    void a_length_means_what_a_carpenter_means_by_it(String text, double mm) { assertEquals(mm, own(text, Kind.LENGTH), 1e-9); }

    @ParameterizedTest(name = "{0} as {1} is {2}")
    @CsvSource(delimiter = '|', value = {
            "12ft2 | AREA | 1114836.48", "12 ft² | AREA | 1114836.48", "12 sqft | AREA | 1114836.48", "1.1m2 | AREA | 1100000", "30.25in2 | SECTION_AREA | 19516.09",
            "-5F | TEMPERATURE | -20.5555555556", "−5 °F | TEMPERATURE | -20.5555555556", "70F | TEMPERATURE | 21.1111111111", "70 ºF | TEMPERATURE | 21.1111111111",
            "70 ℉ | TEMPERATURE | 21.1111111111", "70f | TEMPERATURE | 21.1111111111", "21C | TEMPERATURE | 21", "21 deg C | TEMPERATURE | 21", "300K | TEMPERATURE | 26.85",
            "5F | DIFFERENCE | 2.77777777778", "3C | DIFFERENCE | 3", "65% | PERCENT | 0.65", "65 % | PERCENT | 0.65", "65 percent | PERCENT | 0.65", "0.45 | NUMBER | 0.45",
            "5/12 | PITCH | 0.416666666667", "5:12 | PITCH | 0.416666666667", "5 in 12 | PITCH | 0.416666666667", "5in/12 | PITCH | 0.416666666667",
            "1:10 | RATIO | 0.1", "2:1 | RATIO | 2", "2 : 1 | RATIO | 2", "1:10 | FALL | 0.1", "1/16in/ft | FALL | 0.00520833333333", "1/16 in/ft | FALL | 0.00520833333333",
            "1/2in per 10ft | FALL | 0.00416666666667", "1/4in per ft | FALL | 0.0208333333333", "¼″/ft | FALL | 0.0208333333333", "1/4 in / ft | FALL | 0.0208333333333",
            "5mm/m | FALL | 0.005", "2% | FALL | 0.02", "1e-10m2/s | DIFFUSIVITY | 1e-10", "1.3E-10 m²/s | DIFFUSIVITY | 1.3e-10",
            "12floz | VOLUME | 354.88235475", "1 gal | VOLUME | 3785.411784", "231in3 | VOLUME | 3785.411784", "0.35L | VOLUME | 350", "350 ml | VOLUME | 350",
            "1200lb | FORCE | 5337.8659383126", "5.3kN | FORCE | 5300", "120lb/ft | LINE_LOAD | 1.75126835246", "30lb/in | WITHDRAWAL | 5.25380505739",
            "150ft-lb | MOMENT | 203372.692250", "150 lb-ft | MOMENT | 203372.692250", "1800in-lb | MOMENT | 203372.692250", "0.2kNm | MOMENT | 200000",
            "900psi | STRESS | 6.20528156385", "6.2MPa | STRESS | 6.2", "45min | MINUTES | 2700", "2h | MINUTES | 7200", "3 days | HOURS | 259200",
            "500g | MASS | 500", "2lb | MASS | 907.18474", "10gpm | FLOW | 0.6309019640", "6in/h | RAIN | 152.4", "150mm/h | RAIN | 150", "20mph | WIND | 8.9408", "30deg | ANGLE | 30", "30° | ANGLE | 30"})
    void every_kind_reads_what_people_write(String text, Kind kind, double own) { assertEquals(own, own(text, kind), Math.abs(own) * 1e-11); }

    @ParameterizedTest
    @ValueSource(strings = {"4' 6-1/2\"", "6½″", "−5 mm", "1.50 m", "3/8 in"})
    void the_text_comes_back_as_it_was_written(String text) {
        assertEquals(text, Quantity.read("  " + text + " ", Kind.LENGTH).text());
    }

    @ParameterizedTest(name = "{0} as {1} says: {2}")
    @CsvSource(delimiter = '|', value = {
            "12 | LENGTH | has no unit", "4ft 6 | LENGTH | has no unit", "65 | PERCENT | has no unit", "70 | TEMPERATURE | has no unit",
            "70F | LENGTH | is a temperature, where a length is wanted", "12in | AREA | is a length, where an area is wanted", "12ft2 | LENGTH | is an area, where a length is wanted",
            "5 in | PITCH | is a length, where a slope is wanted", "12 cubits | LENGTH | which is not known", "12 in x | LENGTH | not known",
            "garbage | LENGTH | has no number", "in | LENGTH | has no number", ". in | LENGTH | has no number", "NaN in | LENGTH | has no number", "1/0 in | LENGTH | divides by nothing",
            "6-1/0in | LENGTH | divides by nothing", "1:0 | RATIO | has no run", "1in per 0ft | FALL | has no run", "1/0 | PITCH | divides by nothing",
            "1:10ft | RATIO | something behind", "0.45in | NUMBER | something behind it", "1e400 mm | LENGTH | not a number that can be used",
            "6in 4ft | LENGTH | puts two values together", "4ft 13in | LENGTH | puts two values together", "1,200lb | FORCE | has a comma", "1,5 m | LENGTH | has a comma",
            "1/16 | FALL | does not say what it rises", "8 | RATIO | does not say what it rises", "--5F | TEMPERATURE | has no number"})
    void what_cannot_be_meant_is_refused_with_the_reason(String text, Kind kind, String reason) {
        var refused = assertThrows(Refused.class, () -> Quantity.read(text, kind));
        assertTrue(refused.line(Units.US).contains(reason), refused.line(Units.US));
        assertTrue(refused.line(Units.US).contains(text), refused.line(Units.US));
        assertTrue(!refused.mend().isEmpty());
    }

    @Test
    void nothing_written_is_refused() {
        assertThrows(Refused.class, () -> Quantity.read("", Kind.LENGTH));
        assertThrows(Refused.class, () -> Quantity.read(" \t ", Kind.NUMBER));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void the_example_that_an_error_shows_can_itself_be_typed(Kind kind) {
        for (String example : kind.example().split(", | or ")) Quantity.read(example, kind);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void a_value_said_in_either_system_is_read_back_the_same(Kind kind) {
        long seed = 20260101;
        var random = new Random(seed);
        for (Units units : Units.values())
            for (int i = 0; i < 200; i++) {
                double own = (random.nextDouble() - 0.3) * 100;
                Unit unit = kind.in(units);
                String symbol = kind.dimension() == Dimension.SLOPE && unit.symbol().isEmpty() ? ":1" : unit == Unit.PART ? "" : unit.symbol();
                if (kind == Kind.FRACTION) continue;
                String text = BigDecimal.valueOf(unit.fromOwn(own)) + symbol;
                assertEquals(own, own(text, kind), 1e-9 * Math.max(1, Math.abs(own)), text + ", seed " + seed);
            }
    }

    @Test
    void a_fraction_is_written_as_percent_and_answered_as_a_part_of_one() {
        assertEquals(0.6, own("60%", Kind.FRACTION), 1e-15);
        assertThrows(Refused.class, () -> Quantity.read("0.6", Kind.FRACTION));
    }

    @Test
    void a_list_is_parted_by_commas_and_an_empty_place_is_refused() {
        assertEquals(List.of(-5.0, 0.0, 10.0), Quantity.readList("-5C,0C, 10C", Kind.TEMPERATURE).stream().map(Quantity::own).toList());
        assertThrows(Refused.class, () -> Quantity.readList("1C,,2C", Kind.TEMPERATURE));
    }

    @Test
    void whatever_is_typed_is_read_or_refused_and_nothing_else_escapes() {
        long seed = 4711;
        var random = new Random(seed);
        String marks = "0123456789/.:-+ '\"ftinmFC%½e′";
        for (int i = 0; i < 50_000; i++) {
            var text = new StringBuilder();
            for (int n = random.nextInt(10); n >= 0; n--) text.append(marks.charAt(random.nextInt(marks.length())));
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            try {
                Quantity.read(text.toString(), kind);
            } catch (Refused refused) {
                assertTrue(!refused.getMessage().isEmpty());
            } catch (RuntimeException escaped) {
                throw new AssertionError("'" + text + "' as " + kind + ", seed " + seed, escaped);
            }
        }
    }
}
