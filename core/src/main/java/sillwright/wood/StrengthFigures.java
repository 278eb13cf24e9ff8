package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.Beam;
import sillwright.wood.strength.Bearing;
import sillwright.wood.strength.Buckling;
import sillwright.wood.strength.Combined;
import sillwright.wood.strength.DesignValues;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Grade;
import sillwright.wood.strength.Post;
import sillwright.wood.strength.Use;

/// Figures of what wood bears: `column`, `beam`, `bearing`.
final class StrengthFigures {
    private static final String SCREENING = "screening, not engineering: sound wood of the grade named is taken for all that is left; load-bearing work goes to a licensed "
            + "engineer, and what is in doubt is shored before it is touched";
    private static final String OVER = "more than it may bear by these equations: stop, keep people off, shore it, and call a licensed engineer";

    private StrengthFigures() {}

    static List<Figure> all() { return List.of(column(), beam(), bearing()); }

    private static List<Key> keys(Key span, List<Key> losses, Key... more) {
        List<Key> keys = new ArrayList<>(List.of(species(),
                Key.oneOf("grade", "as a grader would mark it; of old wood no2 is the prudent start", words(Grade.values())),
                Key.of("width", Kind.LENGTH, "size of the whole section, left to right").within("1/2in", "24in"),
                Key.of("depth", Kind.LENGTH, "size of the whole section, front to back; of a beam its upright side").within("1/2in", "24in"), span));
        keys.addAll(losses);
        keys.addAll(List.of(more));
        keys.add(Key.oneOf("duration", "how long the whole load stays: ten years is normal", words(Duration.values())).or("normal"));
        keys.add(Key.yesNo("wet", "in use wetter than 19 %"));
        return keys;
    }

    private static Key species() { return Key.text("species", "the wood, or a group of the design tables such as douglas-fir-larch", "pine-eastern-white"); }

    private static String[] words(Grade[] grades) { return List.of(grades).stream().map(Grade::word).toArray(String[]::new); }

    private static String[] words(Duration[] durations) { return List.of(durations).stream().map(Duration::word).toArray(String[]::new); }

    private static Key loss(String face, String which) { return Key.of(face, Kind.LENGTH, "depth lost from the " + which).within("0mm", "24in").or("0in"); }

    private static Figure column() {
        return new Figure("column", "wood", "What a post bears with wood lost from its faces.",
                keys(Key.of("length", Kind.SPAN, "between the points that hold it from going sideways").within("1in", "40ft"),
                        List.of(loss("left", "left"), loss("right", "right"), loss("front", "front"), loss("back", "back")),
                        Key.of("load", Kind.FORCE, "along the post").within("0lb", "500kip"),
                        Key.of("ecc", Kind.LENGTH, "how far the load stands off the middle of the whole section, the way that harms most").within("0in", "24in").or("0in")),
                Figure.gives("Cp", "share of the strength along the grain that slenderness leaves", "allowable", "what it may be pressed to, Fc′",
                        "capacity", "load at which the utilisation is 1", "utilisation", "the greater of the unity sum and stress over allowable; more than 1 is too much",
                        "stress", "load over the area left", "unity", "sum of pressing, squared, and bending by the load off the middle",
                        "slenderness", "length over the side of the rectangle that buckles alike; 50 is the most",
                        "foot", "stress over what end grain may bear, if the foot has lost as much"),
                List.of(Basis.memory("NDS 2018", "3.7.1 column stability, 3.10.1 end bearing, 15.4.1 load off the middle; the first confirmed by worked examples that were read"),
                        Adjusted.BASIS, Duration.BASIS),
                "species=douglas-fir-coast grade=no2 width=5-1/2in depth=5-1/2in length=8ft right=1in load=1440lb duration=snow", StrengthFigures::column);
    }

