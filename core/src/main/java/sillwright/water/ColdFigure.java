package sillwright.water;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Answer;
import sillwright.measure.Figure;
import sillwright.measure.Inputs;
import sillwright.measure.Key;
import sillwright.measure.Kind;
import sillwright.measure.Vapour;

/// The figure that tells whether damp air from indoors wets a wall from behind.
final class ColdFigure {
    private ColdFigure() {}

    static Figure coldWall() {
        Map<String, String> gives = new LinkedHashMap<>();
        gives.put("humidity", "of the air indoors, as given or as a usual dwelling has it");
        gives.put("dewPoint", "of the air indoors");
        gives.put("boards", "back of the boards");
        gives.put("margin", "back of the boards over the dew point; under nothing water is left there where room air gets in");
        gives.put("face", "inner face of the wall");
        gives.put("pane", "inner face of a single pane, whose water is seen first");
        gives.put("wets", "true where the boards are colder than the dew point");
        return new Figure("cold-wall", "water", "Does damp air from indoors leave water behind the boards of this wall?", List.of(
                Key.of("outdoors", Kind.TEMPERATURE, "air outdoors").within("-40C", "30C"),
                Key.of("indoors", Kind.TEMPERATURE, "air indoors").within("0C", "35C").or("20C"),
                Key.of("outdoorsRh", Kind.PERCENT, "humidity outdoors, which a usual dwelling adds to").within("5%", "100%").or("80%"),
                Key.of("rh", Kind.PERCENT, "humidity indoors, where it was read; a usual dwelling's where left out").within("5%", "100%").optional(),
                Key.oneOf("cavity", "of the wall", "empty", "filled").or("empty")),
                gives, List.of(ColdWall.RESISTANCES, ColdWall.INDOORS, ColdWall.OWN), "outdoors=10F", ColdFigure::work);
    }

    private static void work(Inputs in, Answer.Sheet out) {
        double indoors = in.own("indoors"), outdoors = in.own("outdoors");
        boolean filled = in.word("cavity").equals("filled");
        double humidity = in.has("rh") ? in.own("rh") : ColdWall.usualHumidity(indoors, outdoors, in.own("outdoorsRh"));
        double dew = Vapour.dewPointC(indoors, humidity), boards = ColdWall.backC(indoors, outdoors, filled);
        out.put("humidity", humidity, Kind.PERCENT).put("dewPoint", dew, Kind.TEMPERATURE).put("boards", boards, Kind.TEMPERATURE).put("margin", boards - dew, Kind.DIFFERENCE)
                .put("face", ColdWall.faceC(indoors, outdoors, filled), Kind.TEMPERATURE).put("pane", ColdWall.paneC(indoors, outdoors), Kind.TEMPERATURE).put("wets", boards < dew);
        out.beware("the worst: room air comes to the boards as it is; tight plaster and a coat that slows vapour on the inside keep most of it back");
        if (filled) out.beware("a filled wall has colder boards: stop air and vapour on the room's side before anything is filled, and never blow fill into a wall that rain gets into");
        if (outdoors >= indoors) out.beware("outdoors is as warm as the room: no heat flows outward, and nothing condenses at the boards");
    }
}
