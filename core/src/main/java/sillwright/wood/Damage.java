package sillwright.wood;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Choice;
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
/// @param doubt     how sure its bounds are
public record Damage(String id, Member member, Member.Face worst, double fromMm, double toMm, double deepestMm, Interval volumeMl, double areaMm2,
                     SectionLeft section, boolean ranOut, Doubt doubt) {
    /// A damage that is known exactly.
    public Damage(String id, Member member, Member.Face worst, double fromMm, double toMm, double deepestMm, Interval volumeMl, double areaMm2, SectionLeft section, boolean ranOut) {
        this(id, member, worst, fromMm, toMm, deepestMm, volumeMl, areaMm2, section, ranOut, new Doubt(Interval.exactly(deepestMm),
                Interval.exactly(Math.min(1, areaMm2 / (2 * (member.widthMm() + member.depthMm()) * (toMm - fromMm)))), Interval.exactly(fromMm), Interval.exactly(toMm),
                new CutOut(worst, fromMm, toMm, 0, member.acrossMm(worst), Math.min(deepestMm, member.throughMm(worst)))));
    }

    /// What draws of the decay leave open.
    ///
    /// @param deepestMm  the greatest depth from any face
    /// @param softShare  of the skin of the stretch, all round
    /// @param softFromMm where along the member the softness begins, without the sound wood beside it
    /// @param softToMm   where it ends
    /// @param cutOut     the shape to cut out from the worst face
    public record Doubt(Interval deepestMm, Interval softShare, Interval softFromMm, Interval softToMm, CutOut cutOut) {}

    /// The smallest square-cornered recess that takes all that may be soft with more than [Decay#DOUBT] chance, and sound wood beside it.
    ///
    /// @param acrossFromMm over the face, as [Member.Face] measures it
    /// @param deepMm       so deep that softness goes further one time in twenty; never more than the member is through
    public record CutOut(Member.Face face, double fromMm, double toMm, double acrossFromMm, double acrossToMm, double deepMm) {
        public double volumeMl() { return (toMm - fromMm) * (acrossToMm - acrossFromMm) * deepMm / 1000; }
    }

    /// What is known of its bounds, one line.
    public String doubtWords(Units units) {
        CutOut cut = doubt.cutOut;
        return "deepest " + between(doubt.deepestMm, units) + "; softness begins at " + between(doubt.softFromMm, units) + " and ends at " + between(doubt.softToMm, units) + "; "
                + Words.percent(doubt.softShare.median()) + " of its skin is soft (" + Words.percent(doubt.softShare.low()) + " to " + Words.percent(doubt.softShare.high())
                + "). A recess that takes all of it from the " + Choice.said(cut.face) + ": " + Words.length(cut.toMm - cut.fromMm, units) + " long, across from "
                + Words.length(cut.acrossFromMm, units) + " to " + Words.length(cut.acrossToMm, units) + ", " + Words.length(cut.deepMm, units) + " deep.";
    }

    private static String between(Interval interval, Units units) {
        String low = Words.length(interval.low(), units), high = Words.length(interval.high(), units);
        return low.equals(high) ? low : low + " to " + high;
    }

    public double lengthMm() { return toMm - fromMm; }

    public boolean atStart() { return fromMm <= 0; }

    public boolean atFarEnd() { return toMm >= member.lengthMm(); }

    public boolean atAnEnd() { return atStart() || atFarEnd(); }
}
