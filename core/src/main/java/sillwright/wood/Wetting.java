package sillwright.wood;

import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.walk.Member;

/// One member and its water, now and once the sources that can be stopped are stopped.
///
/// @param measured the wettest corrected meter reading, a fraction; empty where none was taken
/// @param rating   how far decay has gone, 0 sound, 1 slight, 2 moderate, 3 severe, less than 4, failed
public record Wetting(Member member, Exposure now, Exposure stopped, Optional<Double> measured, double rating) {
    public Wetting {
        if (!(rating >= 0 && rating < 4)) throw new Refused(member.id(), "{} is no rating of decay that has a next one", "write 0 sound to less than 4 failed", rating);
        measured.ifPresent(u -> { if (!(u >= 0 && u <= 3)) throw new Refused(member.id(), "{} is no moisture of wood", "write a fraction, such as 0.18", u); });
    }
}
