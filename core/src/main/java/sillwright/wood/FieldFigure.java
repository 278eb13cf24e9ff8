package sillwright.wood;

import java.util.List;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.measure.SplitMix;

/// The figure `field`: the decay beneath one face from its probe readings, and where to probe next.
final class FieldFigure {
    private static final int DRAWS = 400, MOST_READINGS = 500;
    private static final long SEED = 1;

    private FieldFigure() {}

    static Figure field() {
        var gives = Figure.gives("volume", "softened and decayed wood beneath the whole face, median of the draws", "low", "of its 90 % interval", "high", "of its 90 % interval",
                "found", "of that, in the stretches where softness was met: what damages and fills rest on, median of the draws", "foundLow", "of its 90 % interval", "foundHigh", "of its 90 % interval",
                "soundLine", "the station along from which on, toward the far end, wood is sound: the last place where it may be soft with 5 % chance, and the margin; 0 where no reading was soft",
                "soundBefore", "the same toward the start: before this station wood is sound; the length where no reading was soft",
                "softEndLow", "where the softness ends along, so far as readings tell: 90 % interval, without the margin", "softEnd", "its median", "softEndHigh", "its high bound",
                "deepest", "greatest depth", "deepestLow", "of its 90 % interval", "deepestHigh", "of its 90 % interval",
                "softShare", "share of the face that is soft", "softShareLow", "of its 90 % interval", "softShareHigh", "of its 90 % interval",
                "nextAlong", "where to probe next, along: by turns in the softness that was found and in the widest stretch not probed", "nextAcross", "the same, across", "why", "what that reading would tell of, and why there",
                "enough", "true where more probing would not change what is done");
        return new Figure("field", "wood", "How much wood has decayed beneath a face that was probed, where sound wood begins, and where to probe next.",
                List.of(Key.text("file", "CSV with the columns along_mm,across_mm,depth_mm,limit; limit is none, or reach where the probe ran out", "readings.csv"),
                        Key.of("length", Kind.LENGTH, "of the face along the grain").within("10mm", "30m"), Key.of("width", Kind.LENGTH, "of the face across the grain").within("5mm", "2m"),
                        Key.of("thickness", Kind.LENGTH, "how much wood lies beneath the face").within("2mm", "2m"),
                        Key.of("soundLine", Kind.LENGTH, "a probe that goes in no deeper has met sound wood").within("0.5mm", "100mm").or("5mm"),
                        Key.of("margin", Kind.LENGTH, "sound wood that is cut back into beyond the last softness").within("0mm", "1m").or("2in"),
                        Key.oneOf("smooth", "how smoothly depth changes beneath the face, by Matérn's family: 5/2, or 3/2 for decay with sharper edges", "5/2", "3/2").or("5/2")),
                gives, Decay.basis(), "file=readings.csv length=3ft width=5-1/2in thickness=5-1/2in", FieldFigure::work);
    }

