package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Csv;
import sillwright.walk.Body;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Side;
import sillwright.walk.Sighting;

/// What there is to know of one invented side: tables, in the order that a walk goes.
interface SideNotes {
    Side side();

    /// The unit of the bare numbers in the tables.
    default Marks tables() { return Marks.INCHES; }

    /// How the tape and the probe of this side's walker are marked.
    default Marks written() { return Marks.INCHES; }

    /// The wood's temperature on the day, °C.
    double woodC();

    /// See [Written#members].
    String members();

    /// See [Rot#read].
    String rot();

    /// Columns `member,face,along,across,reach`: every point along with every point across; see [#points].
    String probes();

    /// Columns `member,face,along,across,about`: what the meter would show in a steady hand, %.
    String moistures();

    /// See [Written#sightings].
    String sightings();

    /// Open checks and outlines, as they were measured.
    default List<Body> measured() { return List.of(); }

    /// Columns `of,what,nth,how`: which reading of a face (or `moisture`, `length`, `sighting`) is first written wrongly:
    /// `typed` and amended, a false one written and `struck`, or struck in error and `restored`.
    default String slips() { return "of,what,nth,how"; }

    default List<Member> memberList() { return Written.members(side().id(), members()); }

    default List<Rot> rotList() { return Rot.read(rot(), tables().unitMm()); }

    default List<Sighting> sightingList() { return Written.sightings(side().id(), sightings()); }

    /// A row of points on one face.
    ///
    /// @param last the column after the places: the reach in mm, or the percentage
    record Points(String member, Member.Face face, double[] alongMm, double[] acrossMm, double last) {}

    default List<Points> probePoints() { return points(probes(), "reach", tables().unitMm()); }

    default List<Points> moisturePoints() { return points(moistures(), "about", 1); }

    private List<Points> points(String csv, String last, double lastUnit) {
        return Csv.read(csv).rows().stream().map(row -> new Points(row.get("member"), Choice.of(Member.Face.class, row.get("face")),
                points(row.get("along")), points(row.get("across")), row.number(last) * lastUnit)).toList();
    }

    /// `1;2.5;4`, or `1..25/3` for 1, 4, 7 and so on to 25.
    private double[] points(String written) {
        double unit = tables().unitMm();
        int dots = written.indexOf(".."), step = written.indexOf('/');
        if (dots < 0) return Stream.of(written.split(";")).mapToDouble(Double::parseDouble).map(n -> n * unit).toArray();
        double from = Double.parseDouble(written.substring(0, dots)), to = Double.parseDouble(written.substring(dots + 2, step));
        double by = Double.parseDouble(written.substring(step + 1));
        return IntStream.rangeClosed(0, (int) Math.floor((to - from) / by + 1e-9)).mapToDouble(i -> (from + i * by) * unit).toArray();
    }
}
