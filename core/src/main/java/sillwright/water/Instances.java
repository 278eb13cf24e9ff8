package sillwright.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

import sillwright.measure.Units;
import sillwright.walk.Choice;
import sillwright.walk.Member;
import sillwright.walk.Sign;
import sillwright.walk.Side;
import sillwright.walk.Side.Downspout;
import sillwright.walk.Side.Edge;
import sillwright.walk.Side.Opening;
import sillwright.walk.Side.RoofEdge;
import sillwright.walk.Survey;
import sillwright.water.Circumstance.Here;
import sillwright.water.Instance.Reason;
import sillwright.water.Judgement.CircumstanceRow;

/// Sets up the sources that can be at work on one side, each at its place and with its reach.
///
/// A source of a roof edge stands at each edge that can have it. A source of a sill, a flashing, a joint, an end stands
/// where something was sighted that it might have made. The rest stand for the side as a whole.
final class Instances {
    /// Less than this a roof lets water run down the wall below it, mm; own choice.
    private static final double RUNS_DOWN_MM = 300;
    private static final Predicate<Member> ANY = _ -> true;
    private static final Predicate<Member> OF_WALL = member -> !Exposed.inFront(member);

    private final Survey survey;
    private final Side side;
    private final List<Sighted> sightings;
    private final List<EdgeWater> edges;
    private final Circumstances circumstances;
    private final List<Here> ofSide;
    private final List<Instance> all = new ArrayList<>();
    private final Box whole;

    private Instances(Survey survey, Side side, List<Sighted> sightings, List<EdgeWater> edges, Units units) {
        this.survey = survey;
        this.side = side;
        this.sightings = sightings;
        this.edges = edges;
        this.circumstances = new Circumstances(survey, units);
        this.ofSide = circumstances.ofSide(side);
        this.whole = Sighted.whole(side);
    }

    static List<Instance> on(Survey survey, Side side, List<Sighted> sightings, List<EdgeWater> edges, Units units) {
        Instances instances = new Instances(survey, side, sightings, edges, units);
        for (Source source : Source.values()) instances.add(source);
        return instances.all;
    }

