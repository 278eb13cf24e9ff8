package sillwright.work;

import java.util.Optional;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;

/// Which screw holds a repair together while its glue sets and after. It is no design for load.
///
/// Number 8 in wood to 1-1/2 in, number 10 in thicker; through the first piece and about as far again, never out at the
/// other side. Own choice, in the lengths that are sold.
final class Screws {
    private static final double THICK_MM = 38.1, LEAST_MM = 25.4, MOST_MM = 101.6;

    private Screws() {}

    /// `#8 × 1-1/4 in`, or `4 × 30 mm`; those of the joint, where it has any.
    static String words(Job job, Treatment treatment) { return words(job, treatment, Joints.of(job, treatment, Strengths.none(job)).flatMap(Joinery::fixings)); }

    static String words(Job job, Treatment treatment, Optional<Fixings> joint) {
        Optional<Fixings> fixings = joint.filter(one -> one.sort() == Fixings.Sort.SCREW);
        double thin = job.thinMm(), length = CutLine.down(fixings.map(Fixings::lengthMm).orElse(Math.clamp(2.5 * thin, LEAST_MM, MOST_MM)), job.units());
        boolean heavy = fixings.map(one -> one.name().equals("#10")).orElse(thin > THICK_MM);
        return job.units() == Units.US ? (heavy ? "#10 × " : "#8 × ") + Words.length(length, job.units()) : (heavy ? "5 × " : "4 × ") + Words.length(length, job.units());
    }
}
