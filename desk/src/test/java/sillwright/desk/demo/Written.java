package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;

/// Bodies of entries, from what would be typed for them.
final class Written {
    private Written() {}

    static Quantity length(String text) { return Quantity.read(text, Kind.LENGTH); }

    static Optional<Quantity> perhaps(String text, Kind kind) { return text.isEmpty() ? Optional.empty() : Optional.of(Quantity.read(text, kind)); }

    /// Columns `id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact`.
    static List<Member> members(String side, String csv) {
        return Csv.read(csv).rows().stream().map(row -> new Member(row.get("id"), side, Choice.of(MemberKind.class, row.get("kind")), row.get("title"),
                Choice.of(Member.Role.class, row.get("role")), row.get("species"), Choice.of(Member.Run.class, row.get("run")),
                length(row.get("width")), length(row.get("depth")), length(row.get("length")), length(row.get("left")), length(row.get("above")),
                perhaps(row.get("slant"), Kind.ANGLE), Choice.of(Member.EndGrain.class, row.get("start")), Choice.of(Member.EndGrain.class, row.get("far")),
                Choice.of(Member.Coat.class, row.get("coat")), Choice.of(Member.Contact.class, row.get("contact")))).toList();
    }

    /// Columns `sign,seen,member,left,above,words`; `seen` is yes or no.
    static List<Sighting> sightings(String side, String csv) {
        return Csv.read(csv).rows().stream().map(row -> new Sighting(Choice.of(Sign.class, row.get("sign")), seen(row.get("seen")), side,
                row.get("member").isEmpty() ? Optional.empty() : Optional.of(row.get("member")), perhaps(row.get("left"), Kind.LENGTH),
                perhaps(row.get("above"), Kind.LENGTH), row.get("words"))).toList();
    }

    private static boolean seen(String word) {
        return switch (word) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new IllegalArgumentException("seen is yes or no, not " + word);
        };
    }

    /// Columns `high,low,rain,days,humidity,wind,snow`, January to December.
    static List<Building.Month> months(String csv) {
        return Csv.read(csv).rows().stream().map(row -> new Building.Month(Quantity.read(row.get("high"), Kind.TEMPERATURE),
                Quantity.read(row.get("low"), Kind.TEMPERATURE), length(row.get("rain")), row.number("days"),
                Quantity.read(row.get("humidity"), Kind.PERCENT), Quantity.read(row.get("wind"), Kind.WIND), length(row.get("snow")))).toList();
    }

    static Side.Opening window(String left, String bottom, String width, String height) { return opening(Side.OpeningKind.WINDOW, left, bottom, width, height); }

    static Side.Opening opening(Side.OpeningKind kind, String left, String bottom, String width, String height) {
        return new Side.Opening(kind, length(left), length(bottom), length(width), length(height));
    }

    static Side.Downspout downspout(String left, String size, String size2, Side.Empties empties, String carriesTo) {
        return new Side.Downspout(length(left), length(size), perhaps(size2, Kind.LENGTH), empties, perhaps(carriesTo, Kind.LENGTH));
    }

    /// A gable over the whole wall, its peak in the middle.
    static Side.RoofEdge gable(String length, String eave, String ridge, String overhang, String pitch) {
        return new Side.RoofEdge("gable", Side.Edge.RAKE, length("0 in"), length(length), length(eave), length(overhang), Optional.of(length(ridge)),
                Optional.empty(), Optional.empty(), perhaps(pitch, Kind.PITCH), Optional.empty());
    }
}
