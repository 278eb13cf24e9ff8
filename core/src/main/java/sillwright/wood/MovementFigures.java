package sillwright.wood;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.walk.Species;
import sillwright.walk.SpeciesKey;
import sillwright.wood.moisture.Moisture;
import sillwright.wood.moisture.Porosity;

/// Figures of how wood swells and shrinks, and of the room inside it: `movement`, `shrink-gap`, `porosity`.
final class MovementFigures {
    private static final List<Basis> SHRINKAGE = List.of(
            Basis.memory("Wood Handbook", "ch. 13, eq. 13-2: straight between green and oven-dry"),
            Basis.read("Wood Handbook, FPL-GTR-190", "Table 13-5, hardwoods, whose coefficients the equation gives to the last digit"));

    private MovementFigures() {}

    static List<Figure> all() { return List.of(movement(), gap(), porosity()); }

    private static List<Key> piece(Key... more) {
        List<Key> keys = new ArrayList<>(List.of(
                SpeciesKey.named("the wood", "pine-eastern-white"),
                Key.of("width", Kind.LENGTH, "width across the grain at the first moisture").within("1mm", "2m"),
                Key.of("from", Kind.PERCENT, "moisture when measured or fitted").within("0%", "200%"),
                Key.of("to", Kind.PERCENT, "moisture it goes to").within("0%", "200%")));
        keys.addAll(List.of(more));
        keys.add(Key.oneOf("grain", "how it was sawn", "flat", "quarter").or("flat"));
        keys.add(SpeciesKey.gravity());
        return keys;
    }

    private static Figure movement() {
        return new Figure("movement", "wood", "How much a board changes in width between two moistures.", piece(),
                Figure.gives("change", "less than nothing when it shrinks", "shrinkage", "of its width, green to oven-dry, fraction"), SHRINKAGE,
                "species=douglas-fir-coast width=8in from=8% to=14% grain=flat", MovementFigures::movement);
    }

    private static void movement(Inputs in, Answer.Sheet out) {
        Species species = SpeciesKey.read(in, out);
        double shrinkage = Movement.shrinkage(species, grain(in));
        out.put("change", Movement.changeMm(in.own("width"), shrinkage, in.own("from"), in.own("to")), Kind.LENGTH).put("shrinkage", shrinkage, Kind.FRACTION);
        about(species, in, out);
    }

    private static Figure gap() {
        var gives = Figure.gives("gap", "between two pieces side by side, each held along its middle; less than nothing where they press",
                "gapInlaid", "about a piece inlaid in the neighbour's wood, both edges together; less than nothing where it is squeezed",
                "change", "of the piece's width",
                "neighbourChange", "of the neighbour's width");
        return new Figure("shrink-gap", "wood", "The gap that opens between a new piece and its neighbour as both come to rest.",
                piece(Key.text("neighbour", "what differs in the wood beside it, otherwise alike: its species, its width, or its moisture when the piece was fitted",
                        "pine-eastern-white, 5-1/2in or 9%")),
                gives, SHRINKAGE, "species=oak-white width=5-1/2in from=15% to=9% neighbour=pine-eastern-white", MovementFigures::gap);
    }