    private static void column(Inputs in, Answer.Sheet out) {
        Section.Kept kept = kept(in, "column");
        Post post = Bearer.post(kept.whole(), kept.rest(), in.own("length"), adjusted(in, out));
        double load = in.own("load"), off = in.own("ecc");
        Combined state = post.under(load, off);
        double use = Math.min(Combined.BEYOND, Math.max(state.unity(), state.press()));
        out.put("Cp", post.cp(), Kind.NUMBER).put("allowable", post.allowedMPa(), Kind.STRESS).put("capacity", post.capacityN(off), Kind.FORCE)
                .put("utilisation", use, Kind.NUMBER).put("stress", state.pressMPa(), Kind.STRESS).put("unity", state.unity(), Kind.NUMBER)
                .put("slenderness", post.slender(), Kind.NUMBER).put("foot", post.foot(load), Kind.NUMBER);
        out.beware(SCREENING);
        if (use > 1) out.beware(OVER);
        if (use >= Combined.BEYOND) out.beware("99 stands for a load that buckles it whatever its strength");
        out.beware("both ends are taken as held from going sideways and free to turn (Ke 1); one that leans or stands free bears far less");
        if (kept.area() < 1) out.beware("the loss is taken as even over the face and along the whole length, and the load as standing where it stood before: "
                + "the wood that is left is bent as well as pressed");
        if (post.slender() > Buckling.MOST_SLENDER) out.beware("more slender than 50, the code's limit: do not rely on it");
        if (post.foot(load) > Bearing.NEEDS_PLATE) out.beware("above 0.75 at the foot a rigid metal plate must spread the load over the end grain");
        flat(in, out);
    }

    private static Figure beam() {
        return new Figure("beam", "wood", "What a beam on two supports bears with wood lost from its faces.",
                keys(Key.of("span", Kind.SPAN, "between supports").within("1in", "40ft"),
                        List.of(loss("left", "left"), loss("right", "right"), loss("front", "bottom, the front of the section as drawn"), loss("back", "top, the back of the section as drawn")),
                        Key.of("load", Kind.LINE_LOAD, "for each length, spread evenly, its own weight with it").within("0lb/ft", "20000lb/ft")),
                Figure.gives("bending", "greatest bending stress", "shear", "greatest shear stress", "deflection", "how far the middle goes down, at once",
                        "utilisation", "the greater of bending and shear over what they may be; more than 1 is too much",
                        "allowableBending", "Fb′", "allowableShear", "Fv′", "CL", "share of the bending strength that tipping sideways leaves",
                        "capacity", "load for each length at which the utilisation is 1", "spanOver", "span over deflection; 360 is usual beneath plaster, 240 for a roof"),
                List.of(Basis.memory("NDS 2018", "3.3.3 beam stability, 3.4.2 shear; the first confirmed by worked examples that were read"), Adjusted.BASIS, Duration.BASIS,
                        Basis.memory("Texts on strength of materials", "wl²/8, 3V/2A, 5wl⁴/384EI")),
                "species=douglas-fir-coast grade=no2 width=3-1/2in depth=9-1/4in span=8ft load=180lb/ft", StrengthFigures::beam);
    }

    private static void beam(Inputs in, Answer.Sheet out) {
        Section.Kept kept = kept(in, "beam");
        Adjusted wood = adjusted(in, out);
        Beam beam = Bearer.beam(kept.whole(), kept.rest(), in.own("span"), true, wood);
        double load = in.own("load"), sag = beam.sagMm(load), use = beam.greatest(load);
        out.put("bending", beam.bentMPa(load), Kind.STRESS).put("shear", beam.shearMPa(load), Kind.STRESS).put("deflection", sag, Kind.LENGTH)
                .put("utilisation", use, Kind.NUMBER).put("allowableBending", beam.allowedBendingMPa(), Kind.STRESS).put("allowableShear", wood.shearMPa(), Kind.STRESS)
                .put("CL", beam.cl(), Kind.NUMBER).put("capacity", beam.capacityNPerMm(), Kind.LINE_LOAD);
        if (load > 0) out.put("spanOver", in.own("span") / sag, Kind.NUMBER);
        out.beware(SCREENING);
        if (use > 1) out.beware(OVER);
        out.beware("nothing is counted as holding its top edge from going sideways; a floor nailed down on it does (CL 1). Its bearings, notches and bolts are checked apart");
        if (sag > in.own("span") / 240) out.beware("it sags more than a 240th of the span at once; under years of load half as much again, and twice that when wet");
        if (kept.area() < 1) out.beware("the loss is taken as even over the face and along the whole span");
        if (kept.shiftXMm() != 0) out.beware("loss on one side twists it as well: that is not counted");
        if (beam.slender() > Buckling.MOST_SLENDER) out.beware("more slender than the code allows (RB above 50): do not rely on it");
        flat(in, out);
    }

