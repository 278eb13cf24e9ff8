package sillwright.solve;

/// What is sawn from one bar.
///
/// @param sort  the sorts of piece in it, ascending
/// @param count how many of each
/// @param bar   which sort of bar
record Filling(int[] sort, int[] count, int bar) {
    /// @param pieces how many of every sort
    static Filling of(int[] pieces, int bar) {
        int kinds = 0;
        for (int n : pieces) if (n > 0) kinds++;
        int[] sort = new int[kinds], count = new int[kinds];
        for (int i = 0, k = 0; i < pieces.length; i++) if (pieces[i] > 0) {
            sort[k] = i;
            count[k++] = pieces[i];
        }
        return new Filling(sort, count, bar);
    }

    /// As much of it as is still wanted, on the cheapest bar that carries that where bars are sold; empty where nothing is.
    Filling within(int[] left, Demand demand) {
        boolean whole = true;
        for (int k = 0; k < sort.length; k++) whole &= count[k] <= left[sort[k]];
        if (whole) return this;
        int[] pieces = new int[demand.sorts()];
        for (int k = 0; k < sort.length; k++) pieces[sort[k]] = Math.min(count[k], left[sort[k]]);
        return Filling.of(pieces, bar < demand.sold() ? demand.carries(demand.filled(pieces)) : bar);
    }

    boolean isEmpty() { return sort.length == 0; }

    @Override
    public boolean equals(Object other) {
        return other instanceof Filling(var sorts, var counts, var bars) && bar == bars && java.util.Arrays.equals(sort, sorts) && java.util.Arrays.equals(count, counts);
    }

    @Override
    public int hashCode() { return 31 * (31 * java.util.Arrays.hashCode(sort) + java.util.Arrays.hashCode(count)) + bar; }
}
