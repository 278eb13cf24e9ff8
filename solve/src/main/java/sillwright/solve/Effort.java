package sillwright.solve;

/// How much work is left to a search, in elementary steps, so that no list can hang the program and the same list gives the same layout on every machine: nothing here
/// looks at a clock.
final class Effort {
    private long left;

    Effort(long steps) { left = steps; }

    void spend(long steps) { left -= steps; }

    boolean spent() { return left <= 0; }
}