    private void add(Source source) {
        switch (source) {
            case SPLASH_FROM_GROUND, SOIL_AGAINST_WOOD -> low(source);
            case CAPILLARY_RISE -> low(source);
            case ROOF_DRIP -> roofDrip();
            case GUTTER_CLOGGED, GUTTER_TOO_SMALL, GUTTER_HUNG_BADLY, GUTTER_JOINT_LEAKS, ROOF_EDGE_DRIPS_BEHIND -> gutters(source);
            case DOWNSPOUT_AT_WALL -> downspouts();
            case ICE_DAM -> iceDams();
            case ROOF_LEAKS_ABOVE -> wholeSide(source, new Box(whole.fromMm(), whole.toMm(), side.heightMm() - 900, whole.highMm()), ANY);
            case WIND_DRIVEN_RAIN -> wholeSide(source, whole, ANY);
            case PLANTS_HOLD_DAMP -> wholeSide(source, new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), 2500), ANY);
            case SPRINKLER -> wholeSide(source, new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), 1500), ANY);
            case INDOOR_VAPOUR, PLUMBING_LEAK -> wholeSide(source, whole, OF_WALL);
            case PORCH_FLOOR_HOLDS_WATER -> porchFloor();
            case FLASHING_FAILED, CAP_MISSING, SILL_HOLDS_WATER, JOINT_OPEN, END_GRAIN_DRINKS, TRAPPED_BEHIND_COAT -> local(source);
        }
    }

    private void wholeSide(Source source, Box wets, Predicate<Member> takes) {
        put(source, "", whole, List.of(wets), takes, false, Optional.empty(), side.lengthMm() / 2, Math.clamp((wets.lowMm() + wets.highMm()) / 2, 0, side.heightMm()), ofSide);
    }

    private void low(Source source) {
        boolean soil = source == Source.SOIL_AGAINST_WOOD, splash = source == Source.SPLASH_FROM_GROUND;
        double clearance = Math.max(0, Circumstances.clearanceMm(survey, side).orElse(0.0));
        double sees = splash ? Splash.DIRT_MM : Splash.DIRT_MM + clearance, wets = splash ? Splash.DIRT_MM : clearance + (soil ? 50 : 100);
        Predicate<Member> takes = switch (source) {
            case SOIL_AGAINST_WOOD -> member -> member.contact() == Member.Contact.GROUND || member.contact() == Member.Contact.NONE;
            case CAPILLARY_RISE -> member -> member.contact() == Member.Contact.MASONRY || member.contact() == Member.Contact.CONCRETE || member.kind() == sillwright.walk.MemberKind.SILL;
            default -> ANY;
        };
        put(source, "", new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), sees), List.of(new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), wets)), takes, false,
                Optional.empty(), side.lengthMm() / 2, 0, ofSide);
    }

    private void roofDrip() {
        for (EdgeWater water : edges) if (water.shedsHere() && !water.hasGutter()) edge(Source.ROOF_DRIP, water);
        if (edges.isEmpty()) wholeSide(Source.ROOF_DRIP, new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), Splash.DIRT_MM), ANY);
    }

    private void gutters(Source source) {
        boolean stands = false;
        for (EdgeWater water : edges) {
            if (!water.hasGutter()) continue;
            edge(source, water);
            stands = true;
        }
        if (!stands && sighted(Sign.GUTTER_FULL, Sign.GUTTER_OVERFLOWS, Sign.GUTTER_HOLDS_WATER, Sign.GUTTER_PULLED_AWAY, Sign.GUTTER_JOINT_DRIPS,
                Sign.STREAK_BELOW_GUTTER_JOINT, Sign.STAIN_BEHIND_GUTTER, Sign.DRIP_EDGE_BEHIND_GUTTER)) wholeSide(source, whole, ANY);
    }

    private void iceDams() {
        for (EdgeWater water : edges) if (water.shedsHere()) edge(Source.ICE_DAM, water);
        if (edges.isEmpty()) wholeSide(Source.ICE_DAM, new Box(whole.fromMm(), whole.toMm(), side.heightMm() - 600, whole.highMm()), ANY);
    }

    /// A source at a roof edge: at the eave, at the ground below it, and down the wall where the roof hardly hangs over.
    private void edge(Source source, EdgeWater water) {
        RoofEdge edge = water.edge();
        double from = edge.left().own() - 600, to = edge.left().own() + edge.length().own() + 600, height = edge.height().own();
        boolean front = edge.projects().isPresent();
        Predicate<Member> takes = front ? member -> Exposed.inFront(member) || Exposed.atEave(member) : OF_WALL.or(member -> edges.size() == 1);
        List<Box> wets = new ArrayList<>();
        if (source == Source.ICE_DAM) wets.add(new Box(from, to, height - 1200, height + 400));
        else wets.add(new Box(from, to, whole.lowMm(), Splash.DIRT_MM));
        if (source != Source.ROOF_DRIP && source != Source.ICE_DAM) {
            wets.add(new Box(from, to, height - 400, height + 400));
            if (edge.overhang().own() < RUNS_DOWN_MM) wets.add(new Box(from, to, whole.lowMm(), height));
        }
        List<Here> here = new ArrayList<>(ofSide);
        here.addAll(circumstances.ofEdge(water));
        put(source, water.place(), new Box(from, to, whole.lowMm(), height + 600), wets, takes, false, Optional.of(edge), edge.left().own() + edge.length().own() / 2,
                source == Source.ROOF_DRIP ? 0 : height, here);
    }

    private void downspouts() {
        boolean stands = false;
        for (EdgeWater water : edges) {
            List<Downspout> downspouts = water.edge().gutter().map(Side.Gutter::downspouts).orElse(List.of());
            for (int i = 0; i < downspouts.size(); i++) {
                Downspout downspout = downspouts.get(i);
                double at = downspout.left().own();
                String place = "downspout" + (downspouts.size() > 1 ? " " + (i + 1) : "") + " of the " + water.place();
                List<Here> here = new ArrayList<>(ofSide);
                here.addAll(circumstances.ofDownspout(downspout));
                put(Source.DOWNSPOUT_AT_WALL, place, new Box(at - 1200, at + 1200, whole.lowMm(), water.edge().height().own()),
                        List.of(new Box(at - 900, at + 900, whole.lowMm(), Splash.DIRT_MM)), ANY, false, Optional.of(water.edge()), at, 0, here);
                stands = true;
            }
        }
        if (!stands && sighted(Sign.DOWNSPOUT_EMPTIES_AT_WALL, Sign.DOWNSPOUT_LOOSE, Sign.STREAK_ON_DOWNSPOUT_WALL))
            wholeSide(Source.DOWNSPOUT_AT_WALL, new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), Splash.DIRT_MM), ANY);
    }

    private void porchFloor() {
        boolean porch = edges.stream().anyMatch(water -> water.edge().projects().isPresent()) || survey.membersOn(side.id()).stream().anyMatch(Exposed::onPorch);
        if (porch || sighted(Sign.WATER_STANDS_ON_FLOOR, Sign.FLOOR_FALLS_TO_HOUSE)) wholeSide(Source.PORCH_FLOOR_HOLDS_WATER, new Box(whole.fromMm(), whole.toMm(), whole.lowMm(), 1500), Exposed::onPorch);
    }

    /// Stands where a sighting that the source might have made names a place; and somewhere on the side where all such sightings name none.
    private void local(Source source) {
        Set<String> places = new TreeSet<>();
        boolean unplaced = false;
        List<Sighted> made = sightings.stream().filter(s -> s.sighting().seen() && Judgement.links(s.sighting().sign()).stream().anyMatch(link -> link.source() == source)).toList();
        for (Sighted sighted : made) {
            if (!sighted.placed()) unplaced = true;
            else if (ofOpenings(source) && opening(sighted).isPresent()) {
                Opening opening = opening(sighted).get();
                if (places.add(name(opening))) at(source, name(opening), opening);
            } else if (sighted.member().isPresent() && fits(source, sighted.member().get())) {
                Member member = sighted.member().get();
                if (places.add(member.id())) at(source, member);
            } else if (sighted.member().isEmpty() && places.add(sighted.box().toString())) {
                Box box = sighted.box();
                put(source, sighted.sighting().left().map(left -> "spot " + left.text() + " from the left").orElse(""), box.wider(150, 150, 150), List.of(box.wider(150, 600, 150)), ANY, false, Optional.empty(),
                        Math.clamp(box.midMm(), 0, side.lengthMm()), Math.max(0, (box.lowMm() + box.highMm()) / 2), ofSide);
            }
        }
        if (source == Source.END_GRAIN_DRINKS)
            for (Member member : survey.membersOn(side.id())) if (standsOnBareEnd(member) && places.add(member.id())) at(source, member);
        if (unplaced && places.isEmpty()) put(source, "", whole, List.of(), ANY, true, Optional.empty(), side.lengthMm() / 2, side.heightMm() / 2, ofSide);
    }

    private static boolean standsOnBareEnd(Member member) {
        return member.startEnd() == Member.EndGrain.BARE && member.contact() != Member.Contact.NONE
                && (member.run() == Member.Run.UPRIGHT || member.run() == Member.Run.RAKING);
    }

    private static boolean ofOpenings(Source source) {
        return switch (source) {
            case SILL_HOLDS_WATER, FLASHING_FAILED, JOINT_OPEN, TRAPPED_BEHIND_COAT -> true;
            default -> false;
        };
    }

    private static boolean fits(Source source, Member member) {
        return switch (source) {
            case SILL_HOLDS_WATER -> Exposed.ofOpening(member);
            case CAP_MISSING -> Exposed.shedsFromTop(member);
            case FLASHING_FAILED -> !Exposed.inFront(member);
            default -> true;
        };
    }

    private void at(Source source, String name, Opening opening) {
        Box box = Box.of(opening), sees = box.wider(300, 900, 300);
        Box wets = switch (source) {
            case SILL_HOLDS_WATER -> new Box(box.fromMm() - 200, box.toMm() + 200, box.lowMm() - 600, box.lowMm() + 200);
            case FLASHING_FAILED -> box.wider(200, 300, 300);
            default -> box.wider(200, 300, 150);
        };
        put(source, name, sees, List.of(wets), OF_WALL, false, Optional.empty(), box.midMm(), source == Source.FLASHING_FAILED ? box.highMm() : box.lowMm(), ofSide);
    }

    private void at(Source source, Member member) {
        Box box = Box.of(member), near = box.wider(150, 300, 150);
        Predicate<Member> takes = source == Source.END_GRAIN_DRINKS ? other -> other.id().equals(member.id()) : ANY;
        List<Here> here = new ArrayList<>(ofSide);
        here.addAll(circumstances.ofMember(member));
        put(source, member.title(), near, List.of(near), takes, false, Optional.empty(), Math.clamp(box.midMm(), 0, side.lengthMm()), Math.max(0, box.lowMm()), here);
    }

    /// The window or door that a sighting speaks of: of a part of one, or beside or below one.
    private Optional<Opening> opening(Sighted sighted) {
        if (sighted.member().isPresent() && !Exposed.ofOpening(sighted.member().get())) return Optional.empty();
        boolean measured = sighted.member().isPresent() || sighted.sighting().left().isPresent();
        if (!measured) return Optional.empty();
        double mid = sighted.box().midMm();
        return side.openings().stream().filter(opening -> Box.of(opening).wider(250, 900, 300).meets(sighted.box()))
                .min((a, b) -> Double.compare(Math.abs(Box.of(a).midMm() - mid), Math.abs(Box.of(b).midMm() - mid)));
    }

    /// Openings whose feet stand nearer than this in height are in one row, as the storey has them, mm.
    private static final double ROW_MM = 900;

    /// `window 2 from the left`, counted in its own row; `upper window 1 from the left` where there is a row below; `door` where there is one alone.
    private String name(Opening opening) {
        List<Opening> kin = side.openings().stream().filter(other -> other.kind() == opening.kind()).toList();
        List<Opening> alike = kin.stream().filter(other -> Math.abs(other.bottom().own() - opening.bottom().own()) < ROW_MM)
                .sorted((a, b) -> Double.compare(a.left().own(), b.left().own())).toList();
        boolean upper = kin.stream().anyMatch(other -> other.bottom().own() < opening.bottom().own() - ROW_MM);
        String kind = (upper ? "upper " : "") + Choice.said(opening.kind());
        return alike.size() == 1 ? kind : kind + " " + (alike.indexOf(opening) + 1) + " from the left";
    }

    private boolean sighted(Sign... signs) {
        return sightings.stream().anyMatch(s -> s.sighting().seen() && List.of(signs).contains(s.sighting().sign()));
    }

    private void put(Source source, String place, Box sees, List<Box> wets, Predicate<Member> takes, boolean elsewhere, Optional<RoofEdge> edge, double leftMm,
                     double aboveMm, List<Here> here) {
        List<Reason> reasons = new ArrayList<>();
        double prior = Judgement.prior(source), odds = prior / (1 - prior);
        for (Here one : here) {
            for (CircumstanceRow row : Judgement.rows(one.what(), source)) {
                if (row.sign().filter(sign -> lookedFor(sign, source, sees)).isPresent()) continue;
                Reason reason = new Reason(row.words().replace("{value}", one.value()), row.bits(), row.sign());
                if (reasons.stream().anyMatch(other -> other.words().equals(reason.words()))) continue;
                reasons.add(reason);
                odds *= Math.pow(2, row.bits());
            }
        }
        all.add(new Instance(source, side, place, sees, wets, takes, elsewhere, edge, leftMm, aboveMm, odds / (1 + odds), reasons));
    }

    /// Whether a sighting says the same as a measure. One that names no place does not say of which of several downspouts it speaks.
    private boolean lookedFor(Sign sign, Source source, Box sees) {
        boolean several = source == Source.DOWNSPOUT_AT_WALL && edges.stream().flatMap(water -> water.edge().gutter().stream()).mapToInt(gutter -> gutter.downspouts().size()).sum() > 1;
        return sightings.stream().anyMatch(s -> s.sighting().sign() == sign && (!several || s.placed() && s.box().meets(sees)));
    }
}
