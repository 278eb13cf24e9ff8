package sillwright.wood;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Answer;
import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Species;
import sillwright.walk.SpeciesKey;
import sillwright.wood.drying.Dose;
import sillwright.wood.drying.Skin;
import sillwright.wood.drying.SteadyDrying;
import sillwright.wood.drying.Timber;

/// Figures of how wood dries and what its damp days add up to: `drying`, `decay-dose`.
final class DryingFigures {
    private DryingFigures() {}

    static List<Figure> all() { return List.of(drying(), decayDose()); }

    private static Figure drying() {
        return new Figure("drying", "wood", "How long a flat piece takes to come from one moisture to another in steady air.",
                List.of(SpeciesKey.named("the wood", "pine-eastern-white"), SpeciesKey.gravity(),
                        Key.of("thickness", Kind.LENGTH, "thickness of the piece").within("0.5mm", "400mm"),
                        Key.of("from", Kind.PERCENT, "moisture throughout at first").within("1%", "100%"),
                        Key.of("to", Kind.PERCENT, "mean moisture wanted").within("1%", "100%"),
                        Key.of("temp", Kind.TEMPERATURE, "air temperature").within("-10C", "50C"),
                        Key.of("rh", Kind.PERCENT, "relative humidity of the air").within("5%", "95%"),
                        Key.oneOf("faces", "faces open to the air; with 1 the other is sealed", "1", "2").or("2"),
                        Key.oneOf("coat", "paint on the open faces", "none", "sound", "failing").or("none"),
                        Key.oneOf("air", "air past the open faces: still as in a closed room, or moving as past a wall outdoors", "still", "moving").or("still")),
                Figure.gives("time", "until the mean moisture is the wanted one", "atRest", "the moisture it would come to rest at", "middle",
                        "moisture half way in, or at the sealed face, at that time"),
                Timber.BASIS, "species=pine-eastern-white thickness=1in from=28% to=15% temp=70F rh=50%", DryingFigures::drying);
    }

    private static void drying(Inputs in, Answer.Sheet out) {
        Species species = SpeciesKey.read(in, out);
        Timber timber = Timber.of(species, Timber.Grain.ACROSS);
        double start = in.own("from"), goal = in.own("to");
        if (start > timber.full())
            throw in.refuse("from", "{} is more than this wood is taken to hold, {}", "give less, or measure it again", in.quantity("from"), new Answer.Measured(timber.full(), Kind.PERCENT));
        Member.Coat coat = Choice.of(Member.Coat.class, in.word("coat"));
        boolean moving = in.word("air").equals("moving");
        SteadyDrying worked;
        try {
            Skin skin = moving ? Skin.outside(coat, timber) : Skin.under(coat, timber);
            worked = SteadyDrying.of(timber, in.own("thickness") / 1000, in.word("faces").equals("1") ? 1 : 2, skin, start, goal, in.own("temp"), in.own("rh"));
        } catch (Refused refused) {
            throw refused.at("figure drying");
        }
        out.put("time", worked.timeS(), Kind.HOURS).put("atRest", worked.atRest(), Kind.PERCENT).put("middle", worked.middle(), Kind.PERCENT);
        if (coat != Member.Coat.NONE || moving) for (Basis basis : Skin.BASIS) out.rests(basis);
        out.beware("a computed time for clear wood in " + in.word("air") + " air: real pieces take half to twice as long; let the meter say when it is dry");
        if (start > timber.saturation()) out.beware("above fibre saturation how free water moves is a choice of this program, and heartwood, sapwood and decayed wood differ much");
        if (worked.middle() - goal > 0.02) out.beware("the middle is still wetter than the mean: push pins deep before it is closed in");
        if (in.own("temp") < 0) out.beware("below freezing wood above fibre saturation hardly dries");
    }

    private static Figure decayDose() {
        return new Figure("decay-dose", "wood", "What the damp and warm days of a piece of wood add up to, and the decay that such a dose has been seen to make.",
                List.of(Key.text("file", "CSV with the columns date,mc_pct,temp_C, one row a day", "days.csv")),
                Figure.gives("dose", "sum of the daily doses, days", "rating", "mean rating of the reference softwood: 0 sound, 1 slight, 2 moderate, 3 severe, 4 failed", "days",
                        "rows read", "dampDays", "days that add to the dose", "ratingEarlier", "rating by an earlier fit"),
                Dose.BASIS, "file=days.csv", DryingFigures::decayDose);
    }

    private static void decayDose(Inputs in, Answer.Sheet out) {
        double dose = 0;
        int days = 0, damp = 0, high = 0;
        Set<LocalDate> seen = new HashSet<>();
        try {
            for (Csv.Row row : Csv.read(in.contents("file")).rows()) {
                double percent = row.number("mc_pct"), tempC = row.number("temp_C");
                if (!seen.add(date(row))) throw new Refused("line " + row.line() + ", column date", "{} stands there twice", "give one row a day, its mean moisture and its mean temperature", row.get("date"));
                if (!(percent >= 0 && percent <= 300)) throw new Refused("line " + row.line() + ", column mc_pct", "{} % is no moisture of wood", "write percent of oven-dry mass, such as 18", percent);
                if (!(tempC >= -60 && tempC <= 80)) throw new Refused("line " + row.line() + ", column temp_C", "{} °C is no temperature of wood outdoors", "write degrees Celsius", tempC);
                double one = Dose.day(percent / 100, tempC);
                dose += one;
                days++;
                if (one > 0) damp++;
                if (percent > 100) high++;
            }
        } catch (Refused refused) {
            throw in.refuse("file", refused);
        }
        if (days == 0) throw in.refuse("file", "has no rows", "give one row a day: date,mc_pct,temp_C");
        out.put("dose", dose * 86400, Kind.DAYS).put("rating", Dose.rating(dose), Kind.NUMBER).put("days", days, Kind.NUMBER).put("dampDays", damp, Kind.NUMBER)
                .put("ratingEarlier", Dose.ratingEarlier(dose), Kind.NUMBER);
        out.beware("a mean of small softwood specimens in the open: one piece may be years early or late, and heartwood of durable woods stands several times the dose");
        long span = ChronoUnit.DAYS.between(Collections.min(seen), Collections.max(seen)) + 1;
        if (span > days) out.beware(span - days + " of the " + span + " days between the first and the last are missing, and count as nothing");
        out.beware("the dose jumps where moisture passes 25 %: a meter error of one point there matters more than ten points at 40 %");
        if (high > 0) out.beware("days above 100 % moisture are at the end of the fitted curve; above 135.7 % they count as nothing");
    }

    private static LocalDate date(Csv.Row row) {
        String text = row.get("date");
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException unread) {
            throw new Refused("line " + row.line() + ", column date", "{} is no day", "write it as 2026-05-04", text);
        }
    }
}
