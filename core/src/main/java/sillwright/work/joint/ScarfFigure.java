package sillwright.work.joint;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.wood.Section;

/// The figure `scarf`.
public final class ScarfFigure {
    private ScarfFigure() {}

    public static Figure scarf() {
        return new Figure("scarf", "work", "How long a scarf is, how much glue face it has, and what its glue line bears.",
                List.of(Key.of("width", Kind.LENGTH, "of the section, along the edge of the slope").within("1mm", "2m"),
                        Key.of("depth", Kind.LENGTH, "of the section, the way the slope runs through").within("1mm", "2m"),
                        Key.of("slope", Kind.RATIO, "one across in so many along").within(1.0 / 50, 1),
                        Key.of("axial", Kind.FORCE, "force along the grain; tension more than nothing, compression less").within(-1e7, 1e7).or("0lb"),
                        Key.of("moment", Kind.MOMENT, "bending over the depth").within(-1e10, 1e10).or("0ft-lb")),
                Figure.gives("length", "of the slope, along the grain", "glueArea", "of the sloping face", "areaRatio", "glue face over section",
                        "efficiency", "share of clear wood's strength in tension that such a joint keeps", "shear", "along the glue line, at the worse edge",
                        "peel", "tension square to the glue line, at the edge most pulled; less than nothing where it is pressed shut"),
                List.of(Basis.memory("Wood Handbook, older editions", "1:12 0.90 (0.85 in some), 1:10 0.85, 1:8 0.80, 1:5 0.65"),
                        Basis.read("Wood Handbook, FPL-GTR-190", "ch. 10: a glued butt at most 0.25; glue face ten times the section; 1:12 or flatter strongest"),
                        Basis.read("The Strength of Scarf Joints, a boatbuilders' article that doubts its own source", "1:20 0.95; its 0.65 at 1:4 is not used"),
                        Basis.read("Statics of an inclined plane, public reference page", "shear σ sin θ cos θ, normal σ sin² θ")),
                "width=5-1/2in depth=5-1/2in slope=1:8 axial=1200lb", ScarfFigure::work);
    }

    private static void work(Inputs in, Answer.Sheet out) {
        double width = in.own("width"), depth = in.own("depth"), slope = 1 / in.own("slope");
        Section section = Section.rectangle(0, width, 0, depth);
        double even = in.own("axial") / section.areaMm2(), bent = Math.abs(in.own("moment")) / section.sxMm3();
        out.put("length", Scarf.lengthMm(depth, slope), Kind.LENGTH).put("glueArea", Scarf.glueAreaMm2(width, depth, slope), Kind.SECTION_AREA)
                .put("areaRatio", Scarf.areaRatio(slope), Kind.NUMBER).put("efficiency", Scarf.efficiency(slope), Kind.FRACTION)
                .put("shear", Scarf.shearMPa(Math.abs(even) + bent, slope), Kind.STRESS).put("peel", Scarf.peelMPa(even + bent, slope), Kind.STRESS);
        out.beware("screening, not engineering: a scarf that bears a load is designed by a licensed engineer and made on shored, dry, sound wood");
        if (slope < 5) out.beware("steeper than 1:5 no consistent value was found: the efficiency falls on a straight line toward a square butt, on the careful side");
        else if (slope > 4.99 && slope < 8) out.beware("one source gives 0.65 at 1:4 where another gives it at 1:5: the lower reading is used");
        if (slope > 12) out.beware("flatter than 1:12 rests on one article that doubts its own source");
        if (even + bent > 0) out.beware("wood has no design value for tension square to the grain: keep the peel small, or let bolts or pegs take it");
        out.beware("the stress is taken as even; ends peak, and glued faces that wet and dry again lose more");
    }
}
