package sillwright.wood;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.walk.Member;
import sillwright.walk.Member.Face;
import sillwright.water.Source;
import sillwright.water.WaterFindings.RankedSource;

/// What water comes to each member, from where it is and from the sources that are likely to wet it.
///
/// Shares of the rain and hours of standing are this program's own choice within the guide values of [Exposure]: no
/// published table by source was found.
final class Exposures {
    static final Basis BASIS = Basis.own("water on a member for each source: 0.1 to 0.5 of the rain on a wall, 1 on an open top, more under falling roof water; it stands for hours in a joint, days on a floor");

    private final Member member;
    private final Set<Face> faces = EnumSet.noneOf(Face.class);
    private double rain;
    private double splash;
    private double standing;
    private boolean start;
    private boolean far;

    private Exposures(Member member) { this.member = member; }

    /// As it is, and as it would be with the likely sources stopped.
    static Wetting of(Condition condition, List<RankedSource> sources) {
        Exposures now = new Exposures(condition.member()), stopped = new Exposures(condition.member());
        now.open();
        stopped.open();
        for (RankedSource source : sources) now.wet(source.source());
        return new Wetting(condition.member(), now.exposure(), stopped.exposure(), condition.wettest().map(wettest -> Math.min(wettest, 1.0)), rating(condition));
    }

    /// As it is, and as it would be with one source stopped and the rest at work.
    static Wetting without(Condition condition, List<RankedSource> sources, RankedSource stopped) {
        Exposures left = new Exposures(condition.member());
        left.open();
        for (RankedSource source : sources) if (source != stopped) left.wet(source.source());
        Wetting all = of(condition, sources);
        return new Wetting(all.member(), all.now(), left.exposure(), all.measured(), all.rating());
    }

    /// As its place alone would have it, with every source stopped.
    static Wetting open(Member member) {
        Exposures open = new Exposures(member);
        open.open();
        return new Wetting(member, open.exposure(), open.exposure(), java.util.Optional.empty(), 0);
    }

    private Exposure exposure() { return new Exposure(faces, rain, splash, standing, start, far); }

    /// Rain that comes to any piece in its place.
    private void open() {
        switch (member.kind()) {
            case SOFFIT, BEAM, JOIST, BRACKET -> add(0.05, 0, 0, false, Face.FRONT);
            case WINDOW_SILL, THRESHOLD, TREAD, FLOORBOARD, RAIL, WATER_TABLE -> add(0.5, 0, 1, false, Face.TOP, Face.FRONT);
            case SILL, POST, COLUMN, COLUMN_BASE, PLINTH, FASCIA, FRIEZE, RAKE_BOARD, CORNER_BOARD, CASING, BRICKMOULD, HEAD_CASING, CLAPBOARD, SHINGLE, SKIRT_BOARD, STRINGER,
                 BALUSTER, NEWEL, SASH, DOOR, SHUTTER, OTHER -> add(0.15, 0, 0, false, Face.FRONT);
        }
    }

    private void wet(Source source) {
        switch (source) {
            case SPLASH_FROM_GROUND -> add(0, 0.4, 1, true, Face.FRONT, Face.BOTTOM);
            case ROOF_DRIP -> add(0, 1, 1, true, Face.FRONT, Face.BOTTOM);
            case GUTTER_CLOGGED, GUTTER_TOO_SMALL, GUTTER_HUNG_BADLY, GUTTER_JOINT_LEAKS -> add(3, 0, 6, false, Face.FRONT, Face.TOP, Face.BACK);
            case DOWNSPOUT_AT_WALL -> add(2, 1, 6, true, Face.FRONT, Face.BOTTOM);
            case ROOF_EDGE_DRIPS_BEHIND, ICE_DAM, ROOF_LEAKS_ABOVE, FLASHING_FAILED, CAP_MISSING -> add(1.5, 0, 12, false, Face.TOP, Face.BACK);
            case SILL_HOLDS_WATER -> add(1, 0, 12, false, Face.TOP, Face.FRONT);
            case JOINT_OPEN, TRAPPED_BEHIND_COAT -> add(0.5, 0, 24, true, Face.FRONT, Face.BACK);
            case WIND_DRIVEN_RAIN -> add(0.35, 0, 0, false, Face.FRONT);
            case END_GRAIN_DRINKS -> add(0.3, 0, 12, true, Face.FRONT);
            case SOIL_AGAINST_WOOD, CAPILLARY_RISE -> add(0.5, 0.2, 200, true, Face.FRONT, Face.BOTTOM, Face.BACK);
            case PORCH_FLOOR_HOLDS_WATER -> add(0.5, 0.3, 36, true, Face.FRONT, Face.BOTTOM);
            case PLANTS_HOLD_DAMP -> add(0.2, 0, 24, false, Face.FRONT);
            case SPRINKLER -> add(1, 0, 2, true, Face.FRONT);
            case INDOOR_VAPOUR, PLUMBING_LEAK -> add(0.3, 0, 48, false, Face.BACK);
        }
    }

    /// Water adds up; it stands as long as the slowest of its sources lets it.
    private void add(double rainShare, double splashShare, double standingHours, boolean atEnd, Face... wetted) {
        for (Face face : wetted) if (member.faces().contains(face)) faces.add(face);
        if (faces.isEmpty()) faces.add(member.faces().getFirst());
        rain = Math.max(rain, rainShare);
        splash = Math.max(splash, splashShare);
        standing = Math.max(standing, standingHours);
        if (!atEnd) return;
        start |= member.startEnd() != Member.EndGrain.COVERED || member.contact() != Member.Contact.NONE;
        far |= member.run() != Member.Run.UPRIGHT && member.farEnd() != Member.EndGrain.COVERED;
    }

    /// How far decay has gone, on the scale of the forecast.
    private static double rating(Condition condition) {
        return switch (condition.state()) {
            case NOT_PROBED, SOUND -> 0;
            case SOFTENED -> 1;
            case DECAYED -> condition.damages().stream().anyMatch(damage -> damage.section().areaKept() < 0.5) ? 3 : 2;
            case HOLLOW -> 3;
        };
    }
}
