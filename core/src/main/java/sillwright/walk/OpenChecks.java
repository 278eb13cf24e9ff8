package sillwright.walk;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// A group of open drying checks on one face, as a rule and a feeler gauge take them.
///
/// @param spot   where the group starts: its end nearest the member's start, and its lower edge across the face
/// @param count  how many checks lie side by side in the group, 1 to 1000
/// @param length of one of them along the grain, the longest, mm
/// @param width  of the widest at the face, mm
/// @param depth  of the deepest, by a thin feeler, mm
public record OpenChecks(Spot spot, int count, Quantity length, Quantity width, Quantity depth) implements Body {
    public OpenChecks {
        if (count < 1 || count > 1000) throw new Refused("count", "{} is not a number of checks", "count those that a thumbnail finds: 6", count);
        Measured.positive("length", length);
        Measured.positive("width", width);
        Measured.positive("depth", depth);
    }

    public double lengthMm() { return length.own(); }

    public double widthMm() { return width.own(); }

    public double depthMm() { return depth.own(); }

    /// Where the group ends, from the member's start.
    public double toMm() { return spot.alongMm() + lengthMm(); }
}
