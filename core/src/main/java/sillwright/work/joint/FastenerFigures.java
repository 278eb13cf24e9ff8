package sillwright.work.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.walk.Species;

/// Figures of fasteners: `nail`, `screw`, `lag`.
public final class FastenerFigures {
    private static final List<Basis> BASIS = List.of(
            Basis.memory("NDS 2018", "ch. 12, yield-limit equations; IIIs confirmed by 180 table cells that were read, IV by one, the other modes by none"),
            Basis.memory("NDS 2018", "12.3.3, bearing strength to 50 psi; penetration 10 D (lags 8 D) for the whole value, least 6 D (lags 4 D)"));

    private FastenerFigures() {}

    public static List<Figure> all() { return List.of(nail(), screw(), lag()); }

    private static List<Key> keys(Key first, Key... more) {
        List<Key> keys = new ArrayList<>(List.of(first));
        keys.add(Key.of("length", Kind.LENGTH, "whole length under the head").within("10mm", "600mm"));
        keys.add(Key.of("side", Kind.LENGTH, "thickness of the side member, next to the head").within("2mm", "300mm"));
        keys.add(Key.text("sideSpecies", "wood of the side member, or a combination such as douglas-fir-larch", "pine-eastern-white").optional());
        keys.add(Key.text("mainSpecies", "wood of the main member, which holds the point", "douglas-fir-coast").optional());
        keys.add(Key.of("sideG", Kind.NUMBER, "specific gravity of the side member, in place of the species' own").within(0.25, 0.8).optional());
        keys.add(Key.of("mainG", Kind.NUMBER, "specific gravity of the main member, in place of the species' own").within(0.25, 0.8).optional());
        keys.addAll(List.of(more));
        return keys;
    }

    private static Map<String, String> gives(String... more) {
        var gives = Figure.gives("Z", "reference lateral value of one fastener", "mode", "how it yields: Im Is II IIIm IIIs IV",
                "W", "reference withdrawal value for each length in the main member", "penetration", "into the main member, counted for Z");
        gives.putAll(Figure.gives(more));
        return gives;
    }

    private static Figure nail() {
        return new Figure("nail", "work", "What one common nail bears sideways, and what draws it out.",
                keys(Key.of("diameter", Kind.LENGTH, "of the shank, under 1/4 in").within("0.099in", "0.249in"),
                        Key.yesNo("toe", "driven aslant from a third of its length up, at 30° to the member")),
                gives(), with(Basis.read("NDS 2018, secondary", "Table I1, bending yield strength of common nails"),
                        Basis.read("Published worked example", "withdrawal 1380 G^2.5 D")),
                "diameter=0.148in length=3in side=3/4in sideSpecies=pine-eastern-white mainSpecies=douglas-fir-coast", FastenerFigures::nail);
    }

    private static void nail(Inputs in, Answer.Sheet out) {
        Hold.Driven driven = driven(in, out);
        boolean toe = in.yes("toe");
        Hold hold = toe ? Hold.toeNail(driven) : Hold.nail(driven);
        enough(in, hold.deepMm(), Hold.LEAST_THIN * driven.diameterMm());
        put(out, hold);
        if (toe) out.beware("toe-nailed: W counts for each length of nail in the main member, which is more than its square depth");
        out.beware("a nail drawn along the grain (end grain) counts for nothing in withdrawal; where wood wets and dries again a quarter of W is left");
        out.beware("keep from splitting: 15 diameters from an end in tension without a lead hole, 10 with one");
    }

    private static Figure screw() {
        return new Figure("screw", "work", "What one wood screw bears sideways, and what draws it out.",
                keys(Key.of("diameter", Kind.LENGTH, "by name: #8 0.164in, #10 0.190in, #12 0.216in, #14 0.242in").within("0.099in", "0.249in"),
                        Key.of("rootDiameter", Kind.LENGTH, "under the thread: #8 0.131in, #10 0.152in, #12 0.171in, #14 0.196in").within("0.06in", "0.249in")),
                gives("ZByRoot", "lateral value with the divisor by the root instead"),
                with(Basis.memory("NDS 2018", "wood screws: yield as nails by diameter by name; withdrawal 2850 G² D"),
                        Basis.own("the divisor KD is taken by the diameter by name, the lower of two readings that are not settled")),
                "diameter=0.19in rootDiameter=0.152in length=3in side=3/4in sideSpecies=pine-eastern-white mainSpecies=douglas-fir-coast",
                FastenerFigures::screw);
    }

    private static void screw(Inputs in, Answer.Sheet out) {
        if (in.own("rootDiameter") > in.own("diameter"))
            throw in.refuse("rootDiameter", "{} is more than the diameter, {}", "measure it under the thread", in.quantity("rootDiameter"), in.quantity("diameter"));
        Hold.Driven driven = driven(in, out);
        enough(in, driven.deepMm(), Hold.LEAST_THIN * driven.diameterMm());
        Hold hold = Hold.screw(driven, in.own("rootDiameter"));
        put(out, hold);
        out.put("ZByRoot", hold.byRootN(), Kind.FORCE);
        out.beware("which diameter sets the divisor for wood screws is not settled: Z is by the diameter by name, the lower; ZByRoot by the root");
        out.beware("W counts the thread in the main member only, about two thirds of the length; none from end grain");
    }

