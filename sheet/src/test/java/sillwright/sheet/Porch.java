package sillwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Basis;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Units;
import sillwright.walk.Building;
import sillwright.walk.Fault;
import sillwright.walk.Member;
import sillwright.walk.Member.Coat;
import sillwright.walk.Member.Contact;
import sillwright.walk.Member.EndGrain;
import sillwright.walk.Member.Face;
import sillwright.walk.Member.Role;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.ProbeReading;
import sillwright.walk.Side;
import sillwright.walk.Sighting;
import sillwright.walk.Sign;
import sillwright.walk.Spot;
import sillwright.walk.Survey;
import sillwright.water.WaterFindings;
import sillwright.wood.Condition;
import sillwright.wood.Damage;
import sillwright.wood.Maps;
import sillwright.wood.SectionLeft;
import sillwright.wood.WoodFindings;
import sillwright.work.CutSolver;
import sillwright.work.Material;
import sillwright.work.Repair;
import sillwright.work.Treatment;
import sillwright.work.WorkFindings;
import sillwright.watch.WatchFindings;

/// An invented house with a porch, its findings set down by hand: something to draw.
final class Porch {
    static final LocalDate START = LocalDate.of(2026, 5, 4);
    static final long WALKED = 1_776_168_000_000L;

    private Porch() {}

    static Quantity in(String text) { return Quantity.read(text, Kind.LENGTH); }

    private static Optional<Quantity> some(String text) { return Optional.of(in(text)); }

    static Settings settings(Units units) {
        CutSolver none = (lengths, stock, kerf) -> new CutSolver.Layout(List.of(), 0);
        return new Settings(START, units, 1, none, Settings.COMMON_STOCK_MM);
    }

    static Assessment empty() {
        Survey survey = new Survey(Optional.empty(), Map.of(), Map.of(), List.of(), List.of(), List.of(), List.of(), List.of(), 0);
        return new Assessment(survey, settings(Units.US), new WaterFindings(List.of(), List.of(), List.of(), Optional.empty(), List.of()),
                new WoodFindings(Map.of(), List.of()),
                new WorkFindings(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()), new WatchFindings(List.of()));
    }

    static Assessment assessment(Units units) { return new Scene().assessment(units); }

    /// A scene being set: members first, then what is wrong with them.
    static final class Scene {
        final Map<String, Side> sides = new LinkedHashMap<>();
        final Map<String, Member> members = new LinkedHashMap<>();
        final List<Survey.Noted<ProbeReading>> probes = new ArrayList<>();
        final List<Survey.Noted<Sighting>> sightings = new ArrayList<>();
        final Map<String, Condition> conditions = new LinkedHashMap<>();
        final List<Repair> repairs = new ArrayList<>();

        Scene() {
            sides();
            members();
            conditions();
            repairs();
        }

        private void sides() {
            Side.Gutter small = new Side.Gutter(Side.GutterShape.HALF_ROUND, in("5in"), Optional.empty(), Optional.empty(),
                    List.of(new Side.Downspout(in("11in"), in("3in"), Optional.empty(), Side.Empties.AT_FOOT, Optional.empty())));
            Side.Gutter long1 = new Side.Gutter(Side.GutterShape.OGEE, in("5in"), some("3-1/2in"), Optional.empty(),
                    List.of(new Side.Downspout(in("27ft 4in"), in("3in"), some("2in"), Side.Empties.SPLASH_BLOCK, some("3ft"))));
            sides.put("south", new Side("south", "South side, porch", Quantity.read("186deg", Kind.ANGLE), in("28ft"), List.of(
                    new Side.RoofEdge("main", Side.Edge.EAVE, in("0in"), in("28ft"), in("17ft"), in("14in"), Optional.empty(), Optional.empty(),
                            some("13ft"),
                            Optional.of(Quantity.read("8/12", Kind.PITCH)), Optional.of(long1)),
                    new Side.RoofEdge("porch", Side.Edge.EAVE, in("2ft"), in("24ft"), in("9ft 4in"), in("9in"), Optional.empty(), some("7ft"),
                            some("7ft 9in"),
                            Optional.of(Quantity.read("3/12", Kind.PITCH)), Optional.of(small))),
                    new Side.Ground(Side.Surface.PAVING, Optional.empty(), some("5in")), some("22ft"), List.of(
                    new Side.Opening(Side.OpeningKind.WINDOW, in("5ft"), in("4ft 6in"), in("34in"), in("64in")),
                    new Side.Opening(Side.OpeningKind.DOOR, in("12ft 6in"), in("2ft"), in("36in"), in("82in")),
                    new Side.Opening(Side.OpeningKind.WINDOW, in("20ft"), in("4ft 6in"), in("34in"), in("64in")),
                    new Side.Opening(Side.OpeningKind.WINDOW, in("5ft"), in("13ft 2in"), in("30in"), in("40in")),
                    new Side.Opening(Side.OpeningKind.WINDOW, in("20ft"), in("13ft 2in"), in("30in"), in("40in")))));
            sides.put("west", new Side("west", "West side, gable", Quantity.read("276deg", Kind.ANGLE), in("26ft"), List.of(
                    new Side.RoofEdge("left-rake", Side.Edge.RAKE, in("0in"), in("13ft"), in("17ft"), in("8in"), some("25ft 8in"), Optional.empty(),
                            Optional.empty(), Optional.empty(), Optional.empty()),
                    new Side.RoofEdge("right-rake", Side.Edge.RAKE, in("13ft"), in("13ft"), in("17ft"), in("8in"), some("25ft 8in"), Optional.empty(),
                            Optional.empty(), Optional.empty(), Optional.empty())),
                    new Side.Ground(Side.Surface.MULCH, Optional.empty(), some("1in")), Optional.empty(), List.of(
                    new Side.Opening(Side.OpeningKind.WINDOW, in("6ft"), in("4ft 6in"), in("34in"), in("64in")),
                    new Side.Opening(Side.OpeningKind.WINDOW, in("16ft"), in("4ft 6in"), in("34in"), in("64in")),
                    new Side.Opening(Side.OpeningKind.VENT, in("12ft"), in("20ft"), in("24in"), in("30in")))));
        }

