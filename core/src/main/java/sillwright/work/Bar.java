package sillwright.work;

import java.util.function.Supplier;

/// A limit that a treatment must clear, and the number held against it.
///
/// @param atMost true where the number may be the limit and no more, false where it must be the limit at least
/// @param words  what is said where it does not clear it, with the number in it
record Bar(Rule rule, Gauge gauge, double value, boolean atMost, double limit, Supplier<String> words) {
    boolean clears() { return clears(value); }

    boolean clears(double other) { return atMost ? other <= limit + 1e-9 : other >= limit - 1e-9; }

    /// A thing that is so or not, and must not be.
    static Bar not(Rule rule, Gauge gauge, boolean so, Supplier<String> words) { return new Bar(rule, gauge, so ? 1 : 0, true, 0, words); }
}
