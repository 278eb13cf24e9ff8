package sillwright.walk;

import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// Something seen, or looked for and not seen, at a place.
///
/// @param sign   what, from the closed list
/// @param seen   false where it was looked for and is not there
/// @param side   where
/// @param member on which member, if on one
/// @param left   from the side's left end, mm
/// @param above  above grade, mm
/// @param words  anything more, in free words
public record Sighting(Sign sign, boolean seen, String side, Optional<String> member, Optional<Quantity> left, Optional<Quantity> above,
                       String words) implements Body {
    public Sighting {
        if (side.isEmpty()) throw new Refused("side", "is empty", "name the side it was seen on");
        Measured.notNegative("left", left);
        Measured.notNegative("above", above);
    }
}
