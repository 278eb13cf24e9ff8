package sillwright.work;

import java.util.List;

import sillwright.walk.Decision;

/// What somebody settled about the treatment of one damage, and how it bears out.
///
/// @param recommended what was recommended
/// @param words       one line, with the reason: `chosen by the owner in place of scarf splice 1:8, because ...`
/// @param cautions    the numbers that refuse what was chosen, or that it could not be taken
public record Ruling(Decision decision, Treatment recommended, String words, List<String> cautions) {
    public Ruling { cautions = List.copyOf(cautions); }

    /// Whether something else is done than was recommended.
    public boolean changes(Treatment done) { return !recommended.equals(done); }
}
