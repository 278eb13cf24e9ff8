package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.work.joint.Joinery;

/// The slope and length of a scarf for one damage: across its lesser side, so that the joint is the shortest there is at that slope; once plain, and once with its tips cut
/// square at a nib.
///
/// One in eight where nothing pulls on it; one in ten for an upright that bears load, one in twelve for a member that bends; flatter, in steps, while the load uses more of
/// the joint than it may, to one in twenty.
/// Source: *Wood Handbook*, FPL-GTR-190, ch. 10: bonded area of ten times the section to approach clear wood, 1:12 or
/// flatter the strongest (read); 1:8 for the rest is common practice.
///
/// @param slope along for one across
/// @param nibMm 0 for a plain one
/// @param use   share of the joint's capacity that the load uses, where that can be told
record Scarfing(int slope, double nibMm, double lengthMm, Optional<Double> use) {
    static final List<Basis> BASIS = List.of(Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: bonded area of ten times the section; 1:12 or flatter the strongest"),
            Basis.practice("1:8 where nothing pulls on the joint; nibs of an eighth of the depth where a feathered tip would break"));

    private static final int[] SLOPES = {8, 10, 12, 15, 20};

    static List<Scarfing> of(Job job, CutLine line, Strengths strengths) {
        int least = !job.bearsLoad() ? 8 : job.bends() ? 12 : 10;
        List<Scarfing> all = new ArrayList<>();
        for (double nib : new double[] {0, CutLine.up(Joinery.nibMm(job.thinMm()), job.units())}) {
            if (2 * nib >= job.thinMm()) continue;
            Scarfing taken = null;
            for (int slope : SLOPES) {
                if (slope < least || taken != null && taken.use.map(use -> use <= strengths.may()).orElse(true)) continue;
                double length = CutLine.up(Joinery.scarfMm(job.thinMm(), slope, nib), job.units());
                Optional<Double> use = Joints.scarf(job, slope, nib, strengths.at(line.newMm() + length)).strength().map(Joinery.Strength::use);
                taken = new Scarfing(slope, nib, length, use);
            }
            all.add(taken);
        }
        return all;
    }
}
