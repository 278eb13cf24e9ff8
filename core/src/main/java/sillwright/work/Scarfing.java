package sillwright.work;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Member;

/// The slope and length of a scarf for one member: across its lesser side, so that the joint is the shortest there is at
/// that slope.
///
/// One in eight where nothing pulls on it; one in ten for an upright that bears load, one in twelve for a member that bends.
/// Source: *Wood Handbook*, FPL-GTR-190, ch. 10: bonded area of ten times the section to approach clear wood, 1:12 or
/// flatter the strongest (read); 1:8 for the rest is common practice.
///
/// @param acrossMm the side it slopes across
/// @param slope    along for one across
record Scarfing(double acrossMm, int slope, double lengthMm) {
    static final List<Basis> BASIS = List.of(Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: bonded area of ten times the section; 1:12 or flatter the strongest"),
            Basis.practice("1:8 where nothing pulls on the joint"));

    static Scarfing of(Job job) {
        Member member = job.member();
        double across = Math.min(member.widthMm(), member.depthMm());
        int slope = !job.bearsLoad() ? 8 : job.bends() ? 12 : 10;
        return new Scarfing(across, slope, CutLine.up(Scarf.lengthMm(across, slope), job.units()));
    }
}
