package sillwright.work;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.walk.Building;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Survey;
import sillwright.water.Source;
import sillwright.water.WaterFindings;
import sillwright.measure.Basis;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Interval;
import sillwright.wood.SectionLeft;
import sillwright.wood.WoodFindings;

/// An invented house, put together piece by piece.
public final class Scene {
    public final Map<String, Side> sides = new LinkedHashMap<>();
    public final Map<String, Condition> conditions = new LinkedHashMap<>();
    public final Map<String, Member> members = new LinkedHashMap<>();
    public final List<WaterFindings.RankedSource> sources = new ArrayList<>();
    public List<Building.Month> months = List.of();
    public final List<sillwright.walk.OpenChecks> checks = new ArrayList<>();
    public final List<sillwright.walk.Decision> decisions = new ArrayList<>();
    public final List<sillwright.walk.WorkDone> works = new ArrayList<>();
    public int year = 1912;
    public Units units = Units.US;
    public List<Double> stock = List.of(8 * 304.8, 10 * 304.8, 12 * 304.8, 16 * 304.8);
    /// A Monday.
    public LocalDate start = LocalDate.of(2027, 5, 3);

    public static Quantity mm(double mm) { return Quantity.read(mm + "mm", Kind.LENGTH); }

    public static Quantity q(String text, Kind kind) { return Quantity.read(text, kind); }

    public Scene side(String id, String lotLine) {
        Side.Gutter gutter = new Side.Gutter(Side.GutterShape.HALF_ROUND, mm(127), Optional.empty(), Optional.empty(),
                List.of(new Side.Downspout(mm(100), mm(76), Optional.empty(), Side.Empties.AT_FOOT, Optional.empty())));
        Side.RoofEdge edge = new Side.RoofEdge("main", Side.Edge.EAVE, mm(0), mm(9000), mm(5200), mm(300), Optional.empty(), Optional.empty(), Optional.of(mm(4500)),
                Optional.empty(), Optional.of(gutter));
        sides.put(id, new Side(id, id + " side", new Quantity(180, sillwright.measure.Unit.DEGREE, "180deg"), mm(9000), List.of(edge),
                new Side.Ground(Side.Surface.PAVING, Optional.empty(), Optional.of(mm(100))),
                lotLine.isEmpty() ? Optional.empty() : Optional.of(Quantity.read(lotLine, Kind.LENGTH)),
                List.of(new Side.Opening(Side.OpeningKind.WINDOW, mm(1000), mm(900), mm(900), mm(1500)))));
        return this;
    }

    public static Member member(String id, String side, MemberKind kind, Member.Role role, Member.Run run, double width, double depth, double length, double above,
                                Member.Coat coat, Member.Contact contact) {
        return new Member(id, side, kind, id.replace('-', ' '), role, "pine-eastern-white", run, mm(width), mm(depth), mm(length), mm(500), mm(above), Optional.empty(),
                Member.EndGrain.BARE, Member.EndGrain.COVERED, coat, contact);
    }

    /// A damage with so much lost from each face of the worst station.
    public static Damage damage(Member member, int n, double from, double to, double deepest, double front, double back, double left, double right, boolean ranOut) {
        double w = Math.max(0, member.widthMm() - left - right), d = Math.max(0, member.depthMm() - front - back);
        double area = w * d / member.sectionMm2();
        double sx = area * d / member.depthMm(), sy = area * w / member.widthMm();
        double soft = (to - from) * (member.sectionMm2() - w * d) / 1000 / 2;
        double skin = (to - from) * member.acrossMm(member.faces().getFirst()) * 0.8;
        return new Damage(member.id() + "/" + n, member, member.faces().getFirst(), from, to, deepest, Interval.exactly(soft), skin,
                new SectionLeft((from + to) / 2, front, back, left, right, area, sx, sy, 0, 0, area), ranOut);
    }

