package sillwright.sheet;

import java.util.List;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Words;
import sillwright.wood.Condition;

/// A group of buildings for a map, GeoJSON as RFC 7946 has it. Where a building stands is written only where it was asked for: its place is else `null`, which the standard allows.
public final class GroupMap {
    private GroupMap() {}

    /// A building, and where it stands.
    ///
    /// @param at degrees; empty to leave it out
    public record Placed(Assessment assessment, Optional<Position> at) {}

    /// @param latitude  degrees north, -90 to 90
    /// @param longitude degrees east, -180 to 180
    public record Position(double latitude, double longitude) {
        public Position {
            if (!(latitude >= -90 && latitude <= 90 && longitude >= -180 && longitude <= 180))
                throw new sillwright.measure.Refused("at", "{}, {} is no place on earth", "write degrees north and east, such as 44.26,-72.58", latitude, longitude);
        }
    }

    public static String geojson(List<Placed> buildings) {
        return "{\"type\":\"FeatureCollection\",\"features\":[\n" + String.join(",\n", buildings.stream().map(GroupMap::feature).toList()) + "\n]}\n";
    }

    private static String feature(Placed placed) {
        Assessment assessment = placed.assessment;
        String place = placed.at.map(at -> "{\"type\":\"Point\",\"coordinates\":[" + Words.number(at.longitude, 6) + "," + Words.number(at.latitude, 6) + "]}").orElse("null");
        String id = assessment.survey().building().map(building -> building.id()).orElse("building-not-described");
        return "{\"type\":\"Feature\",\"id\":" + quoted(id) + ",\"geometry\":" + place + ",\"properties\":{\"name\":" + quoted(assessment.survey().name())
                + ",\"walked\":" + quoted(assessment.survey().walkedMs() == 0 ? "" : Said.walked(assessment.survey()).toString())
                + ",\"members\":" + assessment.survey().members().size() + ",\"soft\":" + assessment.wood().all().stream().filter(Condition::needsWork).count()
                + ",\"waterToStop\":" + assessment.water().toStop().size() + ",\"repairs\":" + assessment.work().repairs().size() + ",\"cannotWait\":" + assessment.work().urgent().size() + "}}";
    }

    private static String quoted(String words) {
        StringBuilder out = new StringBuilder("\"");
        words.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') out.append('\\').appendCodePoint(c);
            else if (c < 0x20 || c >= 0xD800 && c < 0xE000) out.append(' ');
            else out.appendCodePoint(c);
        });
        return out.append('"').toString();
    }
}
