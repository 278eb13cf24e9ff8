package sillwright.wood;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Choice;
import sillwright.wood.moisture.Diffusion;

/// Figures of how fast water goes in and out, and of how hard a climate is: `plane-sheet`, `scheffer`.
final class SpreadFigures {
    private SpreadFigures() {}

    static List<Figure> all() { return List.of(planeSheet(), scheffer()); }

    private static Figure planeSheet() {
        var gives = Figure.gives("fractionalChange", "share of the whole change of moisture that is done, 0 to 1",
                "middleChange", "the same at the middle, or at the sealed face",
                "tau", "D t / l², l half the thickness, or the whole with one face open");
        return new Figure("plane-sheet", "wood", "How far a flat piece has come to its new moisture after a time, by a steady coefficient.",
                List.of(Key.of("thickness", Kind.LENGTH, "thickness of the piece").within("0.1mm", "1m"),
                        Key.of("diffusivity", Kind.DIFFUSIVITY, "coefficient of diffusion, such as 1.3e-10m2/s across softwood at 12 %").within(1e-14, 1e-4),
                        Key.of("time", Kind.HOURS, "time since the faces changed").within("0h", "876600h"),
                        Key.oneOf("faces", "faces open to the air; with 1 the other is sealed", "1", "2").or("2")),
                gives, List.of(Basis.memory("Crank, The Mathematics of Diffusion (1975)", "ch. 4, plane sheet, both series")),
                "thickness=1in diffusivity=1.3e-10m2/s time=30d", SpreadFigures::planeSheet);
    }

    private static void planeSheet(Inputs in, Answer.Sheet out) {
        double tau = Diffusion.fourier(in.own("thickness"), in.word("faces").equals("1") ? 1 : 2, in.own("diffusivity"), in.own("time"));
        out.put("fractionalChange", Diffusion.share(tau), Kind.FRACTION).put("middleChange", Diffusion.shareAt(tau, 0), Kind.FRACTION)
                .put("tau", tau, Kind.NUMBER);
        out.beware("below fibre saturation only, the faces at rest with the air at once; wet wood and painted wood take longer");
    }

    private static Figure scheffer() {
        return new Figure("scheffer", "wood", "How hard a climate is on wood above ground.",
                List.of(Key.several("meanTemps", Kind.TEMPERATURE, 12, "mean temperature of each month, January first").within("-60C", "50C"),
                        Key.several("rainDays", Kind.NUMBER, 12, "days of each month with 0.01 in (0.25 mm) of rain or more").within(0, 31)),
                Figure.gives("index", "below 35 low, to 65 moderate, above high", "class", "low, moderate or high"),
                List.of(Basis.memory("Scheffer, Forest Products Journal (1971)", "the index and its bands")),
                "meanTemps=20F,25F,33F,35F,45F,55F,65F,70F,60F,50F,40F,28F rainDays=12,2,1,10,9,3,8,11,7,2,9,1", SpreadFigures::scheffer);
    }

    private static void scheffer(Inputs in, Answer.Sheet out) {
        double index = Climate.scheffer(in.several("meanTemps").stream().map(Quantity::own).toList(), in.several("rainDays").stream().map(Quantity::own).toList());
        out.put("index", index, Kind.NUMBER).put("class", Choice.word(Climate.hazard(index)));
        out.beware("a place's climate, not a piece of wood's: splash, a leak or shade outweighs it, and a dry porch in a high zone lasts");
        if (index > 65 && index <= 70) out.beware("later use of the index puts the upper bound at 70: by that this is moderate");
    }
}
