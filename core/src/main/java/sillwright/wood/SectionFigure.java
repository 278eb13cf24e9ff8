package sillwright.wood;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;

/// The figure `section`: what is left of a member where its faces have gone soft.
final class SectionFigure {
    private SectionFigure() {}

    static Figure section() {
        var gives = Figure.gives("area", "of the wood left",
                "Ix", "second moment about the level axis through its centroid: bending over the depth",
                "Iy", "the same about the other axis",
                "Sx", "least section modulus for bending over the depth",
                "Sy", "least section modulus for bending over the width",
                "shiftX", "of the centroid, to the right",
                "shiftY", "of the centroid, to the back",
                "areaKept", "fraction of the whole area",
                "SxKept", "fraction of the whole Sx",
                "SyKept", "fraction of the whole Sy",
                "gyration", "least radius of gyration");
        return new Figure("section", "wood", "What is left of a section, and how it stands against bending.",
                List.of(side("width", "left to right"), side("depth", "front to back"), loss("left"), loss("right"), loss("front"), loss("back")),
                gives, List.of(Basis.memory("Texts on geometry of sections", "Green's theorem over the outline")),
                "width=5-1/2in depth=5-1/2in right=1in", SectionFigure::work);
    }

    private static Key side(String name, String which) { return Key.of(name, Kind.LENGTH, "size of the whole section, " + which).within("1mm", "2m"); }

    private static Key loss(String face) { return Key.of(face, Kind.LENGTH, "depth lost from the " + face).within("0mm", "2m").or("0in"); }

    private static void work(Inputs in, Answer.Sheet out) {
        Section.Kept kept;
        try {
            kept = Section.left(in.own("width"), in.own("depth"), in.own("front"), in.own("back"), in.own("left"), in.own("right"));
        } catch (Refused refused) {
            throw refused.at("figure section");
        }
        Section rest = kept.rest();
        out.put("area", rest.areaMm2(), Kind.SECTION_AREA).put("Ix", rest.ixMm4(), Kind.INERTIA).put("Iy", rest.iyMm4(), Kind.INERTIA)
                .put("Sx", rest.sxMm3(), Kind.MODULUS).put("Sy", rest.syMm3(), Kind.MODULUS)
                .put("shiftX", kept.shiftXMm(), Kind.LENGTH).put("shiftY", kept.shiftYMm(), Kind.LENGTH)
                .put("areaKept", kept.area(), Kind.FRACTION).put("SxKept", kept.sx(), Kind.FRACTION).put("SyKept", kept.sy(), Kind.FRACTION)
                .put("gyration", rest.gyrationMm(), Kind.LENGTH);
        if (kept.area() < 1) {
            out.beware("screening, not engineering: the loss is taken as even over the whole face, and wood beyond it as sound; "
                    + "a loaded member goes to a licensed engineer before it is cut, and is shored first");
            if (kept.shiftXMm() != 0 || kept.shiftYMm() != 0) out.beware("the load now stands off the middle of what is left, and bends it as well as pressing it");
        }
    }
}