        private Member add(String side, String id, MemberKind kind, String title, Role role, Run run, String width, String depth, String length,
                String left, String above, String slant) {
            Member member = new Member(id, side, kind, title, role, kind == MemberKind.FLOORBOARD ? "douglas-fir-coast" : "pine-eastern-white", run,
                    in(width), in(depth), in(length), in(left), in(above),
                    slant.isEmpty() ? Optional.empty() : Optional.of(Quantity.read(slant, Kind.ANGLE)), EndGrain.BARE, EndGrain.COATED, Coat.FAILING,
                            Contact.PORCH_FLOOR);
            members.put(id, member);
            return member;
        }

        private void members() {
            for (int i = 1; i <= 5; i++)
                add("south", "s-post-" + i, MemberKind.POST, "porch post " + i + " from the left", Role.BEARS_LOAD, Run.UPRIGHT, "5-1/2in", "5-1/2in",
                        "6ft 8in", (2 + (i - 1) * 5.88) + "ft", "2ft", "");
            add("south", "s-beam", MemberKind.BEAM, "porch beam", Role.BEARS_LOAD, Run.LEVEL, "7-1/4in", "3in", "24ft", "2ft", "8ft 8in", "");
            add("south", "s-fascia", MemberKind.FASCIA, "main fascia", Role.SHEDS_WATER, Run.LEVEL, "7-1/4in", "3/4in", "28ft", "0in", "16ft 4in",
                    "");
            add("south", "s-sill", MemberKind.SILL, "porch sill", Role.BEARS_LOAD, Run.LEVEL, "7-1/4in", "5-1/2in", "24ft", "2ft", "14in", "");
            for (int i = 1; i <= 3; i++)
                add("south", "s-board-" + i, MemberKind.FLOORBOARD, "porch floorboard " + i, Role.BEARS_LOAD, Run.OUTWARD, "3-1/4in", "1in", "7ft",
                        (8 + i * 0.29) + "ft", "22in", "");
            add("south", "s-rail-top", MemberKind.RAIL, "handrail, bays 1 to 2", Role.BEARS_LOAD, Run.LEVEL, "3-1/2in", "2-1/4in", "5ft 5in",
                    "2ft 5-1/2in", "4ft 9in", "");
            add("south", "s-rail-low", MemberKind.RAIL, "bottom rail, bays 1 to 2", Role.DECORATIVE, Run.LEVEL, "3-1/2in", "2-1/4in", "5ft 5in",
                    "2ft 5-1/2in", "2ft 4in", "");
            add("south", "s-stringer-l", MemberKind.STRINGER, "left stringer of the steps", Role.BEARS_LOAD, Run.RAKING, "11-1/4in", "1-1/2in", "4ft",
                    "11ft 2in", "1in", "38deg");
            add("south", "s-wsill-1", MemberKind.WINDOW_SILL, "sill of the left lower window", Role.SHEDS_WATER, Run.LEVEL, "1-3/4in", "5in", "38in",
                    "4ft 10in", "4ft 4in", "");
            add("south", "s-wsill-2", MemberKind.WINDOW_SILL, "sill of the right lower window", Role.SHEDS_WATER, Run.LEVEL, "1-3/4in", "5in", "38in",
                    "19ft 10in", "4ft 4in", "");
            add("west", "w-corner-l", MemberKind.CORNER_BOARD, "left corner board", Role.SHEDS_WATER, Run.UPRIGHT, "4-1/2in", "7/8in", "16ft", "0in",
                    "1in", "");
            add("west", "w-corner-r", MemberKind.CORNER_BOARD, "right corner board", Role.SHEDS_WATER, Run.UPRIGHT, "4-1/2in", "7/8in", "16ft",
                    "25ft 7-1/2in", "1in", "");
            add("west", "w-skirt", MemberKind.SKIRT_BOARD, "skirt board", Role.SHEDS_WATER, Run.LEVEL, "9-1/4in", "7/8in", "25ft 3in", "4-1/2in",
                    "1in", "");
            add("west", "w-clap-1", MemberKind.CLAPBOARD, "first clapboard over the skirt", Role.SHEDS_WATER, Run.LEVEL, "4in", "1/2in", "25ft 3in",
                    "4-1/2in", "11in", "");
            add("west", "w-wsill-1", MemberKind.WINDOW_SILL, "sill of the left window", Role.SHEDS_WATER, Run.LEVEL, "1-3/4in", "5in", "38in",
                    "5ft 10in", "4ft 4in", "");
            add("west", "w-rake-l", MemberKind.RAKE_BOARD, "left rake board", Role.SHEDS_WATER, Run.RAKING, "7-1/4in", "3/4in", "15ft", "0in",
                    "16ft 6in", "33.7deg");
        }

