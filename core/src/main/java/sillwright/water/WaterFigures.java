package sillwright.water;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Answer;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.walk.Choice;
import sillwright.walk.Side.GutterShape;
import sillwright.walk.Side.Surface;
import sillwright.water.DrivingRain.Cover;
import sillwright.water.DrivingRain.Exposure;
import sillwright.water.net.NetFigure;

/// The figures of the water stage.
public final class WaterFigures {
    private WaterFigures() {}

    static final String HEIGHTS = "screening only; gutter work is work at height: a ladder or scaffold set and tied as the local rules ask";

    /// Every figure of this stage.
    public static List<Figure> all() { return List.of(gutter(), downspout(), drivingRain(), splash(), ColdFigure.coldWall(), NetFigure.net()); }

    private static Key roof() { return Key.of("roofArea", Kind.AREA, "roof that drains to it, on plan").within("1ft2", "100000ft2"); }

    private static Key rain() { return Key.of("rain", Kind.RAIN, "rate of the design rain").within("0.01in/h", "20in/h"); }

    private static Figure gutter() {
        return new Figure("gutter", "water", "Does this gutter carry this roof in this rain?", List.of(
                Key.oneOf("shape", "section of the gutter", words(GutterShape.class)),
                Key.of("size", Kind.LENGTH, "diameter of a half-round, else width at the top").within("1in", "24in"),
                Key.of("depth", Kind.LENGTH, "depth of a rectangular or ogee gutter; three quarters of its width where left out").within("1/2in", "24in").optional(),
                Key.of("slope", Kind.FALL, "fall along the run; 0in/ft for a level or sagging one").within("0in/ft", "3in/ft"),
                roof(), rain(),
                Key.of("pitch", Kind.PITCH, "pitch of the roof").within("0/12", "24/12").or("0/12"),
                Key.of("length", Kind.SPAN, "run from the high end to the outlet; 30 ft where left out").within("1ft", "200ft").optional()),
                gives("inflow", "what the roof sends in this rain", "capacity", "what the gutter carries, by the rule of its shape",
                        "ratio", "inflow over capacity", "overflows", "true where more comes than it carries",
                        "levelCapacity", "by the level-gutter formula alone", "newerTable", "by the code table of 2015 and after, where that lists this size and fall",
                        "fullBore", "of the full section running down its fall", "noFriction", "the most a level gutter could carry without friction",
                        "cloggedMinutes", "minutes of this rain until it overflows with its outlet shut, where the length is given"),
                List.of(RoofWater.INFLOW, RoofWater.PITCH, Gutters.LEVEL), "shape=half-round size=5in slope=1/8in/ft roofArea=450ft2 rain=4in/h pitch=8/12 length=30ft",
                WaterFigures::workGutter);
    }

    private static void workGutter(Inputs in, Answer.Sheet out) {
        GutterShape shape = Choice.of(GutterShape.class, in.word("shape"));
        boolean halfRound = shape == GutterShape.HALF_ROUND;
        double size = in.own("size"), fall = in.own("slope"), run = in.own("length", Gutters.STANDING_RUN_MM), pitch = in.own("pitch");
        var section = Gutters.Section.of(shape, size, in.has("depth") ? Optional.of(in.own("depth")) : Optional.empty());
        double inflow = RoofWater.inflowLs(in.own("roofArea"), in.own("rain"), pitch), capacity = Gutters.capacityLs(section, fall, run);
        out.put("inflow", inflow, Kind.FLOW).put("capacity", capacity, Kind.FLOW).put("ratio", inflow / capacity, Kind.NUMBER)
                .put("overflows", over(inflow, capacity)).put("levelCapacity", Gutters.levelLs(section, run), Kind.FLOW);
        Gutters.newerTableLs(section, fall).ifPresent(newer -> out.put("newerTable", newer, Kind.FLOW).rests(Gutters.NEWER_TABLE));
        out.put("fullBore", Gutters.fullBoreLs(section, fall), Kind.FLOW).put("noFriction", Gutters.noFrictionLs(section), Kind.FLOW)
                .rests(Gutters.MANNING).rests(Gutters.NO_FRICTION);
        if (in.has("length")) out.put("cloggedMinutes", 60 * Gutters.minutesToOverflow(section, run, inflow), Kind.MINUTES);
        out.beware(HEIGHTS);
        if (halfRound) {
            out.rests(Gutters.OLDER_TABLE);
            if (in.has("depth") && Math.abs(in.own("depth") - size / 2) > 0.01 * size)
                out.beware("a half-round gutter is half as deep as it is wide: the depth given is not used");
            if (fall < Gutters.FIRST_FALL - 1e-9) out.beware("the code table begins at a fall of 1/16 in/ft: below it the gutter is counted as level");
            if (fall > 1 / 24.0 + 1e-9) out.beware("the code table ends at a fall of 1/2 in/ft: beyond it √2 for each doubling is carried on");
            if (size < 76.2 - 0.1 || size > 254 + 0.1) out.beware("the code table knows diameters from 3 to 10 in: beyond them its formula is carried on");
        } else {
            if (shape == GutterShape.OGEE) out.rests(Gutters.OGEE);
            if (!in.has("depth")) out.beware("no depth was given: three quarters of the width is taken, a common section; measure it");
            if (!in.has("length")) out.beware("no run was given: 30 ft is taken; a longer run carries less, as the 0.3 power");
            if (fall > 0) out.beware("the level-gutter formula leaves the fall out of account: the gutter carries somewhat more");
        }
        if (pitch > 1 + 1e-9) out.beware("steeper than 12 in 12 the table of pitch factors says only 1.3; EN 12056-3, which adds half the roof's height, would ask more");
        out.beware("a code's table and its design rain are local law: ask which edition holds");
    }

