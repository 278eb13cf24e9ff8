package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.walk.*;
import sillwright.wood.Retrace;
import sillwright.wood.weather.HourlyFile;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Since;
import sillwright.wood.weather.Weather;
import sillwright.work.Months;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PastTest {
    private static final Building HOUSE = new Building("invented", "Invented house", "invented for a test", 1890, Optional.empty(), Optional.empty(), Months.chicago());

    private static Quantity q(String text, Kind kind) { return Quantity.read(text, kind); }

    private static Member board(String id, MemberKind kind, double thickMm, Member.Coat coat) {
        return new Member(id, "north", kind, "board " + id, Member.Role.SHEDS_WATER, "pine-eastern-white", Member.Run.UPRIGHT, q("120 mm", Kind.LENGTH), q(thickMm + " mm", Kind.LENGTH),
                q("2400 mm", Kind.LENGTH), q("200 mm", Kind.LENGTH), q("400 mm", Kind.LENGTH), Optional.empty(), Member.EndGrain.COVERED, Member.EndGrain.COVERED, coat, Member.Contact.NONE);
    }

    private static HourlyFile steady(double tempC, double humidity) {
        Weather weather = new Weather(Weather.HOURS_A_YEAR);
        Arrays.fill(weather.tempC, tempC);
        Arrays.fill(weather.humidity, humidity);
        return new HourlyFile("nowhere", weather, Weather.HOURS_A_YEAR, 0);
    }

    /// Wood Handbook, FPL-GTR-282, table 4-2, row 70 °F (from memory): moisture at rest by relative humidity. Two years of steady air without rain bring a painted board there.
    @ParameterizedTest(name = "{0} % humidity, {1} % moisture")
    @CsvSource({"30, 6.2", "50, 9.2", "65, 12.0", "80, 16.0"})
    void in_steady_air_the_retraced_board_comes_to_rest_where_the_handbook_says(double humidityPercent, double moisturePercent) {
        HourlyFile air = steady(21.1, humidityPercent / 100);
        Retrace trace = Retrace.of(List.of(board("a", MemberKind.CASING, 25, Member.Coat.NONE)), new Since(Map.of(), Map.of(2023, air, 2024, air, 2025, air)), Normals.of(Months.chicago()), LocalDate.of(2024, 1, 1),
                LocalDate.of(2025, 12, 31), 1, sillwright.wood.drying.Transport.PLAIN);
        assertEquals(moisturePercent, 100 * trace.at("a", LocalDate.of(2025, 12, 31)), 0.1);
    }

    /// Months as the place has them, but for a year of which the air was a tenth damper.
    private static Since damp(int year) {
        Map<YearMonth, Normals.Month> months = new TreeMap<>();
        List<Normals.Month> usual = Normals.of(Months.chicago()).months();
        for (int m = 0; m < 12; m++) {
            Normals.Month n = usual.get(m);
            months.put(YearMonth.of(year, m + 1), new Normals.Month(n.highC(), n.lowC(), n.rainMm(), n.rainDays(), n.humidity() + 0.1, n.windMs()));
        }
        return new Since(months, Map.of());
    }

    private static Survey survey(Map<String, Member> members, List<Survey.Noted<MoistureReading>> readings) {
        Side side = new Side("north", "north", q("0deg", Kind.ANGLE), q("12 m", Kind.LENGTH), List.of(), new Side.Ground(Side.Surface.GRASS, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
        return new Survey(Optional.of(HOUSE), Map.of("north", side), members, List.of(), readings, List.of(), List.of(), List.of(), 0);
    }

    private static long ms(LocalDate day) { return day.toEpochDay() * 86_400_000L; }

    private static Survey.Noted<MoistureReading> reading(String member, LocalDate day, double moisture) {
        return new Survey.Noted<>(member + day, ms(day), new MoistureReading(new Spot(member, Member.Face.FRONT, q("150 mm", Kind.LENGTH), q("60 mm", Kind.LENGTH)), q(100 * moisture + "%", Kind.PERCENT), Optional.empty(),
                Optional.empty()));
    }

    @Test
    void a_damp_year_is_told_from_wood_that_grows_wetter_once_the_weather_is_known() {
        Map<String, Member> members = Map.of("a", board("a", MemberKind.CASING, 22, Member.Coat.NONE), "b", board("b", MemberKind.FRIEZE, 40, Member.Coat.SOUND));
        List<LocalDate> walks = new ArrayList<>();
        for (int year = 2022; year <= 2025; year++) walks.addAll(List.of(LocalDate.of(year, 4, 15), LocalDate.of(year, 11, 5)));
        Retrace truth = Retrace.of(List.copyOf(members.values()), damp(2024), Normals.of(Months.chicago()), walks.getFirst(), walks.getLast(), 99, sillwright.wood.drying.Transport.PLAIN);
        List<Survey.Noted<MoistureReading>> readings = new ArrayList<>();
        for (LocalDate walk : walks) for (String id : members.keySet()) readings.add(reading(id, walk, truth.at(id, walk)));
        Survey survey = survey(members, readings);
        Past told = Past.of(survey, damp(2024), 1), normals = Past.of(survey);
        double offTold = 0, offNormals = 0;
        int count = 0;
        for (LocalDate walk : walks) for (Member member : members.values()) {
            double was = truth.at(member.id(), walk);
            if (walk.getYear() != 2024) {
                assertFalse(told.tells(walk));
                assertEquals(normals.rest(member, walk), told.rest(member, walk), 0, "months not told have the normals");
                continue;
            }
            assertTrue(told.tells(walk));
            offTold += Math.pow(was - told.rest(member, walk), 2);
            offNormals += Math.pow(was - normals.rest(member, walk), 2);
            count++;
        }
        double byTold = Math.sqrt(offTold / count), byNormals = Math.sqrt(offNormals / count);
        System.out.printf("off by %.4f with the weather told, by %.4f with the normals%n", byTold, byNormals);
        assertTrue(byTold < 0.02 && byTold < 0.35 * byNormals, "told " + byTold + ", by the normals " + byNormals);
    }

    @Test
    void the_same_seed_gives_the_same_past_and_a_member_not_metered_is_not_worked() {
        Map<String, Member> members = Map.of("a", board("a", MemberKind.CASING, 22, Member.Coat.NONE));
        Survey survey = survey(members, List.of(reading("a", LocalDate.of(2024, 5, 1), 0.14)));
        double one = Past.of(survey, damp(2024), 5).rest(members.get("a"), LocalDate.of(2024, 5, 1));
        assertEquals(one, Past.of(survey, damp(2024), 5).rest(members.get("a"), LocalDate.of(2024, 5, 1)), 0);
        assertThrows(IllegalArgumentException.class, () -> Past.of(survey, damp(2024), 5).rest(board("z", MemberKind.CASING, 22, Member.Coat.NONE), LocalDate.of(2024, 5, 1)));
    }

    private static final String HEAD = "month,high,low,humidity,rain,rain_days\n";

    @Test
    void months_are_read_in_either_units() {
        Since us = Since.read("months.csv", HEAD + "2026-05,71F,49F,64%,3.2in,9\n"), si = Since.read("months.csv", HEAD + "2026-05,21.666666667C,9.444444444C,64%,81.28mm,9\n");
        Normals.Month a = us.months().get(YearMonth.of(2026, 5)), b = si.months().get(YearMonth.of(2026, 5));
        assertEquals(a.highC(), b.highC(), 1e-6);
        assertEquals(a.rainMm(), b.rainMm(), 1e-9);
        assertTrue(us.tells(LocalDate.of(2026, 5, 31)) && !us.tells(LocalDate.of(2026, 6, 1)));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"2026-13,71F,49F,64%,3.2in,9|is no month", "2026-05,49F,71F,64%,3.2in,9|is above the mean high", "2026-05,71F,49F,640%,3.2in,9|is no mean humidity",
        "2026-05,71F,49F,64%,0in,9|does not go with", "2026-05,71F,49F,64%,3.2in,40|is no number of days", "2026-05,71F,49F,64%,3.2 oz,9|rain"})
    void a_bad_month_is_refused_with_its_line(String row, String said) {
        String message = assertThrows(Refused.class, () -> Since.read("months.csv", HEAD + row + "\n")).getMessage();
        assertTrue(message.contains("months.csv") && message.contains("line 2") && message.contains(said), message);
    }

    @Test
    void a_typical_year_is_no_weather_since() {
        StringBuilder epw = new StringBuilder("LOCATION,Nowhere,-,-,-,-,0,0,0,0\n");
        for (int line = 0; line < 7; line++) epw.append("HEADER\n");
        epw.append("1999,1,1,1,0,x\n2004,1,1,2,0,x\n");
        String message = assertThrows(Refused.class, () -> Since.read("typical.epw", epw.toString())).getMessage();
        assertTrue(message.contains("typical year"), message);
    }
}
