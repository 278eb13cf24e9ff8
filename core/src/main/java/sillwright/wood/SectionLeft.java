package sillwright.wood;

import java.util.List;
import java.util.Optional;

import sillwright.walk.Member;

/// What is left of a member's section at one station, against the whole.
///
/// @param stationMm  from the member's start
/// @param frontMm    lost from the front, mm, as if it were even across it; the others likewise, as [sillwright.walk.Member.SectionSide] has them
/// @param areaKept   fraction of the area
/// @param sxKept     fraction of the least section modulus for bending about the level axis of the section; of the largest piece where it is parted
/// @param syKept     the same about its other axis
/// @param shiftXMm   of the centroid, to the right
/// @param shiftYMm   of the centroid, to the back
/// @param keptLow    the area kept where the decay is as deep as the 90 % bound
/// @param shapes     the true shape of what is left; empty where only even losses are known
public record SectionLeft(double stationMm, double frontMm, double backMm, double leftMm, double rightMm, double areaKept, double sxKept, double syKept,
                          double shiftXMm, double shiftYMm, double keptLow, Optional<Shapes> shapes) {
    /// Of even losses.
    public SectionLeft(double stationMm, double frontMm, double backMm, double leftMm, double rightMm, double areaKept, double sxKept, double syKept,
                       double shiftXMm, double shiftYMm, double keptLow) {
        this(stationMm, frontMm, backMm, leftMm, rightMm, areaKept, sxKept, syKept, shiftXMm, shiftYMm, keptLow, Optional.empty());
    }

    /// What is left by outline, and how sure that is.
    ///
    /// @param kept   the least share of the area that is left anywhere in the damage, from draws of the decay
    /// @param likely at the station
    /// @param most   with as much decay as the 90 % bound, at its own worst station
    /// @param least  with as little
    public record Shapes(Interval kept, Outline likely, Outline most, Outline least) {}

    /// How deep each side of a section is soft, all the way across it.
    public record Outline(FaceProfile front, FaceProfile back, FaceProfile left, FaceProfile right) {
        /// What is sound within it.
        public SoundSection sound() { return SoundSection.of(front.acrossMm(), left.acrossMm(), front, back, left, right); }
    }

    /// Nothing lost.
    public static SectionLeft whole(double stationMm) { return new SectionLeft(stationMm, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1); }

    static SectionLeft of(Member member, double stationMm, Shapes shapes) {
        Outline likely = shapes.likely;
        SoundSection sound = likely.sound();
        List<Double> even = List.of(even(likely.front), even(likely.back), even(likely.left), even(likely.right));
        double kept = sound.areaKept();
        if (sound.pieces().isEmpty()) return new SectionLeft(stationMm, even.get(0), even.get(1), even.get(2), even.get(3), 0, 0, 0, 0, 0, 0, Optional.of(shapes));
        Section whole = Section.rectangle(0, member.widthMm(), 0, member.depthMm()), rest = sound.pieces().getFirst();
        return new SectionLeft(stationMm, even.get(0), even.get(1), even.get(2), even.get(3), kept, rest.sxMm3() / whole.sxMm3(), rest.syMm3() / whole.syMm3(),
                rest.xMm() - whole.xMm(), rest.yMm() - whole.yMm(), Math.min(kept, shapes.kept.low()), Optional.of(shapes));
    }

    private static double even(FaceProfile profile) {
        double sum = 0;
        for (int i = 1; i < profile.points().size(); i++) {
            FaceProfile.At before = profile.points().get(i - 1), at = profile.points().get(i);
            sum += (at.acrossMm() - before.acrossMm()) * (before.depthMm() + at.depthMm()) / 2;
        }
        return sum / profile.acrossMm();
    }
}
