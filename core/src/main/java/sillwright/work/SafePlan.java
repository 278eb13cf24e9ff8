package sillwright.work;

import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Known;

/// The work at one side on plan, seen from above: x along the wall from the side's left end, y out from the wall, mm.
///
/// @param work     what is worked on, from its leftmost to its rightmost point, out to its front
/// @param sheet    ground to be covered; empty of area where the lead rule asks for none
/// @param line     the edge of the lot, out from the wall; infinite where it was not recorded
/// @param barrier  where a vertical barrier stands, out from the wall; 0 where none is asked for
/// @param marks    where each repair lies
/// @param openings windows and doors near enough to be closed, on every floor
/// @param stands   ladders and scaffolds
/// @param shores   middles of props
/// @param waste    where closed waste waits, at the end of the sheet that is further from doors
/// @param lines    what keeps people safe here beside the lead rule
public record SafePlan(Area work, Area sheet, double line, double barrier, List<Mark> marks, List<Near> openings, List<Stand> stands, List<Shore> shores, Area waste, List<Line> lines) {
    public static final SafePlan NONE = new SafePlan(Area.NONE, Area.NONE, Double.POSITIVE_INFINITY, 0, List.of(), List.of(), List.of(), List.of(), Area.NONE, List.of());

    public SafePlan {
        marks = List.copyOf(marks);
        openings = List.copyOf(openings);
        stands = List.copyOf(stands);
        shores = List.copyOf(shores);
        lines = List.copyOf(lines);
    }

    /// A rectangle on the ground, mm.
    public record Area(double left, double right, double near, double far) {
        static final Area NONE = new Area(0, 0, 0, 0);

        public double mm2() { return Math.max(0, right - left) * Math.max(0, far - near); }
    }

    /// A repair along the wall, and how far before it.
    public record Mark(String repair, double left, double right, double out) {}

    /// A window or a door to be kept closed.
    ///
    /// @param number on the side, from 1
    /// @param inSheet whether people would come out onto the sheet: a way round, or a cover overhead, is wanted
    public record Near(int number, boolean door, double left, double right, double above, boolean inSheet) {}

    /// What one stands on to reach.
    ///
    /// @param scaffold else a ladder
    /// @param foot     on the ground
    /// @param height   of the work above grade
    /// @param length   of the ladder to 3 ft above that; 0 for a scaffold
    /// @param repairs  ids of those reached from it
    public record Stand(boolean scaffold, Area foot, double height, double length, List<String> repairs) {
        public Stand { repairs = List.copyOf(repairs); }
    }

    /// A prop: the square of its pad, and what it holds.
    public record Shore(double x, double y, double pad, String repair) {}

    /// A thing to mind, with its rule.
    public record Line(String topic, String words, Basis basis) {
        /// Its words with the section of the rule behind them.
        public String said() { return words + " (" + (basis.known() == Known.COMMON_PRACTICE ? "common practice" : (basis.source() + " " + basis.where()).strip()) + ")"; }
    }
}
