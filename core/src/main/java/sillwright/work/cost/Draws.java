package sillwright.work.cost;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

import sillwright.measure.SplitMix;

/// Sums of quantities times prices, by draws and in closed form.
///
/// A price that several lines share is drawn once for all of them. Amounts, hours and prices know nothing of each other. The closed form: for
/// each price P and the sum Q of what is paid by it, E = E[P]E[Q] and Var = (Var P + E[P]²)(Var Q + E[Q]²) - E[P]²E[Q]²; whole packs go by the chance that each next pack is opened.
/// What drives it: the variance of the mean given that one thing alone (the first-order index of Sobol').
/// Source: textbook moments of products; Sobol' (1993) (both from memory).
final class Draws {
    static final int COUNT = 4000;

    private final List<Bought> bought = new ArrayList<>();

    /// All lines that are paid by one price.
    private record Bought(Price price, List<Line> lines) {}

    private Draws(List<Line> lines, List<Price> prices) {
        Map<Price, Bought> byPrice = new IdentityHashMap<>();
        for (int i = 0; i < lines.size(); i++)
            byPrice.computeIfAbsent(prices.get(i), price -> {
                bought.add(new Bought(price, new ArrayList<>()));
                return bought.getLast();
            }).lines.add(lines.get(i));
    }

    /// @param prices of each line, one object where it is one price
    static Range of(List<Line> lines, List<Price> prices, long seed) {
        if (lines.isEmpty()) return Range.NOTHING;
        return new Draws(lines, prices).work(new SplitMix(seed));
    }

    private Range work(RandomGenerator random) {
        double[] drawn = new double[COUNT];
        for (int d = 0; d < COUNT; d++)
            for (Bought one : bought) {
                double units = 0;
                for (Line line : one.lines) units += line.units(line.amount().draw(random) * line.each().draw(random));
                drawn[d] += one.price.money().draw(random) * units;
            }
        double mean = Arrays.stream(drawn).sum() / COUNT;
        Arrays.sort(drawn);
        double exact = 0, variance = 0;
        List<Range.Driver> drivers = new ArrayList<>();
        for (Bought one : bought) {
            double units = 0, unitsVariance = 0;
            for (Line line : one.lines) {
                units += line.meanUnits();
                unitsVariance += line.varianceUnits();
            }
            Spread money = one.price.money();
            exact += money.mean() * units;
            variance += Line.product(money.mean(), money.variance(), units, unitsVariance);
            drivers.add(new Range.Driver("the price of " + one.price.item(), money.variance() * units * units));
            for (Line line : one.lines) drivers(line, money.mean(), drivers);
        }
        double whole = variance;
        List<Range.Driver> shares = drivers.stream().map(driver -> new Range.Driver(driver.words(), whole > 0 ? driver.share() / whole : 0)).filter(driver -> driver.share() > 1e-6)
                .sorted(Comparator.comparingDouble(Range.Driver::share).reversed()).toList();
        return new Range(drawn[COUNT / 10], drawn[COUNT / 2], drawn[COUNT - COUNT / 10], mean, exact, Math.sqrt(variance), COUNT, shares);
    }

    private static void drivers(Line line, double price, List<Range.Driver> drivers) {
        Spread amount = line.amount(), each = line.each();
        if (line.planned() > 0) drivers.add(new Range.Driver("how much " + line.words(), line.varianceUnits() * price * price));
        else {
            drivers.add(new Range.Driver("how much of this: " + line.words(), amount.variance() * each.mean() * each.mean() * price * price));
            drivers.add(new Range.Driver((line.toil() ? "how long it takes to " : "what one of this costs: ") + line.words(), each.variance() * amount.mean() * amount.mean() * price * price));
        }
    }
}
