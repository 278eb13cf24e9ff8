package sillwright.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.walk.WorkDone;

/// Did a remedy do its work?
///
/// @param id      `V1`, in the order the works were done
/// @param work    what was done
/// @param state   what may be said
/// @param failing probability, all readings weighed, that the water still comes
/// @param asOf    the last reading it rests on; the day of the work where there is none
/// @param told    when it will be told, by the coming rounds; empty where it is told, or cannot be
/// @param places  each place that it should have dried
/// @param likelier the source that is likelier now, by its id and words; empty where the remedy holds
/// @param words   one or two sentences
public record Verdict(String id, WorkDone work, State state, double failing, LocalDate asOf, Optional<LocalDate> told, List<Place> places, Optional<String> likelier, String words,
                      List<Basis> basis) {
    public Verdict {
        places = List.copyOf(places);
        basis = List.copyOf(basis);
    }

    /// DRY and DRYING: as predicted. NOT_DRYING: the source was another, or was not stopped. WET_AGAIN: it held, and holds no more. TOO_EARLY: see `told`.
    /// NO_PLACE: nothing that was wet before is metered.
    public enum State { DRY, DRYING, NOT_DRYING, WET_AGAIN, TOO_EARLY, NO_PLACE }

    /// @param member   id
    /// @param words    as one points at it
    /// @param before   moisture before the work, a fraction; NaN where it was not read
    /// @param last     the last reading; NaN where none was taken since
    /// @param predicted what the last should have been with the water stopped, from the slowest to the quickest drying
    /// @param failing  probability that water still comes here
    public record Place(String member, String words, double before, double last, double predictedLow, double predictedHigh, double failing) {}
}