    private static Figure lag() {
        return new Figure("lag", "work", "What one lag screw bears sideways, and what draws it out.",
                keys(Key.of("diameter", Kind.LENGTH, "by name: 1/4in, 5/16in, 3/8in, 7/16in, 1/2in, 5/8in or 3/4in").within("1/4in", "3/4in"),
                        Key.of("angleSide", Kind.ANGLE, "load to the grain of the side member").within(0, 90).or("0deg"),
                        Key.of("angleMain", Kind.ANGLE, "load to the grain of the main member").within(0, 90).or("0deg")),
                gives("root", "diameter under the thread"),
                with(Basis.read("NDS 2015/2018", "Table 12K, 180 cells, and Table 12.2A, 139 cells, all met"), Basis.read("NDS, secondary", "Table L2, root and tip")),
                "diameter=3/8in length=4in side=1-1/2in sideSpecies=douglas-fir-coast mainSpecies=douglas-fir-coast", FastenerFigures::lag);
    }

    private static void lag(Inputs in, Answer.Sheet out) {
        Fastener.Lag lag = Fastener.lag(in.own("diameter")).orElseThrow(() -> in.refuse("diameter", "{} is not a size of lag screw in the table",
                "use 1/4in, 5/16in, 3/8in, 7/16in, 1/2in, 5/8in or 3/4in", in.quantity("diameter")));
        Hold.Driven driven = driven(in, out);
        enough(in, driven.deepMm() - lag.tipMm(), Hold.LEAST_LAG * lag.nominalMm());
        put(out, Hold.lag(driven, lag, in.own("angleSide"), in.own("angleMain")));
        out.put("root", lag.rootMm(), Kind.LENGTH);
        out.beware("W counts the thread in the main member only, without its tip; three quarters of it in end grain");
        out.beware("bore lead holes: 40 to 70 % of the diameter for the thread in soft wood, more in hard, the whole diameter for the shank");
    }

    private static List<Basis> with(Basis... more) {
        List<Basis> all = new ArrayList<>(BASIS);
        all.addAll(List.of(more));
        return all;
    }

    private static double gravity(Inputs in, Answer.Sheet out, String member) {
        String given = member + "G", species = member + "Species";
        if (in.has(given)) return in.own(given);
        if (!in.has(species)) throw in.refuse(species, "is missing", "add " + species + "=pine-eastern-white, or " + given + "=0.36");
        ConnectionGravity found = listed(in, out, species);
        out.rests(found.basis());
        return found.gravity();
    }

    /// Of the wood that is named, or where no table has it of one of its kin.
    private static ConnectionGravity listed(Inputs in, Answer.Sheet out, String species) {
        String name = in.word(species);
        try {
            ConnectionGravity found = ConnectionGravity.of(name);
            if (!found.assigned()) out.beware("the table of connections has no " + name + ": its oven-dry gravity, rounded down, stands in");
            return found;
        } catch (Refused refused) {
            if (!Species.hasKin(name)) throw in.refuse(species, refused);
            Species.Taken taken = Species.taken(name);
            taken.caution().ifPresent(out::beware);
            return ConnectionGravity.of(taken.species().name());
        }
    }

    private static void enough(Inputs in, double deepMm, double leastMm) {
        if (deepMm < leastMm - 1e-9)
            throw in.refuse("length", "{} goes {} into the main member, where {} is the least that counts", "use a longer fastener or a thinner side member",
                    in.quantity("length"), new Answer.Measured(Math.max(0, deepMm), Kind.LENGTH), new Answer.Measured(leastMm, Kind.LENGTH));
    }

    private static Hold.Driven driven(Inputs in, Answer.Sheet out) {
        return new Hold.Driven(in.own("diameter"), in.own("length"), in.own("side"), gravity(in, out, "side"), gravity(in, out, "main"));
    }

    private static void put(Answer.Sheet out, Hold hold) {
        out.put("Z", hold.lateralN(), Kind.FORCE).put("mode", hold.mode().word()).put("W", hold.outNPerMm(), Kind.WITHDRAWAL).put("penetration", hold.deepMm(), Kind.LENGTH);
        if (hold.mode() != YieldLimit.Mode.IIIS && hold.mode() != YieldLimit.Mode.IV)
            out.beware("mode " + hold.mode().word() + " governs: its equation is from memory and no table cell that was read confirms it");
        out.beware("reference values for dry sound wood and ten years' load; soft wood holds nothing: a licensed engineer settles load, duration, "
                + "wet service and spacing where a life hangs on it");
    }
}
