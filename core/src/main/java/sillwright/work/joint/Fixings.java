package sillwright.work.joint;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Words;

/// The fasteners of one joint: which, and where each goes.
///
/// @param sort       what they are
/// @param name       by name in inches: `#10`, `1/2`
/// @param diameterMm by name
/// @param lengthMm   whole, under the head
/// @param places     of each on the face it is driven from
/// @param least      what they must keep from edges, ends and each other
/// @param hold       what one of them bears
public record Fixings(Sort sort, String name, double diameterMm, double lengthMm, List<Place> places, Spacing least, Hold hold) {
    public static final Basis BASIS = Basis.own("which screw or bolt, in the sizes that are sold; rows as few as the face asks, never nearer than the spacing allows");

    public Fixings { places = List.copyOf(places); }

    /// `SCREW` holds while the glue sets and after; `BOLT` goes through both; `DOWEL` is glued in, blind, across a square joint.
    public enum Sort { SCREW, BOLT, DOWEL }

    /// @param alongMm  from where the joint starts
    /// @param acrossMm from the left or lower edge of the face
    public record Place(double alongMm, double acrossMm) {}

    /// A wood screw by its number. Source: *NDS* Appendix L (#10 read, others from memory).
    public record Screw(String name, double diameterMm, double rootMm) {
        static final List<Screw> ALL = List.of(of("#8", 0.164, 0.131), of("#10", 0.190, 0.152), of("#12", 0.216, 0.171), of("#14", 0.242, 0.196));

        private static Screw of(String name, double inches, double root) { return new Screw(name, Unit.INCH.toOwn(inches), Unit.INCH.toOwn(root)); }

        /// Number 8 in wood to 1-1/2 in, number 10 in thicker. Own choice.
        public static Screw forWood(double thinMm) { return ALL.get(thinMm > 38.1 ? 1 : 0); }
    }

    /// The name as a shop has it: a screw by its number, or by its shank to the half millimetre.
    public String size(Units units) { return sort == Sort.SCREW && units == Units.SI ? Words.number(Math.round(2 * diameterMm) / 2.0, 1) : name; }

    public int count() { return places.size(); }

    /// How many rows lie beside each other.
    public int rows() { return (int) places.stream().mapToDouble(Place::acrossMm).distinct().count(); }

    /// All of them together, with no allowance for many in a row.
    public double lateralN() { return count() * hold.lateralN(); }

    /// Places in rows over a stretch, evenly, in whole steps no longer than `mostMm` and no shorter than the spacing asks; where the stretch is too short for
    /// two, one in its middle.
    ///
    /// @param fromMm where the first may stand
    /// @param toMm   where the last may stand
    /// @param wideMm of the face
    public static List<Place> spread(double fromMm, double toMm, double mostMm, double wideMm, Spacing least) {
        double room = toMm - fromMm;
        int steps = room < least.rowMm() ? 0 : (int) Math.max(1, Math.min(Math.ceil(room / mostMm - 1e-9), Math.floor(room / least.rowMm() + 1e-9)));
        List<Double> rows = rows(wideMm, least);
        List<Place> places = new ArrayList<>();
        for (int i = 0; i <= steps; i++)
            for (double across : rows) places.add(new Place(steps == 0 ? (fromMm + toMm) / 2 : fromMm + room * i / steps, across));
        return places;
    }

    /// Two rows at the quarters where the face is wide enough for their spacing, else one in its middle.
    static List<Double> rows(double wideMm, Spacing least) {
        double edge = Math.max(least.edgeMm(), wideMm / 4);
        return wideMm - 2 * edge >= least.apartMm() - 1e-9 && edge >= least.edgeMm() ? List.of(edge, wideMm - edge) : List.of(wideMm / 2);
    }
}
