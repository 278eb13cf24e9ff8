package sillwright.walk;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;

/// Small things for a field book, one of each kind.
final class Bodies {
    private Bodies() {}

    static Quantity mm(String text) { return Quantity.read(text, Kind.LENGTH); }

    static Building building(String name) {
        return new Building("shed", name, "invented", 1890, Optional.empty(), Optional.empty(), List.of());
    }

    static Side side(String id) {
        return new Side(id, id + " side", Quantity.read("180deg", Kind.ANGLE), mm("24 ft"), List.of(),
                new Side.Ground(Side.Surface.GRASS, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
    }

    static Member post(String id, String side) { return post(id, side, "pine-eastern-white", "3 ft"); }

    static Member post(String id, String side, String species, String left) {
        return new Member(id, side, MemberKind.POST, "a post", Member.Role.BEARS_LOAD, species, Member.Run.UPRIGHT, mm("5-1/2 in"), mm("3-1/2 in"),
                mm("7 ft"), mm(left), mm("2 ft"), Optional.empty(), Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.FAILING,
                Member.Contact.PORCH_FLOOR);
    }

    static Spot spot(String member, Member.Face face, String along, String across) { return new Spot(member, face, mm(along), mm(across)); }

    static ProbeReading probe(String member, String along, String depth) {
        return new ProbeReading(spot(member, Member.Face.FRONT, along, "2 in"), mm(depth), mm("4 in"), false);
    }

    static MoistureReading moisture(String member, String along, String reading) {
        return new MoistureReading(spot(member, Member.Face.LEFT, along, "1 in"), Quantity.read(reading, Kind.PERCENT), Optional.empty(), Optional.empty());
    }

    static Sighting sighting(String side, Sign sign) {
        return new Sighting(sign, true, side, Optional.empty(), Optional.empty(), Optional.empty(), "");
    }

    static Entry entry(String id, long wallMs, Body body) { return new Entry(id, new Entry.Stamp(wallMs, 0), "phone-1", "A. Surveyor", body); }

    /// A building, a south side, and one post: three entries, at 1, 2 and 3 ms.
    static List<Entry> begun() {
        return List.of(entry("b", 1, building("a shed")), entry("s", 2, side("south")), entry("p", 3, post("post", "south")));
    }

    static List<Entry> begunWith(Entry... more) {
        List<Entry> all = new ArrayList<>(begun());
        all.addAll(List.of(more));
        return all;
    }
}
