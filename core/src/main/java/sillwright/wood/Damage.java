package sillwright.wood;

import sillwright.walk.Member;

/// One stretch of a member that has gone soft, between two lines of sound wood.
///
/// @param id        `s-post-3/1`
/// @param member    the member
/// @param worst     the face it goes deepest from
/// @param fromMm    the sound-wood line toward the member's start: from here on to [#toMm] the wood is suspect; 0 at the start
/// @param toMm      the sound-wood line toward its far end; the member's length where it reaches the end
/// @param deepestMm the greatest depth, most likely value
/// @param volumeMl  softened and decayed wood
/// @param areaMm2   share of the skin that is soft, mm²
/// @param section   what is left at the worst station
/// @param ranOut    true where a probe went to its limit here, so that the wood may be soft or hollow further in
public record Damage(String id, Member member, Member.Face worst, double fromMm, double toMm, double deepestMm, Interval volumeMl, double areaMm2,
                     SectionLeft section, boolean ranOut) {
    public double lengthMm() { return toMm - fromMm; }

    public boolean atStart() { return fromMm <= 0; }

    public boolean atFarEnd() { return toMm >= member.lengthMm(); }

    public boolean atAnEnd() { return atStart() || atFarEnd(); }
}
