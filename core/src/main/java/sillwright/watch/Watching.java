package sillwright.watch;

import java.util.List;

import sillwright.measure.Refused;
import sillwright.wood.weather.Since;

/// What the watch is told besides the survey.
///
/// @param waits years that the work may be put off, each a course of the look ahead
/// @param since the weather as it was between the walks, where it is known
public record Watching(List<Integer> waits, Since since) {
    /// The work put off by two years, and by five.
    public static final Watching USUAL = new Watching(List.of(2, 5), Since.NOTHING);
    private static final int MOST_WAITS = 4;

    public Watching {
        waits = List.copyOf(waits);
        if (waits.size() > MOST_WAITS) throw new Refused("postpone", "{} courses are more than a drawing holds", "name at most " + MOST_WAITS + ", such as 2,5", waits.size());
        for (int wait : waits) if (wait < 1 || wait > LookAhead.YEARS - 1) throw new Refused("postpone", "{} years cannot be looked at", "write 1 to " + (LookAhead.YEARS - 1) + " years, such as 3", wait);
    }
}
