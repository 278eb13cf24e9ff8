package sillwright.walk;

import java.util.List;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// The outline of a moulded member, as a profile gauge's steps or a rule and square take it: how far the face stands out at
/// some places across it.
///
/// @param member  its id
/// @param title   what it is called: `casing backband`
/// @param offsets in order across the face from its inner edge; at least three; places never go back, and no two are the same point
public record Profile(String member, String title, List<Offset> offsets) implements Body {
    public Profile {
        offsets = List.copyOf(offsets);
        if (offsets.size() < 3) throw new Refused("offsets", "{} are too few to draw an outline", "take at least three: both edges and one between", offsets.size());
        for (int i = 1; i < offsets.size(); i++) {
            Offset before = offsets.get(i - 1), here = offsets.get(i);
            if (here.acrossMm() < before.acrossMm() - 1e-9)
                throw new Refused("offsets[" + i + "].across", "{} lies before the offset that it follows", "write them in order across the face", here.across());
            if (Math.hypot(here.acrossMm() - before.acrossMm(), here.outMm() - before.outMm()) < 1e-6)
                throw new Refused("offsets[" + i + "]", "{} is the same point as the offset before it", "leave one of them out", here.across());
        }
        if (!(offsets.getLast().acrossMm() > offsets.getFirst().acrossMm()))
            throw new Refused("offsets", "{} is all they go across", "measure from one edge of the face to the other", offsets.getLast().across());
    }

    /// One step of the gauge.
    ///
    /// @param across from the inner edge of the face, mm; not less than nothing
    /// @param out    how far the wood stands out from the plane that was measured from, mm; not less than nothing
    public record Offset(Quantity across, Quantity out) {
        public Offset {
            Measured.notNegative("across", across);
            Measured.notNegative("out", out);
        }

        public double acrossMm() { return across.own(); }

        public double outMm() { return out.own(); }
    }
}
