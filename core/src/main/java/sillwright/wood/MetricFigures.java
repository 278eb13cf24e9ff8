package sillwright.wood;

import java.util.Arrays;
import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.walk.Choice;
import sillwright.wood.strength.Eurocode;

/// The figure `column-en`: a post by limit states, beside `column` by allowable stress.
final class MetricFigures {
    private MetricFigures() {}

    static List<Figure> all() { return List.of(column()); }

    private static Key size(String name, String which) { return Key.of(name, Kind.LENGTH, "size of the whole section, " + which).within("10mm", "600mm"); }

    private static Key loss(String face) { return Key.of(face, Kind.LENGTH, "depth lost from the " + face).within("0mm", "600mm").or("0mm"); }

    private static Figure column() {
        return new Figure("column-en", "wood", "What a post bears by the European limit states, with wood lost from its faces.",
                List.of(Key.oneOf("class", "strength class of EN 338", Eurocode.classes().keySet().toArray(String[]::new)), size("width", "left to right"),
                        size("depth", "front to back"), Key.of("length", Kind.LENGTH, "between the points that hold it from going sideways").within("100mm", "12m"),
                        Key.of("load", Kind.FORCE, "design load along the post, partial factors in it").within("0N", "2000kN"), loss("left"), loss("right"), loss("front"), loss("back"),
                        Key.oneOf("stays", "how long the shortest load stays", Choice.words(Eurocode.Stays.class).toArray(String[]::new)).or("medium"),
                        Key.oneOf("service", "class: 1 heated, 2 sheltered, 3 open to the weather", "1", "2", "3").or("3")),
                Figure.gives("kc", "share of the strength that slenderness leaves, by the weaker axis", "allowable", "design strength along the grain, with kc", "stress", "load over the area left",
                        "utilisation", "pressing and bending together; more than 1 is too much", "slenderness", "relative slenderness of the weaker axis", "kmod", "for duration and moisture"),
                List.of(Basis.read("EN 1995-1-1, on public pages of worked examples", "6.3.2 kc; table 3.1 kmod, secondary"), Basis.memory("EN 1995-1-1", "6.3.2, pressed and bent: eq. 6.23 and 6.24"),
                        Basis.read("EN 338 (2003), secondary", "strength classes")),
                "class=C16 width=125mm depth=125mm length=2.4m load=12kN right=20mm", MetricFigures::work);
    }

    private static void work(Inputs in, Answer.Sheet out) {
        Section.Kept kept;
        try {
            kept = Section.left(in.own("width"), in.own("depth"), in.own("front"), in.own("back"), in.own("left"), in.own("right"));
        } catch (Refused refused) {
            throw refused.at("figure column-en");
        }
        Section rest = kept.rest();
        Eurocode.Strengths wood = Eurocode.classes().get(in.word("class"));
        Eurocode.Stays stays = Arrays.stream(Eurocode.Stays.values()).filter(one -> Choice.word(one).equals(in.word("stays"))).findFirst().orElseThrow();
        int service = Integer.parseInt(in.word("service"));
        double along = Eurocode.designMPa(wood.alongMPa(), stays, service), bending = Eurocode.designMPa(wood.bendingMPa(), stays, service), load = in.own("load");
        double relativeX = relative(in.own("length"), rest.ixMm4(), rest, wood), relativeY = relative(in.own("length"), rest.iyMm4(), rest, wood);
        double kcX = Eurocode.column(relativeX), kcY = Eurocode.column(relativeY), kc = Math.min(kcX, kcY), stress = load / rest.areaMm2();
        double use = Eurocode.combined(stress / along, kcX, kcY, load * Math.abs(kept.shiftYMm()) / rest.sxMm3() / bending, load * Math.abs(kept.shiftXMm()) / rest.syMm3() / bending);
        out.put("kc", kc, Kind.NUMBER).put("allowable", kc * along, Kind.STRESS).put("stress", stress, Kind.STRESS).put("utilisation", use, Kind.NUMBER)
                .put("slenderness", Math.max(relativeX, relativeY), Kind.NUMBER).put("kmod", Eurocode.kmod(stays, service), Kind.NUMBER);
        out.beware("screening, not engineering: all that is left is taken as sound wood of the class named; load-bearing work goes to a licensed engineer, and what is in doubt is shored first");
        if (use > 1) out.beware("more than it may bear by these equations: stop, keep people off, shore it, and call a licensed engineer");
        out.beware("both ends are taken as held from going sideways and free to turn; national annexes may change factors");
        if (kept.area() < 1) out.beware("the loss is taken as even over the face and along the whole length, and the load as standing where it stood before");
    }

    private static double relative(double lengthMm, double inertiaMm4, Section section, Eurocode.Strengths wood) {
        return Eurocode.slenderness(lengthMm / Math.sqrt(inertiaMm4 / section.areaMm2()), wood.alongMPa(), wood.elastic05MPa());
    }
}
