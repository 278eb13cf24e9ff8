package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.*;

/// The figures of water at the edges of their ranges.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FigureEdgesTest {
    private static Answer answer(String figure, String typed) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String one : typed.split(" ")) values.put(one.substring(0, one.indexOf('=')), one.substring(one.indexOf('=') + 1));
        return Figures.named(figure).answer(values);
    }

    /// International Plumbing Code 2018, appendix B, hundred-year hourly rates (read): from 0.6 to 4.8 in/h over all that were collected. The gutter table is for 1 in/h, and what a gutter
    /// serves goes by one over the rain.
    @ParameterizedTest
    @CsvSource({"0.6", "1.6", "2.2", "3.3", "4.8"})
    void every_row_of_the_code_table_holds_in_any_rain_of_the_code(double rain) throws IOException {
        int rows = 0;
        try (InputStream in = FigureEdgesTest.class.getResourceAsStream("/checks/water/gutter-code-table.csv")) {
            for (Csv.Row row : Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)).rows()) {
                if (!row.get("result").equals("ratio")) continue;
                double area = Double.parseDouble(row.get("inputs").replaceAll(".*roofArea=([0-9.]+)ft2.*", "$1"));
                String typed = row.get("inputs").replaceAll("roofArea=[0-9.]+ft2 rain=1in/h", "roofArea=" + area / rain + "ft2 rain=" + rain + "in/h");
                assertEquals(1, answer("gutter", typed).own("ratio"), row.number("tolerance") + 1e-9, typed);
                rows++;
            }
        }
        assertEquals(28, rows);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"gutter|shape=half-round size=1in slope=0in/ft roofArea=1ft2 rain=0.01in/h", "gutter|shape=rectangular size=24in depth=24in slope=3in/ft roofArea=100000ft2 rain=20in/h pitch=24/12 length=200ft",
        "gutter|shape=half-round size=25.4mm slope=0mm/m roofArea=0.1m2 rain=0.3mm/h", "splash|clearance=0in ground=soil", "splash|clearance=10ft ground=gravel overhang=20ft eave=100ft", "splash|clearance=0mm ground=mulch eave=0.31m",
        "driving-rain|rain=0mm/h wind=0m/s angle=0deg", "driving-rain|rain=300mm/h wind=50m/s angle=180deg height=100m", "driving-rain|rain=0in/h wind=100mph angle=90deg",
        "cold-wall|outdoors=-40C indoors=0C outdoorsRh=5%", "cold-wall|outdoors=86F indoors=95F rh=100% cavity=filled"})
    void at_its_very_bounds_a_figure_gives_numbers(String figure, String typed) {
        answer(figure, typed).results().forEach((name, result) -> {
            if (result instanceof Answer.Measured measured) assertTrue(Double.isFinite(measured.own()), name);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"gutter|shape=half-round size=0.9in slope=0in/ft roofArea=1ft2 rain=1in/h|size", "gutter|shape=half-round size=5in slope=0in/ft roofArea=1ft2 rain=21in/h|rain",
        "splash|clearance=11ft ground=soil|clearance", "driving-rain|rain=301mm/h wind=1m/s angle=0deg|rain", "driving-rain|rain=1mm/h wind=1m/s angle=181deg|angle", "cold-wall|outdoors=-41C|outdoors"})
    void a_hair_beyond_them_it_is_refused_by_name(String figure, String typed, String key) {
        String said = assertThrows(Refused.class, () -> answer(figure, typed)).getMessage();
        assertTrue(said.contains(key) && said.contains("range"), said);
    }

    @Test
    void more_rain_never_overflows_a_gutter_later_nor_splashes_a_higher_wall_more() {
        double last = Double.MAX_VALUE;
        for (double rain : new double[] {0.1, 0.3, 1, 2, 4, 8}) {
            double minutes = answer("gutter", "shape=half-round size=5in slope=0in/ft roofArea=450ft2 rain=" + rain + "in/h length=30ft").own("cloggedMinutes");
            assertTrue(minutes < last);
            last = minutes;
        }
        last = 1;
        for (int clearance = 0; clearance <= 24; clearance += 3) {
            double share = answer("splash", "clearance=" + clearance + "in ground=paving").own("share");
            assertTrue(share <= last);
            last = share;
        }
    }
}
