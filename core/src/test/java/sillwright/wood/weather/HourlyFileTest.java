package sillwright.wood.weather;

import module java.base;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Refused;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class HourlyFileTest {
    /// An invented year, one line an hour; the edit changes fields of some of them.
    private static String year(java.util.function.BiConsumer<Integer, String[]> edit) {
        StringBuilder text = new StringBuilder("LOCATION,Mill Pond,ZZ,NOWHERE,made up,0,0,0,0,0\n");
        for (int i = 0; i < 7; i++) text.append("HEADER ").append(i).append('\n');
        for (int h = 0; h < 8760; h++) {
            String[] fields = new String[35];
            Arrays.fill(fields, "0");
            fields[1] = Integer.toString(Normals.monthOf(h / 24) + 1);
            fields[2] = Integer.toString(h / 24 - Normals.firstDay(Normals.monthOf(h / 24)) + 1);
            fields[6] = Double.toString(10 + h % 24 / 10.0);
            fields[8] = "70";
            fields[21] = "3.5";
            fields[33] = h % 100 == 0 ? "2.5" : "0";
            edit.accept(h, fields);
            text.append(String.join(",", fields)).append('\n');
        }
        return text.toString();
    }

    @Test
    void a_whole_year_is_read() {
        HourlyFile file = HourlyFile.read(year((h, fields) -> {}));
        assertEquals("Mill Pond, ZZ, NOWHERE", file.place());
        assertEquals(11.2, file.weather().tempC[36], 1e-12);
        assertEquals(0.70, file.weather().humidity[8759], 1e-12);
        assertEquals(88 * 2.5, Arrays.stream(file.weather().fallsMm).sum(), 1e-9);
        assertEquals(0, file.bridged());
        assertTrue(!file.rainIsMissing());
    }

    @Test
    void marks_of_missing_values_are_never_read_as_values() {
        HourlyFile file = HourlyFile.read(year((h, fields) -> {
            if (h >= 100 && h < 103) fields[6] = h == 101 ? "999" : "99.9";
            if (h == 200) fields[8] = "999.";
            if (h == 300) fields[21] = "999.0";
            fields[33] = "999.000";
        }));
        assertEquals(5, file.bridged());
        assertTrue(file.rainIsMissing());
        assertEquals(0, file.rainHours());
        double[] t = file.weather().tempC;
        assertTrue(t[100] >= Math.min(t[99], t[103]) && t[100] <= Math.max(t[99], t[103]), "bridged by a straight line");
        assertEquals((t[99] + t[103]) / 2, t[101], 1e-12);
        assertEquals(0, Arrays.stream(file.weather().fallsMm).sum());
    }

    @Test
    void every_bad_row_is_told_at_once() {
        String said = assertThrows(Refused.class, () -> HourlyFile.read(year((h, fields) -> {
            if (h == 3) fields[6] = "warm";
            if (h == 5000) fields[8] = "140";
        }))).getMessage();
        assertTrue(said.contains("line 12: dry bulb 'warm'") && said.contains("line 5009: relative humidity 140"), said);
        assertTrue(assertThrows(Refused.class, () -> HourlyFile.read("a,b\n1,2\n")).getMessage().contains("LOCATION"));
        String cut = year((h, fields) -> {});
        assertTrue(assertThrows(Refused.class, () -> HourlyFile.read(cut.substring(0, cut.lastIndexOf('\n', cut.length() - 2) + 1))).getMessage().contains("8759 hours where 8760"));
        assertTrue(assertThrows(Refused.class, () -> HourlyFile.read(year((h, fields) -> { if (h > 50 && h < 200) fields[6] = "99.9"; }))).getMessage().contains("missing for 149 hours"));
    }

    @Test
    void rain_is_laid_in_from_monthly_totals_the_same_each_time() {
        HourlyFile file = HourlyFile.read(year((h, fields) -> fields[33] = "999"));
        Normals normals = WeatherMakerTest.lakeside();
        Weather wet = file.withRain(normals, new Random(4)), again = file.withRain(normals, new Random(4));
        assertArrayEquals(wet.fallsMm, again.fallsMm);
        assertArrayEquals(file.weather().tempC, wet.tempC);
        for (int month = 0; month < 12; month++) {
            double mm = 0;
            int days = 0;
            for (int d = Normals.firstDay(month); d < Normals.firstDay(month) + Normals.daysIn(month); d++) {
                mm += wet.dayMm(d);
                if (wet.dayMm(d) > 0) days++;
            }
            assertEquals(normals.month(month).rainMm(), mm, 1e-9);
            assertEquals(Math.round(normals.month(month).rainDays()), days);
        }
    }

    /// The typical year of an airport, where the shared data lies beside the project; its rain is marked missing.
    @Test
    void a_real_file_is_read_and_its_missing_rain_is_seen() throws IOException {
        Path file = Stream.of("../shared/data/weather", "../../shared/data/weather").map(folder -> Path.of(folder, "chicago-tmy3.epw")).filter(Files::exists).findFirst().orElse(null);
        Assumptions.assumeTrue(file != null, "../shared/data/weather/chicago-tmy3.epw is not beside the project: nothing was read");
        HourlyFile read = HourlyFile.read(Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1));
        assertTrue(read.place().startsWith("Chicago"));
        assertEquals(719, read.rainHours());
        assertTrue(read.rainIsMissing());
        assertEquals(-12.2, read.weather().tempC[0], 1e-12);
        assertEquals(0.73, read.weather().humidity[0], 1e-12);
        assertEquals(2.6, read.weather().windMs[0], 1e-12);
        assertEquals(46, Arrays.stream(read.weather().fallsMm).sum(), 0.5);
        List<Double> rain = WeatherMakerTest.lakeside().months().stream().map(Normals.Month::rainMm).toList(), days = WeatherMakerTest.lakeside().months().stream().map(Normals.Month::rainDays).toList();
        Normals normals = read.normals(rain, days);
        assertTrue(normals.month(6).meanC() > 20 && normals.month(0).meanC() < 0, "July is warm there, January is not");
        assertEquals(normals.yearlyRainMm(), Arrays.stream(read.withRain(normals, new Random(1)).fallsMm).sum(), 1e-6);
    }
}