        private void probe(Member member, Face face, double along, double across, double depth, boolean ranOut) {
            Spot spot = new Spot(member.id(), face, Quantity.ofLength(along, Units.US), Quantity.ofLength(across, Units.US));
            probes.add(new Survey.Noted<>("p" + probes.size(), WALKED, new ProbeReading(spot, Quantity.ofLength(depth, Units.US), in("4-3/4in"),
                    ranOut)));
        }

        /// Soft at the start, tapering off by `reachMm`, deepest `deepMm`.
        private Damage soften(String id, double from, double to, double deepMm, Condition.State state, boolean hollow, Face... faces) {
            Member member = members.get(id);
            double middle = from <= 0 ? 0 : (from + to) / 2, half = from <= 0 ? to : (to - from) / 2;
            List<sillwright.wood.DepthMap> maps = new ArrayList<>();
            for (int f = 0; f < faces.length; f++) {
                Face face = faces[f];
                double scale = f == 0 ? 1 : 0.55, wide = member.acrossMm(face);
                for (int row = 1; row <= 2; row++)
                    for (double along : new double[] {Math.max(20, middle - half * 0.5), middle + half * 0.35, middle + half * 0.8,
                            Math.min(member.lengthMm() - 30, middle + half * 1.3)}) {
                        double depth = Math.max(0, Math.min(member.throughMm(face),
                                scale * deepMm * (1 - Math.pow((along - middle) / half, 2)) * (row == 1 ? 1 : 0.8)));
                        probe(member, face, along, wide * row / 3, Math.round(depth), hollow && depth > 60);
                    }
                List<ProbeReading> here = probes.stream().map(Survey.Noted::what).filter(p -> p.spot().member().equals(id)
                        && p.spot().face() == face).toList();
                maps.add(Maps.of(member, face, (along, across) -> scale * deepMm * (1 - Math.pow((along - middle) / half,
                        2)) * (1 - 0.35 * Math.abs(across / wide - 0.4)), here));
            }
            double lostFront = Math.min(deepMm, member.depthMm() * 0.95), kept = Math.max(0.03, 1 - lostFront / member.depthMm());
            SectionLeft section = new SectionLeft(Math.max(from, middle), lostFront, 0, faces.length > 1 ? deepMm * 0.4 : 0, 0, kept * 0.92,
                    kept * kept, kept, 0, lostFront / 2, kept * 0.7);
            Damage damage = new Damage(id + "/1", member, faces[0], from, to, deepMm, maps.getFirst().volumeMl(),
                    (to - from) * member.acrossMm(faces[0]), section, hollow);
            conditions.put(id, new Condition(member, state, maps, List.of(damage), Optional.of(0.27),
                    List.of(new Condition.Corrected(150, 0.29, 0.27, true),
                    new Condition.Corrected(900, 0.14, 0.13, true)), faces.length * 8, "Soft from the " + Said.startName(member) + ", deepest on the "
                            + faces[0] + " face.",
                    List.of(Basis.memory("Wood Handbook, FPL-GTR-282", "ch. 4, meter correction"))));
            return damage;
        }