    private static void gap(Inputs in, Answer.Sheet out) {
        Species species = SpeciesKey.read(in, out), beside = species;
        double width = in.own("width"), from = in.own("from"), to = in.own("to"), besideMm = width, besideFrom = from;
        String neighbour = in.word("neighbour");
        boolean named = !Character.isDigit(neighbour.charAt(0)) && neighbour.charAt(0) != '.';
        if (named) beside = SpeciesKey.read(in, out, "neighbour", neighbour);
        else try {
            if (neighbour.endsWith("%")) besideFrom = Quantity.read(neighbour, Kind.PERCENT).own();
            else besideMm = Quantity.read(neighbour, Kind.LENGTH).own();
        } catch (Refused refused) {
            throw in.refuse("neighbour", refused);
        }
        if (!(besideMm > 0 && besideMm <= 2000) || besideFrom > 2)
            throw in.refuse("neighbour", "{} is outside the range of this figure", "name a species, a width up to 2m or a moisture up to 200%", neighbour);
        double change = Movement.changeMm(width, Movement.shrinkage(species, grain(in)), from, to);
        double other = Movement.changeMm(besideMm, Movement.shrinkage(beside, grain(in)), besideFrom, to);
        double opening = Movement.changeMm(width, Movement.shrinkage(beside, grain(in)), besideFrom, to);
        out.put("gap", Movement.gapBesideMm(change, other), Kind.LENGTH).put("gapInlaid", Movement.gapInlaidMm(change, opening), Kind.LENGTH)
                .put("change", change, Kind.LENGTH).put("neighbourChange", other, Kind.LENGTH);
        if (Movement.gapBesideMm(change, other) < 0) out.beware("the pieces swell against each other: leave room, or fit them wetter");
        about(species, in, out);
        if (!beside.equals(species)) out.rests(beside.basis().get(1));
    }

    private static Movement.Grain grain(Inputs in) { return in.word("grain").equals("flat") ? Movement.Grain.FLAT : Movement.Grain.QUARTER; }

    private static void about(Species species, Inputs in, Answer.Sheet out) {
        out.rests(species.basis().get(1));
        if (Math.max(in.own("from"), in.own("to")) > Moisture.FIBRE_SATURATION)
            out.beware("above about 30 % (fibre saturation) wood does not move: counted as 30 %");
        out.beware("boards of mixed grain move less than flat grain and more than quartered; a coat of paint slows it and does not stop it");
    }

    private static Figure porosity() {
        var gives = Figure.gives("voids", "of oven-dry wood, fraction of its volume, cell wall at 1.5 times water",
                "voidsNewer", "the same with the cell wall at 1.54",
                "room", "left for liquid at the moisture given, fraction");
        return new Figure("porosity", "wood", "How much of wood is empty, and may take a liquid.",
                List.of(Key.of("sg", Kind.NUMBER, "oven-dry mass over oven-dry volume, relative to water").within(0.1, 1.3).optional(),
                        SpeciesKey.named("the wood, where sg is not given", "pine-eastern-white").optional(),
                        Key.of("moisture", Kind.PERCENT, "moisture at which the room for liquid is wanted").within("0%", "150%").or("12%")),
                gives,
                List.of(Basis.memory("Wood Handbook; Siau, Transport Processes in Wood", "1 - G/1.5, and 1 - G(1/1.5 + M) at moisture M"),
                        Basis.read("Wood Handbook, FPL-GTR-282", "ch. 4, eq. 4-3, 4-9, 4-11 and 4-16, in a public copy: 1.54, and gravity at moisture")),
                "sg=0.40", MovementFigures::porosity);
    }

    private static void porosity(Inputs in, Answer.Sheet out) {
        if (in.has("sg") == in.has("species"))
            throw in.refuse("sg", in.has("sg") ? "is given together with species" : "and species are both missing",
                    "give one of them: sg=0.40 or species=pine-eastern-white");
        double gravity;
        if (in.has("sg")) gravity = in.own("sg");
        else {
            Species species = SpeciesKey.byName(in, out);
            gravity = species.gravityOvenDry();
            out.rests(species.basis().get(0));
        }
        double moisture = in.own("moisture");
        out.put("voids", Porosity.voids(gravity, Porosity.CELL_WALL), Kind.FRACTION)
                .put("voidsNewer", Porosity.voids(gravity, Porosity.CELL_WALL_NEWER), Kind.FRACTION)
                .put("room", Porosity.room(Porosity.gravityAt(gravity, moisture), moisture), Kind.FRACTION);
        out.beware("sound wood; decayed wood is emptier by the mass it has lost, and not every void can be reached");
    }
}
