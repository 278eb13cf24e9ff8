package sillwright.wood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

import sillwright.wood.drying.Dose;

/// How decay would go on, year by year.
///
/// The interval holds the spread of generated years only. That the model is right for this piece is not in it: small specimens of other
/// wood in the open stand behind it, and a fungus may be early, late or absent. Use it to compare a member with another, or with itself once the water
/// is stopped; a probe next year is worth more than any of it.
///
/// @param ratings     mean rating, now first, then at the end of each year
/// @param daysAYear   dose of a year, days, before the wood's resistance
/// @param yearsToNext until the next whole rating, or until [#AS_GOOD_AS_FAILED]; empty where half of the runs do not reach it in [#LONGEST_YEARS]; a bound that is not reached is that long
public record Forecast(List<Interval> ratings, Interval daysAYear, Optional<Interval> yearsToNext) {
    public static final int CURVE_YEARS = 30, LONGEST_YEARS = 60;
    /// The curve of the mean rating nears 4 and never comes to it; from here three of four pieces would be through: this program's own choice.
    public static final double AS_GOOD_AS_FAILED = 3.75;
    private static final int RUNS = 200;
    private static final List<String> GRADES = List.of("sound", "slight decay", "moderate decay", "severe decay", "as good as failed");

    public Forecast { ratings = List.copyOf(ratings); }

    /// The rating that [#yearsToNext] counts to.
    public static int next(double rating) { return (int) Math.floor(rating + 1e-9) + 1; }

    /// What a rating is called: `moderate decay`.
    ///
    /// @param rating 0 to 4
    public static String grade(int rating) { return GRADES.get(rating); }

    /// By years drawn again and again from those that were worked.
    ///
    /// @param first      doses that the first year may have; empty where it is a year like the others
    /// @param others     doses of the years
    /// @param resistance how much more dose this wood stands than the reference
    static Forecast of(double rating, double[] first, double[] others, double resistance, RandomGenerator random) {
        double from = Dose.days(rating), goal = Math.min(next(rating), AS_GOOD_AS_FAILED);
        double[][] at = new double[CURVE_YEARS + 1][RUNS];
        double[] reached = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            double days = from, before = rating;
            at[0][run] = rating;
            reached[run] = LONGEST_YEARS;
            boolean there = false;
            for (int year = 1; year <= LONGEST_YEARS; year++) {
                double[] pool = year == 1 && first.length > 0 ? first : others;
                days += pool[random.nextInt(pool.length)] / resistance;
                double now = Math.max(rating, Dose.rating(days));
                if (year <= CURVE_YEARS) at[year][run] = now;
                if (!there && now >= goal) {
                    reached[run] = before >= goal ? year - 1 : year - 1 + (goal - before) / (now - before);
                    there = true;
                }
                before = now;
            }
            if (!there) reached[run] = LONGEST_YEARS;
        }
        List<Interval> ratings = new ArrayList<>();
        for (double[] one : at) ratings.add(spread(one));
        Interval years = spread(reached);
        return new Forecast(ratings, spread(others.clone()), years.median() < LONGEST_YEARS ? Optional.of(years) : Optional.empty());
    }

    /// The middle, and what nine in ten lie between.
    static Interval spread(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Interval(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95));
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        return below + 1 < sorted.length ? sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]) : sorted[below];
    }
}