    private static Section.Kept kept(Inputs in, String figure) {
        try {
            return Section.left(in.own("width"), in.own("depth"), in.own("front"), in.own("back"), in.own("left"), in.own("right"));
        } catch (Refused refused) {
            throw refused.at("figure " + figure);
        }
    }

    private static Adjusted adjusted(Inputs in, Answer.Sheet out) {
        DesignValues values = values(in, out, Grade.of(in.word("grade")), in.own("width"), in.own("depth"));
        return Adjusted.of(values, in.own("width"), in.own("depth"), Adjusted.Service.of(Duration.of(in.word("duration")), in.yes("wet")));
    }

    private static DesignValues values(Inputs in, Answer.Sheet out, Grade grade, double widthMm, double depthMm) {
        DesignValues values;
        try {
            values = DesignValues.orKin(in.word("species"), grade, widthMm, depthMm);
        } catch (Refused refused) {
            if (refused.where().equals("grade")) throw in.refuse("grade", refused.what(Units.US), refused.mend());
            throw in.refuse("species", refused);
        }
        values.basis().forEach(out::rests);
        values.cautions().forEach(out::beware);
        return values;
    }

    private static void flat(Inputs in, Answer.Sheet out) {
        if (Use.isBoard(in.own("width"), in.own("depth"))) out.beware("a board thinner than 1-1/2 in has no design values: those of lumber stand in");
    }

    private static Figure bearing() {
        return new Figure("bearing", "wood", "What wood bears where it sits on something, or something on it.",
                List.of(species(), Key.of("width", Kind.LENGTH, "of the sound wood that touches, across the grain").within("1/8in", "24in"),
                        Key.of("length", Kind.LENGTH, "of the sound wood that touches, along the grain; of a post's foot its other side").within("1/8in", "100in"),
                        Key.of("load", Kind.FORCE, "that presses").within("0lb", "500kip")),
                Figure.gives("stress", "load over the area that touches", "utilisation", "stress over what the side grain may bear; more than 1 is too much",
                        "allowable", "of side grain, Fc⊥, as on a sill or a beam's end", "endAllowable", "of end grain, Fc of No.2, as at a post's foot on a hard seat",
                        "endUtilisation", "stress over what the end grain may bear", "plate", "true where end grain needs a rigid metal plate, above 0.75",
                        "Cb", "what a short bearing more than 3 in from the end of the piece may be counted for; not counted here"),
                List.of(Basis.memory("NDS 2018", "3.10: bearing along and across the grain, Cb")),
                "species=pine-eastern-white width=5-1/2in length=5-1/2in load=1440lb", StrengthFigures::bearing);
    }

    private static void bearing(Inputs in, Answer.Sheet out) {
        double lumber = 50, timber = 150, across = Double.MAX_VALUE, along = Double.MAX_VALUE;
        for (double side : new double[] {lumber, timber}) {
            DesignValues values = values(in, out, Grade.NO2, side, side);
            across = Math.min(across, values.acrossMPa());
            along = Math.min(along, values.alongMPa());
        }
        double stress = in.own("load") / (in.own("width") * in.own("length")), end = stress / along;
        out.put("stress", stress, Kind.STRESS).put("utilisation", stress / across, Kind.NUMBER).put("allowable", across, Kind.STRESS)
                .put("endAllowable", along, Kind.STRESS).put("endUtilisation", end, Kind.NUMBER).put("plate", end > Bearing.NEEDS_PLATE)
                .put("Cb", Bearing.helped(in.own("length"), Double.MAX_VALUE), Kind.NUMBER);
        out.beware(SCREENING);
        out.beware("the lesser of lumber and timbers, No.2, dry, ten years of load; in use wetter than 19 % count " + Words.percent(0.67)
                + " of the side grain and 80 % of the end grain. Softened wood bears nothing: measure only what is sound");
        if (stress > across) out.beware("more than side grain may bear: it crushes and the load goes down; spread it, shore it, and ask a licensed engineer");
        if (end > 1) out.beware(OVER);
    }
}
