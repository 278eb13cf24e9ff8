package sillwright.work;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.DepthMap;

/// The opening that a dutchman is let into: regular, a little beyond the soft wood each way, carried out to an edge that is
/// close.
///
/// Source: a regular opening a little larger than the damage, US GSA procedure 0956003R (read); half an inch to an inch into
/// sound wood (from memory; sources vary).
///
/// @param lengthMm along the grain
/// @param widthMm  across it
record Patch(double lengthMm, double widthMm, double depthMm) {
    static final List<Basis> BASIS = List.of(Basis.read("US General Services Administration, procedure 0956003R", "a regular opening a little larger than the damage"),
            Basis.memory("Sources vary", "half an inch to an inch into sound wood; at least 3/8 in thick; grain parallel"));

    private static final double SOFT_MM = 3;

    static Patch of(Job job) {
        Member member = job.member();
        double margin = marginMm(job), from = job.damage().fromMm() - margin, to = job.damage().toMm() + margin;
        from = from < CLOSE_MM ? 0 : CutLine.down(from, job.units());
        to = to > member.lengthMm() - CLOSE_MM ? member.lengthMm() : CutLine.up(to, job.units());
        double depth = Math.max(Limits.PATCH_THIN_MM, CutLine.up(job.damage().deepestMm() + CutLine.step(job.units()), job.units()));
        return new Patch(to - from, widthMm(job, margin), Math.min(depth, job.throughMm()));
    }

    /// An edge nearer than this is not left standing as a sliver: 1 in.
    private static final double CLOSE_MM = 25.4;

    /// Half an inch in trim, an inch in a sill or a loaded member.
    static double marginMm(Job job) {
        boolean heavy = job.bearsLoad() || job.member().kind() == MemberKind.SILL || job.member().kind() == MemberKind.WINDOW_SILL;
        return heavy ? 25.4 : 12.7;
    }

    private static double widthMm(Job job, double margin) {
        double across = job.member().acrossMm(job.damage().worst());
        double width = CutLine.up(softAcrossMm(job) + 2 * margin, job.units());
        return width > across - CLOSE_MM ? across : width;
    }

    /// How far across the face the soft wood goes: by the map of the face where there is one, else by its area.
    private static double softAcrossMm(Job job) {
        for (DepthMap map : job.condition().maps()) {
            if (map.face() != job.damage().worst()) continue;
            int first = map.rows(), last = -1;
            for (int column = 0; column < map.columns(); column++) {
                if (map.alongMm(column) < job.damage().fromMm() || map.alongMm(column) > job.damage().toMm()) continue;
                for (int row = 0; row < map.rows(); row++)
                    if (map.depthMm(column, row) > SOFT_MM) {
                        first = Math.min(first, row);
                        last = Math.max(last, row);
                    }
            }
            if (last >= 0) return (last - first + 1) * map.acrossMm() / map.rows();
        }
        return Math.min(job.member().acrossMm(job.damage().worst()), job.damage().areaMm2() / Math.max(1, job.damage().lengthMm()));
    }
}
