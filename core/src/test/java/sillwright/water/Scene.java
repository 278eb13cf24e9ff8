package sillwright.water;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Building.Month;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Side;
import sillwright.walk.Side.*;
import sillwright.walk.Survey;
import sillwright.walk.Survey.Noted;

/// Invented buildings for the tests.
final class Scene {
    private Optional<Building> building = Optional.empty();
    private final Map<String, Side> sides = new LinkedHashMap<>();
    private final Map<String, Member> members = new LinkedHashMap<>();
    private final List<Noted<Sighting>> sightings = new ArrayList<>();

    static Quantity mm(String text) { return Quantity.read(text, Kind.LENGTH); }

    static Optional<Quantity> some(String text) { return Optional.of(mm(text)); }

    static Quantity fall(String text) { return Quantity.read(text, Kind.FALL); }

    Scene rain(String perHour, List<Month> months) {
        building = Optional.of(new Building("invented", "An invented house", "invented for a test", 1890, Optional.of(Quantity.read(perHour, Kind.RAIN)), Optional.empty(), months));
        return this;
    }

    /// Twelve months alike but for a winter of a given mean.
    static List<Month> months(double winterC, double rainMm, double windMs) {
        List<Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) {
            double mean = m < 2 || m == 11 ? winterC : 15;
            months.add(new Month(celsius(mean + 5), celsius(mean - 5), mm(rainMm + "mm"), 10, Quantity.read("70%", Kind.PERCENT), Quantity.read(windMs + "m/s", Kind.WIND), mm("0mm")));
        }
        return months;
    }

    private static Quantity celsius(double value) { return Quantity.read(value + "C", Kind.TEMPERATURE); }

    Scene side(String id, String bearing, List<RoofEdge> edges, Ground ground, Opening... openings) {
        sides.put(id, new Side(id, id, Quantity.read(bearing, Kind.ANGLE), mm("30ft"), edges, ground, Optional.empty(), List.of(openings)));
        return this;
    }

    static RoofEdge eave(String overhang, Optional<Gutter> gutter) {
        return new RoofEdge("main", Edge.EAVE, mm("0ft"), mm("30ft"), mm("10ft"), mm(overhang), Optional.empty(), Optional.empty(), some("15ft"), Optional.of(Quantity.read("8/12", Kind.PITCH)), gutter);
    }

    static RoofEdge rake(String overhang) {
        return new RoofEdge("gable", Edge.RAKE, mm("0ft"), mm("30ft"), mm("10ft"), mm(overhang), Optional.empty(), some("7ft"), Optional.empty(), Optional.of(Quantity.read("8/12", Kind.PITCH)), Optional.empty());
    }

    static Optional<Gutter> gutter(String size, Downspout... downspouts) {
        return Optional.of(new Gutter(GutterShape.HALF_ROUND, mm(size), Optional.empty(), Optional.of(fall("1/16in/ft")), List.of(downspouts)));
    }

    static Downspout downspout(String left, String size, Empties empties) { return new Downspout(mm(left), mm(size), Optional.empty(), empties, Optional.empty()); }

    static Ground ground(Surface surface, String clearance, String fall) {
        return new Ground(surface, fall.isEmpty() ? Optional.empty() : Optional.of(Quantity.read(fall, Kind.FALL)), clearance.isEmpty() ? Optional.empty() : some(clearance));
    }

    static Opening window(String left) { return new Opening(OpeningKind.WINDOW, mm(left), mm("30in"), mm("32in"), mm("60in")); }

    Scene member(String id, String side, MemberKind kind, Member.Run run, String width, String length, String left, String above, Member.EndGrain start, Member.Contact contact) {
        members.put(id, new Member(id, side, kind, id.replace('-', ' '), Member.Role.SHEDS_WATER, "pine-eastern-white", run, mm(width), mm("1in"), mm(length), mm(left), mm(above),
                Optional.empty(), start, Member.EndGrain.COVERED, Member.Coat.FAILING, contact));
        return this;
    }

    Scene seen(String side, Sign... signs) {
        for (Sign sign : signs) add(sign, true, side, Optional.empty(), Optional.empty(), Optional.empty());
        return this;
    }

    Scene notSeen(String side, Sign... signs) {
        for (Sign sign : signs) add(sign, false, side, Optional.empty(), Optional.empty(), Optional.empty());
        return this;
    }

    Scene seenOn(String side, String member, Sign... signs) {
        for (Sign sign : signs) add(sign, true, side, Optional.of(member), Optional.empty(), Optional.empty());
        return this;
    }

    Scene seenAt(String side, String left, String above, Sign... signs) {
        for (Sign sign : signs) add(sign, true, side, Optional.empty(), some(left), some(above));
        return this;
    }

    /// A look for a sign on a side, at a member or a place there where these are not empty.
    Scene look(String side, Sign sign, boolean seen, String member, String left, String above) {
        add(sign, seen, side, Optional.of(member).filter(m -> !m.isEmpty()), left.isEmpty() ? Optional.empty() : some(left), above.isEmpty() ? Optional.empty() : some(above));
        return this;
    }

    private void add(Sign sign, boolean seen, String side, Optional<String> member, Optional<Quantity> left, Optional<Quantity> above) {
        sightings.add(new Noted<>("entry " + sightings.size(), sightings.size(), new Sighting(sign, seen, side, member, left, above, "")));
    }

    Survey survey() { return new Survey(building, sides, members, List.of(), List.of(), sightings, List.of(), List.of(), sightings.size()); }
}
