package sillwright.wood.drying;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.walk.Member;
import sillwright.walk.Species;
import sillwright.wood.weather.Normals;
import sillwright.wood.weather.Weather;
import sillwright.wood.weather.WeatherMaker;

import static org.junit.jupiter.api.Assertions.assertTrue;

/// Boards an inch thick, green from the saw, in the yard: what the model says against what was seen.
///
/// Seen: sugar maple in packages in Upper Michigan, to 20 % in 40 to 205 days by the month of stacking (E. C. Peck, Forest Products Laboratory Report 2086, summary; read). Eastern white pine in hand-stacked piles 6 to
/// 16 ft wide where it grows, to 20 % in 60 days in good drying weather and 200 for what is piled in autumn (Forest Products Laboratory Technical Note 233, its text read, the row as quoted from Hoadley, Understanding
/// Wood, table 8.2). The weather is that of Upper Michigan from memory; green wood at 68 % (maple) and 90 % (pine), from memory.
@DisplayNameGeneration(ReplaceUnderscores.class)
class AirDryingTest {
    private static Air air() {
        double[] high = {-4, -2, 3, 10, 17, 22, 25, 24, 19, 12, 5, -1}, humidity = {0.78, 0.75, 0.72, 0.67, 0.66, 0.69, 0.71, 0.74, 0.76, 0.75, 0.79, 0.80};
        List<Normals.Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) months.add(new Normals.Month(high[m], high[m] - 9, 70, 11, humidity[m], 4));
        Weather weather = WeatherMaker.years(new Normals(months), 4, new Random(3));
        Air air = new Air(weather.hours());
        for (int h = 0; h < weather.hours(); h++) air.set(h, weather.tempC[h], weather.humidity[h], 0);
        return air;
    }

    /// Days to a mean of 20 %, for a stack laid on the first of each month, under a roof.
    private static List<Double> days(String species, double green, boolean wind) {
        Timber timber = Timber.of(Species.all().get(species), Timber.Grain.ACROSS);
        Skin skin = wind ? Skin.outside(Member.Coat.NONE, timber) : Skin.under(Member.Coat.NONE, timber);
        Air air = air();
        List<Double> days = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            Stack stack = new Stack(16, 1, 3600);
            stack.lay(0, timber, 0.0254, skin, skin, 1.3, green);
            int from = 8760 + month * 730, hour = from;
            while (stack.mean(0) > 0.20) Transport.PLAIN.hours(stack, air, hour, ++hour);
            days.add((hour - from) / 24.0);
        }
        return days;
    }

    private static void within(double seen, double computed, double factor, String what) {
        assertTrue(computed > seen / factor && computed < seen * factor, what + ": " + computed + " days computed, " + seen + " seen");
    }

    /// The model's own caution: real pieces take half to twice as long. Computed are 38 to 143 days, 80 in the mean.
    @Test
    void maple_in_packages_dries_in_half_to_twice_the_time_that_was_seen() {
        List<Double> still = days("maple-sugar", 0.68, false);
        within(40, Collections.min(still), 2, "stacked at the best time");
        within(205, Collections.max(still), 2, "stacked at the worst time");
        within(90, still.stream().mapToDouble(day -> day).average().orElseThrow(), 2, "in the mean");
    }

    /// It does not hold for pine: 23 to 112 days computed where 60 to 200 were seen. A lone board dries sooner than wide piles did, whose inside is damper than the yard; how much of it is that, the sources do not tell.
    @Test
    void pine_alone_dries_sooner_than_in_wide_piles_and_by_the_same_seasons() {
        List<Double> still = days("pine-eastern-white", 0.90, false), wind = days("pine-eastern-white", 0.90, true);
        double best = Collections.min(still), worst = Collections.max(still);
        assertTrue(best < 60 && worst < 200 && best > 60 / 3.0 && worst > 200 / 2.0, best + " to " + worst + " days computed, 60 to 200 seen");
        within(200 / 60.0, worst / best, 2, "worst over best time of stacking");
        for (int m = 0; m < 12; m++) assertTrue(wind.get(m) < still.get(m), "moving air dries sooner, month " + m);
    }

    @Test
    void maple_takes_longer_than_pine_whenever_it_is_stacked() {
        List<Double> maple = days("maple-sugar", 0.68, false), pine = days("pine-eastern-white", 0.90, false);
        for (int m = 0; m < 12; m++) assertTrue(maple.get(m) > pine.get(m), m + ": " + maple.get(m) + " and " + pine.get(m));
    }
}
