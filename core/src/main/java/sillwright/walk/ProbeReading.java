package sillwright.walk;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// One push of a probe: how deep it went before sound wood stopped it.
///
/// @param spot   the member, the face, and the point on it
/// @param depth  how far the probe went in, mm; 0 where the skin is sound
/// @param reach  the deepest this probe can tell, mm
/// @param ranOut true where it went to its limit: the wood may be soft further in, so the reading says "at least"
public record ProbeReading(Spot spot, Quantity depth, Quantity reach, boolean ranOut) implements Body {
    public ProbeReading {
        Measured.positive("reach", reach);
        Measured.notNegative("depth", depth);
        if (!(depth.own() <= reach.own() + 1e-6))
            throw new Refused("depth", "{} is not within the probe's reach of {}", "read the depth again, or name the longer probe: reach=150mm", depth, reach);
    }

    public double depthMm() { return depth.own(); }
}
