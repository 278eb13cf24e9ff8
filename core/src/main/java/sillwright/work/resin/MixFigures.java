package sillwright.work.resin;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.walk.Species;
import sillwright.walk.SpeciesKey;
import sillwright.wood.Interval;

/// Figures of two-part materials: `mix`, `consolidant`.
public final class MixFigures {
    private static final String SKIN = "resins and hardeners harm skin, eyes and lungs: gloves, goggles, moving air, and the maker's safety sheet";

    private MixFigures() {}

    public static List<Figure> all() { return List.of(mix(), consolidant()); }

    private static Figure mix() {
        return new Figure("mix", "work", "How much of each part, how long it can be worked, and in how many batches.",
                List.of(Key.of("volume", Kind.VOLUME, "mixed volume wanted").within("1mL", "1000L"),
                        Key.of("ratio", Kind.RATIO, "part a to part b by volume").within(0.01, 100),
                        Key.of("temp", Kind.TEMPERATURE, "temperature of material and air").within("-10C", "60C"),
                        Key.of("potLife", Kind.MINUTES, "pot life as the maker states it").within("1min", "48h"),
                        Key.of("refTemp", Kind.TEMPERATURE, "temperature the pot life is stated for").within("-10C", "60C"),
                        Key.of("potMass", Kind.MASS, "mass the pot life is stated for").within("1g", "100kg").or("500g"),
                        Key.of("lift", Kind.LENGTH, "thickest layer the maker allows at once").within("0.5mm", "500mm").or("1in"),
                        Key.of("depth", Kind.LENGTH, "depth of the hole to be filled").within("0.1mm", "2m").optional(),
                        Key.of("area", Kind.AREA, "area of the hole to be filled, where its depth is not given").within("1mm2", "100m2").optional()),
                Figure.gives("partA", "of the whole", "partB", "of the whole", "batches", "how many", "batchVolume", "each, both parts",
                        "workingTime", "of one batch at this temperature", "lifts", "layers, each set before the next"),
                List.of(Basis.read("A builders' forum (1999), low authority", "halves for each 10 °C (18 °F) warmer, doubles cooler; stated for about 500 g at 77 °F"),
                        Basis.own("no batch above the stated mass at 1.1 g/mL, and less in proportion where it sets sooner than stated"),
                        Basis.memory("Makers' sheets, varying by product", "lifts of 1/2 to 1 in; least temperature about 50 °F")),
                "volume=24floz ratio=2:1 temp=85F potLife=30min refTemp=77F depth=2in", MixFigures::mix);
    }

    private static void mix(Inputs in, Answer.Sheet out) {
        double volume = in.own("volume"), stated = in.own("potLife"), tempC = in.own("temp"), working = Mix.workingS(stated, in.own("refTemp"), tempC);
        Mix.Parts parts = Mix.split(volume, in.own("ratio"));
        Mix.Batches batches = Mix.batches(volume, Mix.greatestBatchMl(in.own("potMass"), stated, working));
        out.put("partA", parts.aMl(), Kind.VOLUME).put("partB", parts.bMl(), Kind.VOLUME).put("batches", batches.count(), Kind.NUMBER)
                .put("batchVolume", batches.eachMl(), Kind.VOLUME).put("workingTime", working, Kind.MINUTES);
        if (in.has("depth") || in.has("area")) {
            double depth = in.has("depth") ? in.own("depth") : volume * 1000 / in.own("area");
            out.put("lifts", Mix.lifts(depth, in.own("lift")), Kind.NUMBER);
        } else {
            out.put("lifts", batches.count(), Kind.NUMBER);
            out.beware("lifts counts each batch as one lift: give depth= or area= of the hole, and it is worked from the thickness of a lift");
        }
        if (tempC < 10) out.beware("below about 50 °F (10 °C) most two-part mixes cure poorly or not at all: read the maker's least temperature");
        if (tempC > 35) out.beware("so warm a mix may smoke in the pot: mix small, spread thin, keep it out of the sun");
        if (working < 300) out.beware("less than five minutes to work: mix in the shade, cool the parts, or use a slower hardener");
        out.beware("a greater mass sets sooner and may overheat, a thin film later; mix by the maker's ratio, by volume, for two minutes, scraping the sides");
        out.beware(SKIN);
    }

    private static Figure consolidant() {
        return new Figure("consolidant", "work", "How much consolidant a soft face takes up.",
                List.of(SpeciesKey.named("the wood", "pine-eastern-white"), SpeciesKey.gravity(),
                        Key.of("area", Kind.AREA, "area of soft skin").within("1mm2", "1000m2"),
                        Key.of("softDepth", Kind.LENGTH, "how deep it is soft").within("0.1mm", "1m"),
                        Key.of("fill", Kind.FRACTION, "share of the voids that it reaches").within("1%", "100%").or("60%")),
                Figure.gives("volume", "to reckon with", "low", "where less is reached, in wood at 15 %",
                        "high", "to have at hand: more is reached, in wood that has lost mass"),
                List.of(Basis.memory("Wood Handbook; Siau, Transport Processes in Wood", "voids 1 - G/1.5, room at moisture 1 - G(1/1.5 + M)"),
                        Basis.own("six tenths of the voids are reached where nothing better is known, and the bounds about it; no published value was found")),
                "species=pine-eastern-white area=1ft2 softDepth=1/2in", MixFigures::consolidant);
    }

    private static void consolidant(Inputs in, Answer.Sheet out) {
        Species species = SpeciesKey.read(in, out);
        Interval soak = Soak.volumeMl(species, in.own("area"), in.own("softDepth"), in.own("fill"));
        out.put("volume", soak.median(), Kind.VOLUME).put("low", soak.low(), Kind.VOLUME).put("high", soak.high(), Kind.VOLUME);
        out.rests(species.basis().get(0));
        out.beware("the water is stopped and the wood dried first (12 % or less through its depth where it can be had): consolidant on wet wood seals the rot in");
        out.beware("it gives back cohesion, not rated strength: wood that bears a load goes to a licensed engineer");
        out.beware("solvents burn and poison: no flame or spark, moving air, a respirator for organic vapour, rags laid out to dry");
        out.beware(SKIN);
    }
}
