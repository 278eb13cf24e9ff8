package sillwright.work;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;

/// Figures of the day on site: `lead-safe`, `paint-window`.
final class SiteFigures {
    private SiteFigures() {}

    static List<Figure> all() { return List.of(leadSafe(), paintWindow()); }

    private static Figure leadSafe() {
        return new Figure("lead-safe", "work", "What the federal lead rule asks of a job, and how far its ground cover goes.",
                List.of(Key.of("built", Kind.NUMBER, "year the building was built").within(1500, 2200),
                        Key.of("area", Kind.AREA, "painted surface disturbed: outside the whole job, inside one room").within("0ft2", "100000ft2"),
                        Key.oneOf("side", "where the work is", "exterior", "interior"),
                        Key.of("windows", Kind.NUMBER, "windows replaced").within(0, 1000).or("0"),
                        Key.of("toLine", Kind.SPAN, "from the surfaces worked on to the property line").within("0ft", "10000ft").optional(),
                        Key.of("height", Kind.SPAN, "of the highest work above the ground").within("0ft", "300ft").optional(),
                        Key.of("length", Kind.SPAN, "of the wall worked on, along the ground").within("0ft", "1000ft").optional(),
                        Key.of("wind", Kind.WIND, "wind on the day").within("0mph", "150mph").optional()),
                Figure.gives("covered", "whether the rule covers the job", "groundCover",
                        "how far the ground (inside: floor) cover reaches; nothing where the rule asks for none",
                        "verticalBarrier", "whether a vertical barrier is wanted", "duties", "each with its section",
                        "closeWithin", "doors and windows so near are kept closed, outside; nothing where the rule asks for none",
                        "sheetArea", "ground sheeting outside, from the wall, with its ends",
                        "ladderOut", "how far the foot of a ladder to that height stands out", "ladderAngle", "of that ladder from the ground", "ladderLength", "from its foot to 3 ft (0.9 m) above that height, where it is tied"),
                List.of(), "built=1912 area=35ft2 side=exterior toLine=8ft height=18ft length=24ft wind=12mph", SiteFigures::leadSafe);
    }

    private static void leadSafe(Inputs in, Answer.Sheet out) {
        double built = in.own("built"), windows = in.own("windows");
        if (built != Math.rint(built)) throw in.refuse("built", "{} is not a year", "write the year, such as built=1912", in.quantity("built"));
        if (windows != Math.rint(windows)) throw in.refuse("windows", "{} is not a whole number", "count the windows, such as windows=2", in.quantity("windows"));
        LeadSafe.Plan plan = LeadSafe.plan(new LeadSafe.Job((int) built, in.own("area"), in.word("side").equals("exterior"), (int) windows,
                in.own("toLine", Double.POSITIVE_INFINITY), in.own("height", 0), in.own("wind", 0)));
        out.put("covered", plan.covered()).put("groundCover", plan.coverMm(), Kind.SPAN).put("verticalBarrier", plan.barrier())
                .put("duties", plan.duties().isEmpty() ? "none under the federal lead rule" : String.join("; ", plan.duties()));
        out.put("closeWithin", plan.covered() && in.word("side").equals("exterior") ? LeadSafe.CLOSE_MM : 0, Kind.SPAN);
        if (in.has("length") && in.word("side").equals("exterior")) out.put("sheetArea", plan.covered() ? plan.coverMm() * (in.own("length") + 2 * LeadSafe.COVER_MM) : 0, Kind.AREA);
        if (in.has("height")) {
            double height = in.own("height");
            out.put("ladderOut", height * LeadSafe.LADDER_OUT, Kind.SPAN).put("ladderAngle", Math.toDegrees(Math.atan(1 / LeadSafe.LADDER_OUT)), Kind.ANGLE)
                    .put("ladderLength", Math.hypot(1, LeadSafe.LADDER_OUT) * (height + LeadSafe.LADDER_ABOVE_MM), Kind.SPAN);
        }
        if (plan.covered() && in.word("side").equals("exterior") && !in.has("toLine"))
            out.beware("the distance to the property line was not given: within 10 ft (3.05 m) of it a vertical barrier is wanted");
        plan.cautions().forEach(out::beware);
        plan.basis().forEach(out::rests);
    }

    private static Figure paintWindow() {
        return new Figure("paint-window", "work", "Whether it is weather for paint.",
                List.of(Key.of("air", Kind.TEMPERATURE, "air temperature").within("-30C", "60C"),
                        Key.of("surface", Kind.TEMPERATURE, "temperature of the wood's face").within("-30C", "90C"),
                        Key.of("rh", Kind.PERCENT, "relative humidity of the air").within("1%", "100%"),
                        Key.of("mc", Kind.PERCENT, "moisture of the wood").within("0%", "200%"),
                        Key.of("min", Kind.TEMPERATURE, "least temperature the paint allows").within("-10C", "32C").or("50F")),
                Figure.gives("ok", "whether nothing speaks against it", "margin", "surface over dew point", "reasons", "what speaks against it"),
                List.of(Basis.read("Wood Handbook, ch. 16", "latex at 50 °F or more, and staying so 24 h"),
                        Basis.read("Why House Paint Fails, Forest Products Laboratory", "not above 90 °F; two hours to dry before dew"),
                        Basis.memory("ISO 8502-4; Preservation Brief 10; makers' sheets", "surface 5 °F over dew point, 85 % humidity, wood at 15 to 16 %")),
                "air=62F surface=60F rh=55% mc=13%", SiteFigures::paintWindow);
    }

    private static void paintWindow(Inputs in, Answer.Sheet out) {
        PaintWindow.Verdict verdict = PaintWindow.judge(in.own("air"), in.own("surface"), in.own("rh"), in.own("mc"), in.own("min"));
        out.put("ok", verdict.ok()).put("margin", verdict.marginC(), Kind.DIFFERENCE)
                .put("reasons", verdict.reasons().isEmpty() ? "none" : String.join("; ", verdict.reasons()));
        verdict.cautions().forEach(out::beware);
        if (in.own("min") < PaintWindow.LEAST_C) out.beware("a least temperature below 50 °F (10 °C) is the maker's word: keep to its sheet for the night as well");
        out.beware("it must stay so: a night that falls to the dew point, or rain, before the film is dry undoes it");
        out.beware("paint of before 1978 may hold lead: test it before it is scraped or sanded");
    }
}