    private static Figure downspout() {
        return new Figure("downspout", "water", "Does this downspout carry this roof in this rain?", List.of(
                Key.of("size", Kind.LENGTH, "diameter of a round one, else one side").within("1in", "12in"),
                Key.of("size2", Kind.LENGTH, "the other side of a rectangular one").within("1in", "12in").optional(), roof(), rain(),
                Key.of("pitch", Kind.PITCH, "pitch of the roof").within("0/12", "24/12").or("0/12")),
                gives("inflow", "what the roof sends in this rain", "capacity", "what the downspout carries: by the code's table where it lists the size, else by the rule of its area",
                        "ratio", "inflow over capacity", "overflows", "true where more comes than it carries", "byRule", "1 in² serves 1,200 ft² at 1 in/h",
                        "byTable", "by the code's table of vertical leaders, where that lists the size", "thirdFull", "a round pipe a third full, 2 to 6 in"),
                List.of(RoofWater.INFLOW, RoofWater.PITCH, Downspouts.RULE), "size=3in roofArea=900ft2 rain=4in/h", (in, out) -> {
                    double size = in.own("size");
                    Optional<Double> other = in.has("size2") ? Optional.of(in.own("size2")) : Optional.empty();
                    double inflow = RoofWater.inflowLs(in.own("roofArea"), in.own("rain"), in.own("pitch")), capacity = Downspouts.capacityLs(size, other);
                    out.put("inflow", inflow, Kind.FLOW).put("capacity", capacity, Kind.FLOW).put("ratio", inflow / capacity, Kind.NUMBER)
                            .put("overflows", over(inflow, capacity)).put("byRule", Downspouts.ruleLs(Downspouts.areaMm2(size, other)), Kind.FLOW);
                    Downspouts.tableLs(size, other).ifPresent(listed -> out.put("byTable", listed, Kind.FLOW).rests(Downspouts.basis(size, other)));
                    if (other.isEmpty() && size >= 50 && size <= 153)
                        out.put("thirdFull", Downspouts.thirdFullLs(size), Kind.FLOW).rests(Downspouts.THIRD_FULL);
                    if (Downspouts.row(size, other).isEmpty()) out.beware("the code's table does not list this size: the rule of area stands in, which is kind to pipes under 3 in");
                    out.beware("clean, upright and open at its foot: an elbow choked with leaves carries a fraction").beware(HEIGHTS);
                });
    }

