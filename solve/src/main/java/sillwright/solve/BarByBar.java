package sillwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/// One bar after another, each filled with what is worth most; pieces that ended in bars with much left over are worth more the next time.
///
/// Source: sequential value correction, after Mukhacheva and after Belov and Scheithauer (2007) (from memory).
final class BarByBar {
    private final Demand demand;
    private final Effort effort;
    private final double[] worth;
    private final int[] left;
    private final Pricing pricing;
    private final SplittableRandom random = new SplittableRandom(1);

    /// @param prices to begin with, thousandths
    BarByBar(Demand demand, double[] prices, Effort effort) {
        this.demand = demand;
        this.effort = effort;
        this.left = demand.wanted().clone();
        this.pricing = new Pricing(demand, left, effort);
        this.worth = new double[prices.length];
        double best = Double.POSITIVE_INFINITY;
        for (int s = 0; s < demand.sold(); s++) best = Math.min(best, demand.cost()[s] / (double) demand.room()[s]);
        for (int i = 0; i < worth.length; i++) worth[i] = Math.max(prices[i], best * demand.size()[i] * 0.9);
    }

    /// One layout from the first bar to the last.
    List<Filling> lay() {
        System.arraycopy(demand.wanted(), 0, left, 0, left.length);
        int[] bars = demand.count().clone();
        double[] weight = new double[worth.length];
        double power = 1 + 0.05 * random.nextDouble();
        for (int i = 0; i < weight.length; i++) weight[i] = Math.pow(worth[i], power);
        List<Filling> all = new ArrayList<>();
        for (long rest = demand.filled(left); rest > 0 && !effort.spent(); rest = demand.filled(left)) {
            Filling next = next(weight, bars, rest);
            double filled = 0;
            for (int k = 0; k < next.sort().length; k++) filled += (double) demand.size()[next.sort()[k]] * next.count()[k];
            double dear = demand.cost()[next.bar()] / filled;
            for (int k = 0; k < next.sort().length; k++) {
                int i = next.sort()[k];
                double share = 0.5 * next.count()[k] / demand.wanted()[i];
                worth[i] = (1 - share) * worth[i] + share * dear * demand.size()[i];
                left[i] -= next.count()[k];
            }
            if (next.bar() >= demand.sold()) bars[next.bar()]--;
            all.add(next);
        }
        return demand.filled(left) == 0 ? all : List.of();
    }

    private Filling next(double[] weight, int[] bars, long rest) {
        int last = demand.carries(rest);
        Pricing.Best[] filled = pricing.fill(weight);
        int best = -1;
        double most = -1;
        for (int s = 0; s < filled.length; s++) {
            if (s >= demand.sold() && bars[s] == 0 || demand.filled(filled[s].best()) == 0) continue;
            double value = filled[s].value() / Math.max(1, demand.cost()[s]);
            if (value > most) {
                most = value;
                best = s;
            }
        }
        if (last >= 0 && (best < 0 || demand.cost()[last] <= demand.cost()[best] || last < demand.sold() - 1)) return Filling.of(left.clone(), last);
        return Filling.of(filled[best].best(), best < demand.sold() ? demand.carries(demand.filled(filled[best].best())) : best);
    }
}
