package sillwright.walk;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// One side of the building as seen standing before it, with its roof edges, its ground and its openings.
///
/// Places on a side are measured from its left end and up from grade at the wall.
///
/// @param id       `south`
/// @param title    as it is called: `South side, porch`
/// @param bearing  the direction it looks to, degrees from north, clockwise
/// @param length   mm
/// @param edges    its roof edges, the main one first
/// @param ground   what lies at its foot
/// @param lotLine  distance from the wall to the edge of the lot, mm
/// @param openings windows and doors
public record Side(String id, String title, Quantity bearing, Quantity length, List<RoofEdge> edges, Ground ground,
                   Optional<Quantity> lotLine, List<Opening> openings) implements Body {
    public Side {
        edges = List.copyOf(edges);
        openings = List.copyOf(openings);
        if (id.isEmpty()) throw new Refused("id", "is empty", "name the side, such as south");
        Measured.positive("length", length);
        if (!(bearing.own() >= 0 && bearing.own() < 360)) throw new Refused("bearing", "{} is not a bearing", "write 0deg to 359deg, north is 0deg", bearing);
        Measured.positive("lotLine", lotLine);
    }

    public double lengthMm() { return length.own(); }

    /// The height of the wall: of its main roof edge; 2700 mm, a common storey, where no edge was recorded.
    public double heightMm() { return edges.isEmpty() ? 2700 : edges.getFirst().height().own(); }

    /// The highest point of the wall: the peak of a gable, or the eave.
    public double topMm() {
        double top = heightMm();
        for (RoofEdge edge : edges) top = Math.max(top, edge.peak().map(Quantity::own).orElse(edge.height().own()));
        return top;
    }

    /// Where the roof ends over a wall or a porch.
    ///
    /// @param id        `main`, `porch`
    /// @param kind      an eave sheds water, a rake runs up a gable, a flat roof drains elsewhere
    /// @param left      from the side's left end to where the edge starts, mm
    /// @param length    along the wall, mm
    /// @param height    above grade, mm; of a rake, its lower end
    /// @param overhang  beyond the wall or the porch beam, on plan, mm
    /// @param peak      of a rake: height of the ridge above grade, mm
    /// @param projects  of a porch or bay: how far its front stands before the wall, mm
    /// @param planDepth how deep on plan the roof is that drains to this edge, mm
    /// @param pitch     rise over run
    /// @param gutter    the gutter on it, if any
    public record RoofEdge(String id, Edge kind, Quantity left, Quantity length, Quantity height, Quantity overhang, Optional<Quantity> peak,
                           Optional<Quantity> projects, Optional<Quantity> planDepth, Optional<Quantity> pitch, Optional<Gutter> gutter) {
        public RoofEdge {
            Measured.notNegative("left", left);
            Measured.positive("length", length);
            Measured.positive("height", height);
            Measured.notNegative("overhang", overhang);
            Measured.positive("planDepth", planDepth);
            Measured.notNegative("pitch", pitch);
            if (peak.isPresent() && peak.get().own() <= height.own())
                throw new Refused("peak", "{} is not above the edge's height of {}", "measure both from grade", peak.get(), height);
        }

        /// The roof that drains to this edge, on plan, mm².
        public Optional<Double> catchmentMm2() { return planDepth.map(depth -> depth.own() * length.own()); }
    }

    public enum Edge { EAVE, RAKE, FLAT }

    /// @param shape cross-section
    /// @param size  half-round: diameter; else top width, mm
    /// @param depth of a rectangular or ogee gutter, mm
    /// @param fall  along its run, rise over run
    /// @param downspouts where it empties
    public record Gutter(GutterShape shape, Quantity size, Optional<Quantity> depth, Optional<Quantity> fall, List<Downspout> downspouts) {
        public Gutter {
            downspouts = List.copyOf(downspouts);
            Measured.positive("size", size);
            Measured.positive("depth", depth);
        }
    }

    public enum GutterShape { HALF_ROUND, RECTANGULAR, OGEE }

    /// @param left      from the side's left end, mm
    /// @param size      round: diameter; else one side, mm
    /// @param size2     of a rectangular downspout, the other side, mm
    /// @param empties   what its water falls on
    /// @param carriesTo how far from the wall the water is let go, mm
    public record Downspout(Quantity left, Quantity size, Optional<Quantity> size2, Empties empties, Optional<Quantity> carriesTo) {
        public Downspout {
            Measured.positive("size", size);
            Measured.positive("size2", size2);
            Measured.notNegative("carriesTo", carriesTo);
        }
    }

    public enum Empties { AT_FOOT, SPLASH_BLOCK, EXTENSION, DRAIN, CISTERN }

    /// @param surface   what the rain falls on at the foot of the wall
    /// @param fall      away from the wall, rise over run; less than nothing where it falls to the wall
    /// @param clearance from the ground to the lowest wood, mm
    public record Ground(Surface surface, Optional<Quantity> fall, Optional<Quantity> clearance) {
        public Ground { Measured.notNegative("clearance", clearance); }
    }

    public enum Surface { PAVING, SOIL, GRAVEL, GRASS, MULCH }

    /// A window, a door, or another hole in the wall: its rough place for the drawing.
    public record Opening(OpeningKind kind, Quantity left, Quantity bottom, Quantity width, Quantity height) {
        public Opening {
            Measured.notNegative("left", left);
            Measured.notNegative("bottom", bottom);
            Measured.positive("width", width);
            Measured.positive("height", height);
        }
    }

    public enum OpeningKind { WINDOW, DOOR, VENT }
}
