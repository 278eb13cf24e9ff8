package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Csv;
import sillwright.walk.Choice;
import sillwright.walk.Member;

/// One patch of soft wood as it truly is in an invented member, seen from one face. Deepest at one point along and one
/// across, it falls off as a parabola to nothing at its ends along, and by a share toward the edges across.
///
/// @param fromMm    where it starts along; the peak itself where it is deepest at an end
/// @param peakMm    where it is deepest
/// @param toMm      where it ends
/// @param heartMm   where it is deepest across
/// @param edge      share of the depth that is gone at the farther edge of the face
/// @param deepestMm depth at the deepest point
record Rot(String member, Member.Face face, double fromMm, double peakMm, double toMm, double heartMm, double edge, double deepestMm) {
    double depthMm(double alongMm, double acrossMm, double acrossOfFaceMm) {
        double end = alongMm < peakMm ? fromMm : toMm;
        double along = alongMm == peakMm ? 0 : end == peakMm ? 1 : (alongMm - peakMm) / (end - peakMm);
        if (along >= 1) return 0;
        double across = (acrossMm - heartMm) / Math.max(heartMm, acrossOfFaceMm - heartMm);
        return deepestMm * (1 - along * along) * Math.max(0, 1 - edge * across * across);
    }

    /// How deep the wood is soft beneath a point, by all patches; never more than there is wood, mm.
    static double truthMm(List<Rot> rots, Member member, Member.Face face, double alongMm, double acrossMm) {
        double deepest = 0;
        for (Rot rot : rots)
            if (rot.member.equals(member.id()) && rot.face == face)
                deepest = Math.max(deepest, rot.depthMm(alongMm, acrossMm, member.acrossMm(face)));
        return Math.min(deepest, member.throughMm(face));
    }

    /// Columns `member,face,from,peak,to,heart,edge,deepest`, lengths as bare numbers of one unit.
    static List<Rot> read(String csv, double unitMm) {
        return Csv.read(csv).rows().stream().map(row -> new Rot(row.get("member"), Choice.of(Member.Face.class, row.get("face")),
                row.number("from") * unitMm, row.number("peak") * unitMm, row.number("to") * unitMm, row.number("heart") * unitMm,
                row.number("edge"), row.number("deepest") * unitMm)).toList();
    }
}
