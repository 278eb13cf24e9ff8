package sillwright.wood;

import java.util.Set;

import sillwright.measure.Refused;
import sillwright.walk.Member;

/// What water comes to a member when it rains.
///
/// @param faces         the long faces it comes to
/// @param rainShare     water on a square metre of such a face over rain on a square metre of level ground: 0.1 to 0.5 for wind-driven rain on a wall, 1 for an open
///                      top, more where roof water falls on it
/// @param splashShare   the same of what splashes up
/// @param standingHours hours that it stays wet once rain has stopped: 0 on a free upright face, 2 to 12 on a level top or in a tight joint, days where it stands
/// @param startEnd      whether it comes to the end grain of the member's start
/// @param farEnd        and of its far end
public record Exposure(Set<Member.Face> faces, double rainShare, double splashShare, double standingHours, boolean startEnd, boolean farEnd) {
    /// No rain, splash or standing water: only air.
    public static final Exposure DRY = new Exposure(Set.of(), 0, 0, 0, false, false);

    public Exposure {
        faces = Set.copyOf(faces);
        if (!(rainShare >= 0 && splashShare >= 0 && rainShare + splashShare <= 100)) throw new Refused("exposure", "shares of {} and {} are not shares of the rain", "write 0 to 100", rainShare, splashShare);
        if (!(standingHours >= 0 && standingHours <= 8760)) throw new Refused("exposure", "{} hours is no time for water to stand after rain", "write 0 to 8760", standingHours);
    }

    /// All that reaches a wetted face, over the rain.
    public double share() { return rainShare + splashShare; }

    public boolean wets(Member.Face face) { return share() > 0 && faces.contains(face); }

    public boolean wetsAnEnd() { return share() > 0 && (startEnd || farEnd); }
}
