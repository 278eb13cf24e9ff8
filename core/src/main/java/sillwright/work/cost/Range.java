package sillwright.work.cost;

import java.util.List;

/// What something comes to, and how sure that is.
///
/// @param low     one in ten draws is under it
/// @param middle  half of the draws are under it
/// @param high    one in ten draws is over it
/// @param mean    of the draws
/// @param exact   the mean in closed form, which the draws must meet
/// @param spread  the standard deviation in closed form
/// @param draws   how many
/// @param drivers what the variance is due to, the greatest first
public record Range(double low, double middle, double high, double mean, double exact, double spread, int draws, List<Driver> drivers) {
    public static final Range NOTHING = new Range(0, 0, 0, 0, 0, 0, 0, List.of());

    public Range { drivers = List.copyOf(drivers); }

    /// @param words `price of paint`, `hours to scarf`
    /// @param share of the variance that would go if this alone were known, a fraction
    public record Driver(String words, double share) {}
}
