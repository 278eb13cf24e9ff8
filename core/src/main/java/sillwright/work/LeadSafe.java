package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Unit;

/// What the federal lead rule for renovation asks of one job, and how to keep dust and people safe beside it.
///
/// The rule covers housing and child-occupied buildings built before 1978, worked on for pay; states may run a stricter one.
/// Source: 40 CFR 745.80 to 745.92; each duty carries its own section and how it is known.
public final class LeadSafe {
    /// Built in this year or later: not covered. Source: 40 CFR 745.80 and 745.82 (read).
    public static final int FIRST_YEAR_FREE = 1978;
    /// The most painted surface that is still minor work outside, whole job: 20 ft². Source: 40 CFR 745.83 (read).
    public static final double MINOR_EXTERIOR_MM2 = Unit.SQUARE_FOOT.toOwn(20);
    /// The most that is still minor inside, each room: 6 ft². Source: 40 CFR 745.83 (read).
    public static final double MINOR_INTERIOR_MM2 = Unit.SQUARE_FOOT.toOwn(6);
    /// Ground cover reaches so far, and a property line so near wants a barrier: 10 ft. Source: 40 CFR 745.85(a)(2)(ii) (read).
    public static final double COVER_MM = Unit.FOOT.toOwn(10);
    /// Floor cover inside: 6 ft. Source: 40 CFR 745.85(a)(2)(i) (from memory).
    public static final double FLOOR_COVER_MM = Unit.FOOT.toOwn(6);
    /// Exterior work stops above this: 20 mph. Source: HUD Guidelines, ch. 8 (from memory); the rule itself names no speed.
    public static final double STOP_WIND_MPS = Unit.MILE_PER_HOUR.toOwn(20);

    /// Doors and windows are closed within 20 ft of work outside. Source: a trade article quoting 40 CFR 745.85(a)(2)(ii)(A) (read).
    public static final double CLOSE_MM = Unit.FOOT.toOwn(20);
    /// A ladder stands one out for four up, its rails 3 ft above where it leans. Source: 29 CFR 1926.1053(b) (from memory).
    public static final double LADDER_OUT = 0.25, LADDER_ABOVE_MM = Unit.FOOT.toOwn(3);

    /// 6 ft. Source: 29 CFR 1926.501(b) (from memory).
    private static final double FALL_MM = Unit.FOOT.toOwn(6);

    private static final List<Duty> DUTIES = read(LeadRuleCsv.TEXT);

    private LeadSafe() {}

    /// One job.
    ///
    /// @param built       year
    /// @param areaMm2     painted surface disturbed: outside the whole job, inside one room, counted over 30 days
    /// @param exterior    outside or inside
    /// @param windows     windows replaced
    /// @param toLineMm    from the surfaces worked on to the property line; [Double#POSITIVE_INFINITY] where it is far
    /// @param heightMm    of the highest work above the ground; 0 where all is reached standing
    /// @param windMPerS   wind on the day; 0 where it is still or not known
    public record Job(int built, double areaMm2, boolean exterior, int windows, double toLineMm, double heightMm, double windMPerS) {
        /// Outside work with no window replaced, the line far, all in reach, no wind.
        public static Job outside(int built, double areaMm2) { return new Job(built, areaMm2, true, 0, Double.POSITIVE_INFINITY, 0, 0); }
    }

    /// @param covered  whether the rule covers the job
    /// @param coverMm  how far ground or floor cover reaches; 0 where the rule asks for none
    /// @param barrier  whether a vertical barrier is wanted
    /// @param duties   one line each, with the rule's section; empty where the rule does not cover the job
    /// @param cautions heights, wind, dust
    public record Plan(boolean covered, double coverMm, boolean barrier, List<String> duties, List<String> cautions, List<Basis> basis) {
        public Plan {
            duties = List.copyOf(duties);
            cautions = List.copyOf(cautions);
            basis = List.copyOf(basis);
        }
    }

    private record Duty(String when, String words, Basis basis) {}