        private final Map<String, Damage> damages = new LinkedHashMap<>();

        private void conditions() {
            damages.put("s-post-3", soften("s-post-3", 0, 360, 92, Condition.State.HOLLOW, true, Face.FRONT, Face.LEFT));
            damages.put("s-post-1", soften("s-post-1", 0, 240, 30, Condition.State.DECAYED, false, Face.FRONT));
            damages.put("s-post-5", soften("s-post-5", 0, 300, 60, Condition.State.DECAYED, false, Face.LEFT, Face.FRONT));
            damages.put("s-wsill-1", soften("s-wsill-1", 300, 620, 22, Condition.State.DECAYED, false, Face.FRONT, Face.TOP));
            damages.put("s-beam", soften("s-beam", 5400, 6100, 9, Condition.State.SOFTENED, false, Face.FRONT));
            damages.put("w-skirt", soften("w-skirt", 0, 2600, 20, Condition.State.DECAYED, false, Face.FRONT));
            damages.put("w-corner-l", soften("w-corner-l", 0, 500, 20, Condition.State.DECAYED, false, Face.FRONT));
            damages.put("s-rail-low", soften("s-rail-low", 0, 180, 35, Condition.State.DECAYED, false, Face.FRONT));
            damages.put("s-board-2", soften("s-board-2", 0, 260, 18, Condition.State.DECAYED, false, Face.TOP));
            damages.put("s-stringer-l", soften("s-stringer-l", 0, 320, 34, Condition.State.DECAYED, false, Face.FRONT));
            Map<String, Condition> ordered = new LinkedHashMap<>();
            for (Member member : members.values()) {
                Condition known = conditions.get(member.id());
                boolean sound = member.id().endsWith("-2") || member.id().equals("s-sill") || member.id().equals("w-clap-1");
                if (sound && known == null) for (double along : new double[] {100, 400}) probe(member, member.faces().getFirst(), along,
                        member.acrossMm(member.faces().getFirst()) / 2, 0, false);
                ordered.put(member.id(), known != null ? known : new Condition(member, sound ? Condition.State.SOUND : Condition.State.NOT_PROBED,
                        List.of(), List.of(),
                        sound ? Optional.of(0.14) : Optional.empty(), List.of(), sound ? 2 : 0, sound ? "Sound where it was probed."
                                : "Not probed yet.", List.of()));
            }
            conditions.clear();
            conditions.putAll(ordered);
        }

        private void repair(String member, Treatment treatment, boolean urgent, List<Repair.Piece> pieces, List<Repair.Need> needs, String... steps) {
            String id = "R" + (repairs.size() + 1);
            Damage damage = damages.get(member);
            repairs.add(new Repair(id, damage, treatment,
                    List.of("The decay goes deeper than a filler may carry, and stops well below the joint line.",
                    "The top 80 % of the member is sound and stays."),
                    List.of(new Repair.Alternative(new Treatment.Fill(900, 400), 0,
                            "the member bears load, and filled wood is counted as carrying nothing"),
                            new Repair.Alternative(new Treatment.Replace("nothing sound is left"), 30_000,
                                    "takes away 2.0 m of sound original wood")),
                    urgent, urgent ? List.of("W1") : List.of(), List.of(steps), pieces, needs,
                    urgent ? List.of("Shore the beam on both sides before the post is cut. Loads are a screening value: have a licensed engineer "
                            + "check the shore.") : List.of("Paint from before 1978 is taken to hold lead: see the safe-work plan."),
                    List.of(Basis.practice("splice above the last soft reading by a margin"), Basis.memory("NDS 2018", "3.3.3"))));
        }

        private static Repair.Piece piece(String label, String id, String w, String d, String l) {
            return new Repair.Piece(label, id, "pine-eastern-white", in(w).own(), in(d).own(), in(l).own());
        }