    public Scene add(Member member, Condition.State state, double moisture, Damage... damages) {
        if (!sides.containsKey(member.side())) side(member.side(), "");
        List<Condition.Corrected> readings = Double.isNaN(moisture) ? List.of() : List.of(new Condition.Corrected(Math.min(150, member.lengthMm() / 2), moisture, moisture, true));
        conditions.put(member.id(), new Condition(member, state, List.of(), List.of(damages), readings.isEmpty() ? Optional.empty() : Optional.of(moisture), readings, 12,
                member.title(), List.of(Basis.own("an invented reading"))));
        members.put(member.id(), member);
        return this;
    }

    public Scene source(Source source, String side, double probability, double hours, String... wets) {
        sources.add(new WaterFindings.RankedSource("W" + (sources.size() + 1), source, side, "", 0, 5000, probability, 0.2, List.of(),
                List.of(new WaterFindings.Remedy("clear and rehang it", hours, Basis.practice("gutters are cleared"))), List.of(wets)));
        return this;
    }

    public Survey survey() {
        return new Survey(Optional.of(new Building("invented", "Invented house", "invented for a test", year, Optional.empty(), Optional.empty(), months)), sides, members, List.of(),
                List.of(), List.of(), List.of(), works.stream().map(one -> new Survey.Noted<>("w", 1, one)).toList(), checks.stream().map(group -> new Survey.Noted<>("k", 1, group)).toList(), List.of(),
                decisions.stream().map(one -> new Survey.Noted<>("d", 2, one)).toList(), List.of(), 0);
    }

    public WaterFindings water() { return new WaterFindings(List.of(), List.of(), sources, Optional.empty(), List.of()); }

    public WoodFindings wood() { return new WoodFindings(conditions, List.of()); }

    public WorkFindings work() { return Work.find(survey(), water(), wood(), start, units, stock, new FirstFit()); }

    // Scenes a practitioner would recognise.

    public static Member post() {
        return member("porch-post-3", "south", MemberKind.POST, Member.Role.BEARS_LOAD, Member.Run.UPRIGHT, 139.7, 139.7, 2438.4, 500, Member.Coat.FAILING, Member.Contact.PORCH_FLOOR);
    }

    public static Damage postFoot(Member post) { return damage(post, 1, 0, 210, 35, 35, 20, 25, 20, false); }

    public static Member corner(Member.Contact contact) {
        return member("corner-board", "north", MemberKind.CORNER_BOARD, Member.Role.DECORATIVE, Member.Run.UPRIGHT, 139.7, 19.05, 3000, 150, Member.Coat.FAILING, contact);
    }

    public static Damage cornerFoot(Member corner) { return damage(corner, 1, 0, 172, 19.05, 15, 4.05, 0, 0, false); }

    public static Member sill() {
        return member("window-sill", "east", MemberKind.WINDOW_SILL, Member.Role.SHEDS_WATER, Member.Run.LEVEL, 50.8, 139.7, 1000, 900, Member.Coat.FAILING, Member.Contact.NONE);
    }

    public static Damage sillSpot(Member sill) { return damage(sill, 1, 420, 520, 11, 8, 0, 0, 0, false); }

    public static Member beam() {
        return member("porch-beam", "south", MemberKind.BEAM, Member.Role.BEARS_LOAD, Member.Run.LEVEL, 190, 140, 3600, 2900, Member.Coat.FAILING, Member.Contact.NONE);
    }

    public static Damage beamHollow(Member beam) { return damage(beam, 1, 1200, 2300, 70, 60, 30, 0, 30, true); }

    public static Scene house() {
        Scene scene = new Scene().side("south", "8ft").side("east", "").side("north", "");
        scene.add(post(), Condition.State.DECAYED, 0.27, postFoot(post())).add(corner(Member.Contact.MASONRY), Condition.State.DECAYED, 0.22, cornerFoot(corner(Member.Contact.MASONRY)))
                .add(sill(), Condition.State.SOFTENED, 0.13, sillSpot(sill())).add(beam(), Condition.State.HOLLOW, 0.24, beamHollow(beam()));
        return scene.source(Source.GUTTER_CLOGGED, "south", 0.86, 3, "porch-post-3", "porch-beam").source(Source.SPLASH_FROM_GROUND, "north", 0.7, 8, "corner-board")
                .source(Source.ICE_DAM, "south", 0.3, 4, "porch-beam");
    }
}