    private static Figure drivingRain() {
        return new Figure("driving-rain", "water", "How much rain does the wind drive onto this wall?", List.of(
                Key.of("rain", Kind.RAIN, "rain on level ground, per hour").within("0mm/h", "300mm/h"),
                Key.of("wind", Kind.WIND, "mean wind of the hour, 10 m up").within("0m/s", "50m/s"),
                Key.of("angle", Kind.ANGLE, "between the wind and the wall's normal; 0deg blows straight at it").within(0, 180),
                Key.of("height", Kind.SPAN, "height of the building").within("1ft", "330ft").or("16ft"),
                Key.oneOf("exposure", "how the place lies", words(Exposure.class)).or("medium"),
                Key.oneOf("cover", "what is above the wall", words(Cover.class)).or("steep-roof")),
                gives("onWall", "rain that strikes the wall", "behindCladding", "the hundredth part, taken to get behind the cladding",
                        "freeWind", "rain carried through a standing frame in the free wind, for comparison", "isoHour", "index of this hour by ISO 15927-3, for comparison"),
                List.of(DrivingRain.ASHRAE, DrivingRain.FREE_WIND, DrivingRain.DROPS, DrivingRain.ISO), "rain=4mm/h wind=6m/s angle=30deg", (in, out) -> {
                    double wind = in.own("wind"), angle = in.own("angle"), rain = in.own("rain"), height = in.own("height");
                    double onWall = DrivingRain.onWall(DrivingRain.exposureFactor(Choice.of(Exposure.class, in.word("exposure")), height),
                            Choice.of(Cover.class, in.word("cover")).factor(), wind, angle, rain);
                    out.put("onWall", onWall, Kind.FLUX).put("behindCladding", onWall / 100, Kind.FLUX)
                            .put("freeWind", rain > 0 ? DrivingRain.freeWind(wind, angle, rain) : 0, Kind.FLUX).put("isoHour", DrivingRain.isoHour(wind, angle, rain), Kind.FLUX);
                    if (angle >= 90) out.beware("the wind blows along this wall or from behind it: the formula gives nothing, an eddy may still wet it");
                    if (height > 50e3) out.beware("the table of exposure ends at 50 m");
                    if (rain > 100) out.beware("few drop-size formulas hold above 100 mm/h");
                    out.beware("factors from memory; walls of low buildings with an overhang get far less than the free wind carries");
                });
    }

    private static Figure splash() {
        return new Figure("splash", "water", "How much of the splash from the ground reaches the wood?", List.of(
                Key.of("clearance", Kind.LENGTH, "from the ground to the lowest wood").within("0in", "10ft"),
                Key.oneOf("ground", "what the rain falls on", words(Surface.class)),
                Key.of("overhang", Kind.LENGTH, "how far out from the wall the roof lets the rain reach the ground").within("0in", "20ft").or("0in"),
                Key.of("eave", Kind.SPAN, "height of a roof edge that drips here, where no gutter hangs").within("1ft", "100ft").optional()),
                gives("reach", "how high the splash comes that matters: above it goes one part in twenty", "share", "of the splash that comes as high as the wood, 0 to 1",
                        "advice", "what to do", "code", "the least clearance by the residential code", "lower", "how far the ground must go down to give what good practice asks",
                        "dripSpeed", "of the drips at the ground, where an eave is given"),
                List.of(Splash.MODEL, Splash.CODE, Splash.STANDARD, Splash.GRAVEL_LEAST, Splash.FAR_LINE), "clearance=3in ground=paving overhang=12in eave=10ft", (in, out) -> {
                    Surface ground = Choice.of(Surface.class, in.word("ground"));
                    double clearance = in.own("clearance"), overhang = in.own("overhang");
                    out.put("reach", Splash.reachMm(ground, overhang), Kind.LENGTH).put("share", Splash.share(clearance, ground, overhang), Kind.FRACTION)
                            .put("advice", Splash.advice(clearance, ground)).put("code", Splash.codeMm(ground), Kind.LENGTH)
                            .put("lower", Math.max(0, Splash.standardMm(ground) - clearance), Kind.LENGTH);
                    if (in.has("eave")) out.put("dripSpeed", Splash.dripSpeedMs(in.own("eave")), Kind.WIND).rests(Splash.DRIP_SPEED)
                            .beware("an eave without a gutter sends all its roof to one line: far more water splashes than from rain alone");
                    switch (ground) {
                        case GRAVEL -> out.beware("the standard takes coarse gravel as a reason for less height, another source calls gravel alone useless: water must sink in beneath it");
                        case GRASS, MULCH -> out.rests(Splash.CARRIES).beware(ground == Surface.MULCH
                                ? "mulch splashes little but holds damp and rises year by year: none against a foundation (Preservation Brief 47)"
                                : "no height for grass was found: the curve is this program's own choice, and thin grass counts as soil");
                        case PAVING, SOIL -> {}
                    }
                    out.beware("splash with dirt is seen to 50 cm (20 in); look at the wall in rain").beware("the curve is a model choice, not a measurement");
                });
    }

    private static boolean over(double inflow, double capacity) { return inflow > capacity * (1 + 1e-9); }

    private static <E extends Enum<E>> String[] words(Class<E> list) { return Choice.words(list).toArray(String[]::new); }

    private static Map<String, String> gives(String... pairs) {
        Map<String, String> gives = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) gives.put(pairs[i], pairs[i + 1]);
        return gives;
    }
}
