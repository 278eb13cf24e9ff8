package sillwright.water;

import module java.base;

import sillwright.measure.Csv;
import sillwright.walk.Choice;
import sillwright.walk.Member.Contact;
import sillwright.walk.Member.EndGrain;
import sillwright.walk.Member.Run;
import sillwright.walk.MemberKind;
import sillwright.walk.Side.*;
import sillwright.walk.Sign;
import sillwright.walk.Survey;

/// One written case of `diagnosis/cases.csv`: what a document tells, as a small survey, with the source that should lead.
record Case(String name, String document, String known, Survey survey, Source leading, String words) {
    private static final String SIDE = "south";

    static List<Case> all() { return all("cases"); }

    /// Those in which nobody looked at the source itself.
    static List<Case> indirect() { return all("cases-indirect"); }

    private static List<Case> all(String file) {
        try (InputStream in = Case.class.getResourceAsStream("/diagnosis/" + file + ".csv")) {
            return Csv.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)).rows().stream().map(Case::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Case of(Csv.Row row) {
        Scene scene = house(row.get("house"));
        seen(scene, row.get("seen"), true);
        seen(scene, row.get("absent"), false);
        return new Case(row.get("case"), row.get("document"), row.get("known"), scene.survey(), Source.valueOf(row.get("leading")), row.get("words"));
    }

    private static void seen(Scene scene, String signs, boolean seen) {
        for (String one : signs.split(";")) {
            if (one.isBlank()) continue;
            String[] parts = one.strip().split("@");
            Sign sign = Choice.of(Sign.class, parts[0]);
            String[] at = parts.length > 1 ? parts[1].split("/") : new String[0];
            scene.look(SIDE, sign, seen, at.length == 1 ? at[0] : "", at.length == 2 ? at[0] : "", at.length == 2 ? at[1] : "");
        }
    }

    private static Scene house(String words) {
        Map<String, String> said = new HashMap<>();
        for (String word : words.strip().split(" +")) said.put(word.contains("=") ? word.substring(0, word.indexOf('=')) : word, word.substring(word.indexOf('=') + 1));
        Optional<Gutter> gutter = !said.containsKey("gutter") ? Optional.empty()
                : Scene.gutter(said.get("gutter").equals("gutter") ? "5in" : said.get("gutter"), Scene.downspout("1ft", "3in", said.getOrDefault("downspout", "block").equals("foot") ? Empties.AT_FOOT
                        : said.getOrDefault("downspout", "block").equals("drain") ? Empties.DRAIN : Empties.SPLASH_BLOCK), Scene.downspout("29ft", "3in", Empties.DRAIN));
        List<RoofEdge> edges = said.containsKey("gable") ? List.of(Scene.rake("4in")) : List.of(Scene.eave(said.get("eave"), gutter));
        Ground ground = Scene.ground(Choice.of(Surface.class, said.getOrDefault("ground", "grass")), said.get("clear"), said.getOrDefault("fall", ""));
        Scene scene = new Scene().rain("4in/h", Scene.months(said.containsKey("cold") ? -9 : -2, said.containsKey("wet") ? 140 : 90, said.containsKey("windy") ? 6 : 4))
                .side(SIDE, said.getOrDefault("bearing", "180deg"), edges, ground, Scene.window("4ft"), Scene.window("12ft"));
        for (String member : said.getOrDefault("with", "").split("\\+")) if (!member.isEmpty()) member(scene, member, said.get("clear"));
        return scene;
    }

    private static void member(Scene scene, String id, String clear) {
        switch (id) {
            case "window-sill" -> put(scene, id, MemberKind.WINDOW_SILL, Run.LEVEL, "2in", "36in", "46in", "28in", EndGrain.COATED, Contact.NONE);
            case "casing-left" -> put(scene, id, MemberKind.CASING, Run.UPRIGHT, "4in", "60in", "43in", "30in", EndGrain.COATED, Contact.NONE);
            case "head-casing" -> put(scene, id, MemberKind.HEAD_CASING, Run.LEVEL, "4in", "40in", "44in", "90in", EndGrain.COATED, Contact.NONE);
            case "lowest-clapboard" -> put(scene, id, MemberKind.CLAPBOARD, Run.LEVEL, "5in", "30ft", "0in", clear, EndGrain.COATED, Contact.NONE);
            case "high-clapboard" -> put(scene, id, MemberKind.CLAPBOARD, Run.LEVEL, "5in", "30ft", "0in", "7ft", EndGrain.COATED, Contact.NONE);
            case "corner-board" -> put(scene, id, MemberKind.CORNER_BOARD, Run.UPRIGHT, "5in", "9ft", "0in", clear, EndGrain.BARE, Contact.NONE);
            case "fascia" -> put(scene, id, MemberKind.FASCIA, Run.LEVEL, "6in", "30ft", "0in", "9ft6in", EndGrain.COATED, Contact.NONE);
            case "soffit" -> put(scene, id, MemberKind.SOFFIT, Run.LEVEL, "6in", "30ft", "0in", "9ft4in", EndGrain.COATED, Contact.NONE);
            case "sill" -> put(scene, id, MemberKind.SILL, Run.LEVEL, "8in", "30ft", "0in", clear, EndGrain.COVERED, Contact.MASONRY);
            case "beam-in-masonry" -> put(scene, id, MemberKind.BEAM, Run.OUTWARD, "8in", "12ft", "12ft", clear, EndGrain.BARE, Contact.MASONRY);
            case "stringer" -> put(scene, id, MemberKind.STRINGER, Run.RAKING, "10in", "4ft", "20ft", "0in", EndGrain.BARE, Contact.GROUND);
            case "post-in-ground" -> put(scene, id, MemberKind.POST, Run.UPRIGHT, "4in", "8ft", "15ft", "-1ft", EndGrain.BARE, Contact.GROUND);
            case "porch-post" -> put(scene, id, MemberKind.COLUMN, Run.UPRIGHT, "5in", "7ft", "10ft", "2ft", EndGrain.COATED, Contact.PORCH_FLOOR);
            case "porch-floor" -> put(scene, id, MemberKind.FLOORBOARD, Run.OUTWARD, "4in", "6ft", "12ft", "2ft", EndGrain.BARE, Contact.NONE);
            case "rail" -> put(scene, id, MemberKind.RAIL, Run.LEVEL, "4in", "6ft", "12ft", "5ft", EndGrain.COATED, Contact.NONE);
            case "newel" -> put(scene, id, MemberKind.NEWEL, Run.UPRIGHT, "5in", "4ft", "18ft", "2ft", EndGrain.COATED, Contact.PORCH_FLOOR);
            default -> throw new AssertionError("the cases know no member " + id);
        }
    }

    private static void put(Scene scene, String id, MemberKind kind, Run run, String width, String length, String left, String above, EndGrain start, Contact contact) {
        scene.member(id, SIDE, kind, run, width, length, left, above, start, contact);
    }

    /// Where the expected source stands: 1 leads; 99 where it is not among the sources at all.
    int rank(ToDoubleBiFunction<Sign, Source> factor) {
        List<Instance> ranking = Water.ranking(survey, factor);
        for (int i = 0; i < ranking.size(); i++) if (ranking.get(i).source() == leading) return i + 1;
        return 99;
    }

    public static void main(String[] args) {
        List<Case> all = all();
        for (Case one : all) {
            int rank = one.rank((_, _) -> 1);
            int held = 0, two = 0, draws = Integer.parseInt(args[0]);
            for (int draw = 1; draw <= draws; draw++) {
                int r = one.rank(disturbed(draw));
                if (r == 1) held++;
                if (r <= 2) two++;
            }
            if (rank != 1 || held < 0.97 * draws) System.out.println(one.name + " expected " + one.leading + " is " + rank + ", held " + held + "/" + draws + " two " + two + ": " + Water.find(one.survey).sources().stream().limit(4)
                    .map(s -> s.source() + " " + Math.round(100 * s.probability()) + (s.place().isEmpty() ? "" : " (" + s.place() + ")")).toList());
        }
    }

    /// Every strength by its own factor from 0.7 to 1.3.
    static ToDoubleBiFunction<Sign, Source> disturbed(int draw) {
        double[][] factors = new double[Sign.values().length][Source.values().length];
        SplittableRandom random = new SplittableRandom(draw);
        for (double[] row : factors) for (int i = 0; i < row.length; i++) row[i] = random.nextDouble(0.7, 1.3);
        return (sign, source) -> factors[sign.ordinal()][source.ordinal()];
    }
}
