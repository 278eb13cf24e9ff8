package sillwright.wood;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Vapour;
import sillwright.walk.Species;
import sillwright.walk.SpeciesKey;
import sillwright.wood.moisture.Moisture;

/// Figures of water in air and in wood: `emc`, `dewpoint`, `meter`.
final class MoistureFigures {
    private MoistureFigures() {}

    static List<Figure> all() { return List.of(emc(), dewpoint(), meter()); }

    private static Figure emc() {
        return new Figure("emc", "wood", "The moisture content that wood comes to rest at in steady air.",
                List.of(Key.of("temp", Kind.TEMPERATURE, "air temperature").within("-40F", "212F"),
                        Key.of("rh", Kind.PERCENT, "relative humidity of the air").within("0%", "99%")),
                Figure.gives("mc", "moisture content, % of oven-dry mass"),
                List.of(Basis.read("Wood Handbook, FPL-GTR-282", "ch. 4, eq. 4-5, in a public copy"),
                        Basis.read("Wood Handbook, FPL-GTR-190", "Table 4-2, p. 4-4, which it meets within 0.06 points")),
                "temp=70F rh=65%", MoistureFigures::emc);
    }

    private static void emc(Inputs in, Answer.Sheet out) {
        double tempC = in.own("temp"), humidity = in.own("rh");
        out.put("mc", Moisture.atRest(tempC, humidity), Kind.PERCENT);
        out.beware("drying wood stands a little above this, wetting wood a little below; species differ by a point or two");
        if (tempC < -1.2 || tempC > 99.0) out.beware("the printed table runs from 30 to 210 °F (-1 to 99 °C): this temperature is outside it");
        if (humidity < 0.05 || humidity > 0.95) out.beware("the printed table runs from 5 to 95 % humidity: this is outside it");
        if (humidity > 0.95) out.beware("so near saturation wood may also take up water that condenses or runs in: measure it");
    }

    private static Figure dewpoint() {
        return new Figure("dewpoint", "wood", "The temperature of a surface on which this air begins to leave water.",
                List.of(Key.of("temp", Kind.TEMPERATURE, "air temperature").within("-40F", "212F"),
                        Key.of("rh", Kind.PERCENT, "relative humidity of the air").within("1%", "100%")),
                Figure.gives("dewPoint", "dew point; below freezing, frost point"),
                List.of(Basis.read("ASHRAE Handbook, Fundamentals (2017)", "ch. 1, eq. 5 and 6, in public source text")),
                "temp=70F rh=50%", MoistureFigures::dewpoint);
    }

    private static void dewpoint(Inputs in, Answer.Sheet out) {
        double dewC = Vapour.dewPointC(in.own("temp"), in.own("rh"));
        out.put("dewPoint", dewC, Kind.TEMPERATURE);
        if (dewC < 0) out.beware("below freezing this is the frost point, over ice; a dew point over water lies up to a degree or so lower");
    }

    private static Figure meter() {
        var gives = Figure.gives("mc", "moisture content, corrected for temperature",
                "withinRange", "true where the corrected moisture lies between 7 and 30 %, where a pin meter can be trusted",
                "correction", "points added to the reading");
        return new Figure("meter", "wood", "What a resistance meter's reading means at the temperature of the wood.",
                List.of(Key.of("reading", Kind.PERCENT, "what the meter shows").within("0%", "100%"),
                        SpeciesKey.named("the wood it was pushed into", "douglas-fir-coast"), SpeciesKey.gravity(),
                        Key.of("temp", Kind.TEMPERATURE, "temperature of the wood").within("-22F", "160F")),
                gives,
                List.of(Basis.memory("Pfaff and Garrahan (1986), as used with ASTM D4444 meters", "temperature equation on the Douglas-fir scale"),
                        Basis.read("FPL-GTR-6, Electric moisture meters for wood", "abstract: fair below 30 %")),
                "reading=18% species=douglas-fir-coast temp=40F", MoistureFigures::meter);
    }

    private static void meter(Inputs in, Answer.Sheet out) {
        Species species = SpeciesKey.read(in, out);
        double shown = in.own("reading"), tempC = in.own("temp"), moisture = Moisture.fromMeter(shown, tempC);
        out.put("mc", moisture, Kind.PERCENT).put("withinRange", Moisture.withinMeter(moisture)).put("correction", moisture - shown, Kind.PERCENT);
        if (!species.name().startsWith("douglas-fir"))
            out.beware("corrected for temperature only: the meter constants of " + species.name() + " were not found, so this stands on the Douglas-fir scale; "
                    + "set the meter to the species, or use its own table");
        if (!Moisture.withinMeter(moisture)) out.beware("outside 7 to 30 % a pin meter tells only drier or wetter, not how much");
        if (tempC < -18 || tempC > 50) out.beware("the temperature table runs from 0 to 120 °F (-18 to 49 °C): this is outside it");
        else if (tempC < 0) out.beware("frozen wood above fibre saturation reads far too low");
        out.beware("salts, rot, waterborne preservative and a wet skin upset a reading; push pins to several depths");
    }
}
