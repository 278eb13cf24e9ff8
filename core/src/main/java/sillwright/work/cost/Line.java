package sillwright.work.cost;

import java.util.List;
import java.util.Optional;

/// One line of a bill: so many of what one price buys.
///
/// @param words    what
/// @param toil     whether it is somebody's hours
/// @param amount   that is wanted, in units of what the price buys; for hours, units of the task
/// @param each     units of the price for one of a task, its hours where it has no price; one for what is bought
/// @param planned  packs bought at the least; 0 where the amount is not rounded to packs
/// @param price    empty where the book has none
/// @param refs     ids of what it is for
public record Line(String words, boolean toil, Spread amount, Spread each, int planned, Optional<Price> price, List<String> refs) {
    public Line { refs = List.copyOf(refs); }

    /// What it comes to at the likeliest of everything; empty where it has no price.
    public Optional<Double> likely() { return price.map(one -> one.money().mid() * units(amount.mid() * each.mid())); }

    /// Hours at the likeliest; 0 for what is bought.
    public double hours() { return toil ? amount.mid() * each.mid() * paidHours() : 0; }

    /// Hours that one unit of the price pays.
    double paidHours() { return price.map(one -> one.sold().amount()).orElse(1.0); }

    /// So much in units that are paid: whole packs, those planned at least.
    double units(double wanted) { return planned == 0 ? wanted : Math.max(planned, Math.ceil(wanted - 1e-9)); }

    double meanUnits() {
        if (planned == 0) return amount.mean() * each.mean();
        double mean = planned;
        for (int k = planned; k < amount.high(); k++) mean += amount.over(k + 1e-9);
        return mean;
    }

    double varianceUnits() {
        if (planned == 0) return product(amount.mean(), amount.variance(), each.mean(), each.variance());
        double mean = planned, square = (double) planned * planned;
        for (int k = planned; k < amount.high(); k++) {
            double over = amount.over(k + 1e-9);
            mean += over;
            square += (2 * k + 1) * over;
        }
        return Math.max(0, square - mean * mean);
    }

    /// Variance of a product of two that know nothing of each other.
    static double product(double mean, double variance, double otherMean, double otherVariance) {
        return variance * otherVariance + variance * otherMean * otherMean + otherVariance * mean * mean;
    }
}
