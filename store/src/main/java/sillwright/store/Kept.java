package sillwright.store;

import java.util.List;

/// What became of entries that were handed to a book. All of them are in it now, and durable.
///
/// @param fresh    how many were new
/// @param repeated how many were there already, word for word
/// @param clashing ids of new entries that share their id with an entry that says something else: both are kept, and the
///                 fold names them
public record Kept(int fresh, int repeated, List<String> clashing) {
    public Kept { clashing = List.copyOf(clashing); }

    static final Kept NOTHING = new Kept(0, 0, List.of());

    Kept and(Kept other) {
        List<String> both = new java.util.ArrayList<>(clashing);
        both.addAll(other.clashing);
        return new Kept(fresh + other.fresh, repeated + other.repeated, both);
    }
}
