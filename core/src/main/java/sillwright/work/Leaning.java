package sillwright.work;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.DesignValues;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Grade;

/// People lean on rails, balusters and newels: how much of a whole one that push uses, wherever a joint comes to lie.
///
/// A newel is taken as held at its foot alone, a rail or baluster as borne at both ends; the push stands where it bends most, and bends what is thinner that way. For dry wood of a grade nobody stamped.
///
/// @param pushN what pushes
/// @param whole share of a whole piece's bending strength that it uses
record Leaning(double pushN, double whole) {
    static final Basis BASIS = Basis.memory("ASCE 7, sec. 4.5", "200 lbf in any direction at any point along the top of a handrail or guard; 50 lbf on a square foot of what fills it");

    private static final double RAIL_N = 889.6, INFILL_N = 222.4;
    /// Of a square or a lapped joint no more than this share of the bending strength is counted on. Source: *Wood Handbook*, ch. 10 (read).
    static final double SQUARE_KEEPS = 0.25;

    /// Nothing pushes what nobody leans on.
    static Leaning on(Member member) {
        double push = member.kind() == MemberKind.RAIL || member.kind() == MemberKind.NEWEL ? RAIL_N : member.kind() == MemberKind.BALUSTER ? INFILL_N : 0;
        if (push == 0) return new Leaning(0, 0);
        double wide = member.widthMm(), deep = member.depthMm(), moment = push * member.lengthMm() / (member.kind() == MemberKind.NEWEL ? 1 : 4);
        double modulus = member.run() == Member.Run.LEVEL ? wide * deep * deep / 6 : wide * deep * Math.min(wide, deep) / 6;
        double may = Adjusted.of(DesignValues.orCareful(member.species(), Grade.NO2, wide, deep), wide, deep, Adjusted.Service.of(Duration.NORMAL, false)).bendingMPa();
        return new Leaning(push, moment / modulus / may);
    }

    /// With a joint that keeps so much of the strength.
    double use(double keeps) { return whole / keeps; }

    /// As for every load: where even a whole one would be used up, strength settles nothing.
    double may() { return whole > 1 ? Double.POSITIVE_INFINITY : 1; }
}