        private void repairs() {
            repair("s-post-3", new Treatment.ScarfSplice(1180, 5, 5 * 139.7, 0), true,
                    List.of(piece("R1 new foot", "R1", "5-1/2in", "5-1/2in", "46-1/2in")),
                    List.of(new Repair.Need(Material.ADHESIVE, 310), new Repair.Need(Material.SCREW, 8), new Repair.Need(Material.PRIMER, 120)),
                    "Shore the beam beside the post.", "Cut the scarf 1:5, its upper tip 46-1/2 in above the foot.",
                            "Dry-fit, back-prime, bed in adhesive, draw up with 8 stainless screws from alternate faces.");
            repair("s-post-5", new Treatment.ButtSplice(420), true, List.of(piece("R2 new foot", "R2", "5-1/2in", "5-1/2in", "16-1/2in")),
                    List.of(new Repair.Need(Material.ADHESIVE, 90), new Repair.Need(Material.SCREW, 4)), "Shore the beam beside the post.",
                            "Cut square 16-1/2 in above the foot.", "Bore for two hardwood dowels 3/4 in by 6 in.");
            repair("s-post-1", new Treatment.BuildUp(255), false, List.of(piece("R3 base block", "R3", "7-1/4in", "7-1/4in", "10in")),
                    List.of(new Repair.Need(Material.CAPILLARY_BREAK, 34_000)), "Cut the foot off square 10 in up.",
                            "Set the base on a capillary break of sheet lead, its edge 1/4 in in from the block.");
            repair("s-wsill-1", new Treatment.Dutchman(380, 40, 25), false, List.of(piece("R4 patch", "R4", "1-5/8in", "1in", "15in")),
                    List.of(new Repair.Need(Material.ADHESIVE, 40)), "Cut the pocket 15 in by 1-5/8 in, 1 in deep, its long sides undercut 1 in 8.",
                            "Let the patch stand 1/16 in proud and plane it flush.");
            repair("s-beam", new Treatment.Recoat(90_000), false, List.of(), List.of(new Repair.Need(Material.PRIMER, 60),
                    new Repair.Need(Material.PAINT, 120)), "Scrape to sound paint.", "Let it dry below 15 %.", "Prime and coat twice.");
            repair("w-skirt", new Treatment.Replace("soft along a third of its length and split"), false,
                    List.of(piece("R6 skirt board, left length", "R6", "9-1/4in", "7/8in", "13ft"), piece("R6 skirt board, right length", "R6",
                    "9-1/4in", "7/8in", "12ft 3in")),
                    List.of(new Repair.Need(Material.PRIMER, 400)), "Take off the board; keep it as a pattern.",
                            "Back-prime the new board and its end grain.");
            repair("w-corner-l", new Treatment.ButtSplice(620), false, List.of(piece("R7 new foot", "R7", "4-1/2in", "7/8in", "24-1/2in")), List.of(),
                    "Cut at 45 degrees, falling outward.");
            repair("s-rail-low", new Treatment.Fill(140, 90), false, List.of(), List.of(new Repair.Need(Material.CONSOLIDANT, 140),
                    new Repair.Need(Material.FILLER, 90)),
                    "Drill 1/4 in holes 1-1/2 in apart, to half the depth.", "Feed 4.7 fl oz of consolidant over three passes.",
                            "Fill in lifts of 1/2 in.");
            repair("s-board-2", new Treatment.ScarfSplice(420, 8, 203, 0), false, List.of(piece("R9 board end", "R9", "3-1/4in", "1in", "16-1/2in")),
                    List.of(), "Scarf 1:8 over a joist.");
            repair("s-stringer-l", new Treatment.Watch("the next spring round"), false, List.of(), List.of(), "Probe the same points in spring.");
        }

        Assessment assessment(Units units) {
            Building building = new Building("pond-lane-house", "Pond Lane house (invented)", "An invented house, for trying the drawings.", 1888,
                    Optional.empty(), Optional.empty(), List.of());
            sightings.add(new Survey.Noted<>("s1", WALKED, new Sighting(Sign.GUTTER_FULL, true, "south", Optional.empty(), some("4ft"), some("9ft"),
                    "")));
            List<Fault> faults = List.of(new Fault("west.survey.json", "entry 12", "depth", "142 mm is not within the probe's reach of 120 mm",
                    "read the depth again", true),
                    new Fault("west.survey.json", "entry 19", "member", "'w-cornr-l' is not described in this book", "did you mean w-corner-l?",
                            true));
            Survey survey = new Survey(Optional.of(building), sides, members, probes, List.of(), sightings, List.of(), faults, 214);
            return new Assessment(survey, settings(units), Findings.water(), new WoodFindings(conditions,
                    List.of("s-sill: probed at two places only; probe it at its ends")), Findings.work(repairs, members), Findings.watch());
        }
    }
}
