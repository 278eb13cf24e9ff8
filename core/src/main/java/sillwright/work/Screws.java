package sillwright.work;

import sillwright.measure.Units;
import sillwright.measure.Words;

/// Which screw holds a repair together while its glue sets and after. It is no design for load.
///
/// Number 8 in wood to 1-1/2 in, number 10 in thicker; through the first piece and about as far again, never out at the
/// other side. Own choice, in the lengths that are sold.
final class Screws {
    private static final double THICK_MM = 38.1, LEAST_MM = 25.4, MOST_MM = 101.6;

    private Screws() {}

    /// `#8 × 1-1/4 in`, or `4 × 30 mm`.
    static String words(Job job, Treatment treatment) {
        double thin = Math.min(job.member().widthMm(), job.member().depthMm());
        double wanted = switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.HalfLap _ -> LEAST_MM;
            case Treatment.Dutchman(_, _, var depth) -> Math.min(2 * depth, job.throughMm() - 6);
            case Treatment.BuildUp _, Treatment.ButtSplice _ -> thin > THICK_MM ? 89 : thin + 12.7;
            case Treatment.ScarfSplice _ -> 0.8 * thin;
            case Treatment.Replace _ -> 2.5 * thin;
        };
        double length = CutLine.down(Math.clamp(wanted, LEAST_MM, MOST_MM), job.units());
        boolean heavy = thin > THICK_MM;
        return job.units() == Units.US ? (heavy ? "#10 × " : "#8 × ") + Words.length(length, job.units()) : (heavy ? "5 × " : "4 × ") + Words.length(length, job.units());
    }
}