    private static void work(Inputs in, Answer.Sheet out) {
        Slab slab = new Slab(in.own("length"), in.own("width"), in.own("thickness"));
        Readings readings;
        try {
            readings = readings(Csv.read(in.contents("file")), slab);
        } catch (Refused refused) {
            throw in.refuse("file", refused);
        }
        Feel.Shape shape = in.word("smooth").equals("3/2") ? Feel.Shape.MATERN_3_2 : Feel.Shape.MATERN_5_2;
        FaceStudy study = FaceStudy.of(slab, readings, readings, in.own("soundLine"), shape, DRAWS, new SplitMix(SEED));
        Interval volume = study.volumeMl(), found = study.foundMl(), deepest = study.deepestMm(), share = study.softShare(), end = study.stretches.isEmpty() ? study.lastSoftMm() : Interval.of(FaceNext.ends(study, study.stretches.getLast(), true));
        double margin = in.own("margin"), from = study.stretches.isEmpty() ? slab.lengthMm() : Math.max(0, study.stretches.getFirst()[0] - margin),
                to = study.stretches.isEmpty() ? 0 : Math.min(slab.lengthMm(), study.stretches.getLast()[1] + margin);
        out.put("volume", volume.median(), Kind.VOLUME).put("low", volume.low(), Kind.VOLUME).put("high", volume.high(), Kind.VOLUME)
                .put("found", found.median(), Kind.VOLUME).put("foundLow", found.low(), Kind.VOLUME).put("foundHigh", found.high(), Kind.VOLUME)
                .put("soundLine", to, Kind.LENGTH).put("soundBefore", from, Kind.LENGTH)
                .put("softEndLow", end.low(), Kind.LENGTH).put("softEnd", end.median(), Kind.LENGTH).put("softEndHigh", end.high(), Kind.LENGTH)
                .put("deepest", deepest.median(), Kind.LENGTH).put("deepestLow", deepest.low(), Kind.LENGTH).put("deepestHigh", deepest.high(), Kind.LENGTH)
                .put("softShare", share.median(), Kind.FRACTION).put("softShareLow", share.low(), Kind.FRACTION).put("softShareHigh", share.high(), Kind.FRACTION);
        double reach = 0;
        for (int i = 0; i < readings.count; i++) if (readings.says[i] == Readings.Says.AT_LEAST) reach = Math.max(reach, readings.depthMm[i]);
        FaceNext next = FaceNext.of(study, reach > 0 ? reach : Math.max(NextProbe.USUAL_REACH_MM, deepest.median()), Math.max(margin, Decay.TRIM_MARGIN_MM));
        out.put("nextAlong", next.alongMm(), Kind.LENGTH).put("nextAcross", next.acrossMm(), Kind.LENGTH)
                .put("why", (next.decides() == NextProbe.Decides.VOLUME ? "volume: " : "cut line: ") + next.why().words()).put("enough", next.enough());
        out.beware("screening: a probe by hand finds softness, not strength; a member that bears load is shored, and a licensed engineer called, before it is cut");
        if (study.readings.count < 6) out.beware("with so few readings the interval rests mostly on what decay usually does");
        if (reach > 0) out.beware("the probe ran out: the wood may be soft right through, or hollow; sound it from the face opposite");
        if (study.stretches.size() > 1) out.beware("there are " + study.stretches.size() + " soft stretches with sound wood between them: the lines are those of the first and the last");
    }

    private static Readings readings(Csv csv, Slab slab) {
        for (String column : List.of("along_mm", "across_mm", "depth_mm", "limit"))
            if (!csv.header().contains(column)) throw new Refused("header", "has no column '{}'", "begin with along_mm,across_mm,depth_mm,limit", column);
        int n = csv.rows().size();
        if (n == 0) throw new Refused("", "has no rows", "give one row for each push of the probe: along_mm,across_mm,depth_mm,limit");
        if (n > MOST_READINGS) throw new Refused("", "has {} readings where " + MOST_READINGS + " are the most for one face", "thin them, or part the face in two", n);
        double[] along = new double[n], across = new double[n], depth = new double[n];
        Readings.Says[] says = new Readings.Says[n];
        for (int i = 0; i < n; i++) {
            Csv.Row row = csv.rows().get(i);
            along[i] = within(row, "along_mm", slab.lengthMm(), "the face is {} mm long", "measure from its lower or left end");
            across[i] = within(row, "across_mm", slab.acrossMm(), "the face is {} mm wide", "measure from one edge of the face");
            depth[i] = within(row, "depth_mm", slab.throughMm(), "the wood beneath the face is {} mm thick", "read the depth again");
            boolean ranOut = ranOut(row);
            says[i] = ranOut ? Readings.Says.AT_LEAST : depth[i] <= Readings.SKIN_MM ? Readings.Says.AT_MOST : Readings.Says.EXACTLY;
        }
        return Readings.of(along, across, depth, says);
    }

    private static boolean ranOut(Csv.Row row) {
        return switch (row.get("limit")) {
            case "reach" -> true;
            case "none", "" -> false;
            default -> throw new Refused("line " + row.line() + ", column limit", "'{}' is neither none nor reach", "write reach where the probe went in as far as it can, else none", row.get("limit"));
        };
    }

    private static double within(Csv.Row row, String column, double most, String but, String mend) {
        double value = row.number(column);
        if (!(value >= 0 && value <= most + 1e-6)) throw new Refused("line " + row.line() + ", column " + column, "{} is out of range: " + but, mend, value, most);
        return Math.min(value, most);
    }
}