    /// Whether the rule covers a job of this size on a building of this age.
    public static boolean covers(Job job) {
        double minorMm2 = job.exterior ? MINOR_EXTERIOR_MM2 : MINOR_INTERIOR_MM2;
        return job.built < FIRST_YEAR_FREE && (job.windows > 0 || job.areaMm2 > minorMm2 * (1 + 1e-9));
    }

    public static Plan plan(Job job) {
        List<Basis> basis = new ArrayList<>();
        basis.add(Basis.read("40 CFR part 745", "745.80, 745.82 and 745.83: built before 1978; 20 ft² outside, 6 ft² a room inside"));
        boolean covered = covers(job), near = job.exterior && job.toLineMm <= COVER_MM * (1 + 1e-9);
        List<String> duties = new ArrayList<>();
        if (covered)
            for (Duty duty : DUTIES)
                if (applies(duty.when, job, near)) {
                    duties.add(duty.words + " (" + duty.basis.where() + ")");
                    if (!basis.contains(duty.basis)) basis.add(duty.basis);
                }
        double cover = !covered ? 0 : job.exterior ? Math.min(COVER_MM, job.toLineMm) : FLOOR_COVER_MM;
        return new Plan(covered, cover, covered && near, duties, cautions(job, covered, basis), basis);
    }

    private static boolean applies(String when, Job job, boolean near) {
        return switch (when) {
            case "covered" -> true;
            case "exterior" -> job.exterior;
            case "interior" -> !job.exterior;
            case "near-line" -> near;
            case "windows" -> job.windows > 0;
            default -> throw new IllegalStateException("the table of duties has the word '" + when + "'");
        };
    }

    private static List<String> cautions(Job job, boolean covered, List<Basis> basis) {
        List<String> cautions = new ArrayList<>();
        if (job.built < FIRST_YEAR_FREE && !covered)
            cautions.add("minor work under the federal rule only while no flame, no uncontained power tool and no hot gun is used and no painted surface is demolished; "
                    + "the paint may hold lead all the same: wet scraping, ground cover and clean-up protect people whatever the rule says");
        if (covered) cautions.add("state and local rules may be stricter; who works unpaid in the home they own and live in is outside the rule, not the hazard");
        if (job.built >= FIRST_YEAR_FREE) cautions.add("built in 1978 or later: the federal lead rule does not apply; older parts built in still may hold lead");
        if (job.exterior && job.windMPerS > STOP_WIND_MPS * (1 + 1e-9)) {
            cautions.addFirst("stop: work outside ends at a wind of 20 mph (9 m/s); the rule names no speed, and below it work stops when the cover cannot hold");
            basis.add(Basis.memory("HUD Guidelines", "ch. 8: stop exterior work above 20 mph"));
        }
        if (job.heightMm > 0) heights(job, covered, cautions, basis);
        return cautions;
    }

    private static void heights(Job job, boolean covered, List<String> cautions, List<Basis> basis) {
        if (covered && job.exterior)
            cautions.add("from a height debris flies further: ground cover goes as far as it falls, which may be more than 10 ft (3.05 m)");
        cautions.add("stand a ladder one out for four up, its rails 3 ft (0.9 m) above a landing, tied, on firm level ground, clear of wires");
        basis.add(Basis.memory("29 CFR 1926.1053(b)", "1 out for 4 up; rails 3 ft above the landing"));
        if (job.heightMm > FALL_MM) {
            cautions.add("from a roof, deck edge or staging, fall protection begins at 6 ft (1.8 m), on scaffolds at 10 ft (3 m); "
                    + "the rule asks for none on a portable ladder, so keep work from one short");
            basis.add(Basis.memory("29 CFR 1926.501(b) and 1926.451(g)", "6 ft in construction, 10 ft on scaffolds"));
            basis.add(Basis.read("OSHA letter of 13 January 2000", "no fall protection is required on a portable ladder"));
        }
    }

    private static List<Duty> read(String csv) {
        return Csv.read(csv).rows().stream().map(row -> new Duty(row.get("when"), row.get("duty"),
                new Basis(row.get("source"), row.get("where"), Known.of(row.get("known"))))).toList();
    }
}
