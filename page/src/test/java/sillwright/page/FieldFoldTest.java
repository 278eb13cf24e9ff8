package sillwright.page;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.store.Book;
import sillwright.store.SurveyFile;
import sillwright.walk.Fault;
import sillwright.walk.Member;
import sillwright.walk.Survey;

/// The phone's fold and tape against the core's: the same histories, the same texts, the same answers.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldFoldTest {
    private static Chromium chromium;
    private static Book book;
    private static Server server;
    private static BrowserContext profile;
    private static Page page;

    @BeforeAll
    static void open(@TempDir Path folder) {
        chromium = Chromium.start();
        book = Book.begin(folder.resolve("a.book").toString());
        server = Server.start(book, 0);
        profile = chromium.profile(Chromium.Window.PHONE, ColorScheme.LIGHT);
        page = profile.newPage();
        page.navigate(server.address() + "field/");
    }

    @AfterAll
    static void close() {
        if (chromium == null) return;
        profile.close();
        server.close();
        book.close();
        chromium.close();
    }

    private static final String FOLD = """
            async text => {
                const { fold, probesOn, faces } = await import('/field/fold.js'), s = fold(JSON.parse(text).entries), n = x => x === null ? '-' : Math.round(x * 1000);
                const spot = p => [p.member, p.face, n(p.alongMm), n(p.acrossMm)].join(' '), all = ['building ' + (s.building?.yearBuilt ?? '-'), 'entries ' + s.entries.length];
                for (const side of s.sides.values()) all.push(['side', side.id, n(side.lengthMm), n(side.heightMm), n(side.topMm)].join(' '));
                for (const m of s.members.values()) {
                    all.push(['member', m.id, m.side, n(m.widthMm), n(m.depthMm), n(m.lengthMm), n(m.leftMm), n(m.aboveMm), m.coat ?? 'not-known', m.startEnd ?? 'covered'].join(' '));
                    for (const face of faces(m)) for (const p of probesOn(s, m.id, face)) all.push(['stands', spot(p), n(p.depthMm)].join(' '));
                }
                for (const p of s.probes) all.push(['probe', p.entry, spot(p), n(p.depthMm), n(p.reachMm), p.ranOut].join(' '));
                for (const m of s.moistures) all.push(['moisture', m.entry, spot(m), n(m.reading * 100), n(m.woodC)].join(' '));
                for (const o of s.sightings) all.push(['sighting', o.entry, o.sign, o.seen, o.side, o.member ?? '-', n(o.leftMm), n(o.aboveMm), o.words].join(' '));
                for (const o of s.photos) all.push(['photo', o.entry, o.file, o.side, o.pin ? spot(o.pin) : '-'].join(' '));
                for (const o of s.works) all.push(['work', o.entry, o.done, o.side, o.member ?? '-'].join(' '));
                all.push(...s.faults.map(f => ['fault', f.entry, f.field, f.grave].join(' ')).sort());
                return all;
            }""";

    private static List<String> told(Survey s) {
        List<String> all = new ArrayList<>(List.of("building " + s.building().map(b -> "" + b.yearBuilt()).orElse("-"), "entries " + s.entries()));
        s.sides().values().forEach(side -> all.add(String.join(" ", "side", side.id(), n(side.lengthMm()), n(side.heightMm()), n(side.topMm()))));
        for (Member m : s.members().values()) {
            all.add(String.join(" ", "member", m.id(), m.side(), n(m.widthMm()), n(m.depthMm()), n(m.lengthMm()), n(m.left().own()), n(m.above().own()), word(m.coat()), word(m.startEnd())));
            for (Member.Face face : m.faces()) s.probesOn(m.id(), face).forEach(p -> all.add(String.join(" ", "stands", spot(p.spot()), n(p.depthMm()))));
        }
        s.probes().forEach(p -> all.add(String.join(" ", "probe", p.entry(), spot(p.what().spot()), n(p.what().depthMm()), n(p.what().reach().own()), "" + p.what().ranOut())));
        s.moistures().forEach(m -> all.add(String.join(" ", "moisture", m.entry(), spot(m.what().spot()), n(m.what().reading().own() * 100), n(m.what().wood()))));
        s.sightings().forEach(o -> all.add(String.join(" ", "sighting", o.entry(), word(o.what().sign()), "" + o.what().seen(), o.what().side(), o.what().member().orElse("-"),
                n(o.what().left()), n(o.what().above()), o.what().words())));
        s.photos().forEach(o -> all.add(String.join(" ", "photo", o.entry(), o.what().file(), o.what().side(), o.what().pin().map(FieldFoldTest::spot).orElse("-"))));
        s.works().forEach(o -> all.add(String.join(" ", "work", o.entry(), word(o.what().done()), o.what().side(), o.what().member().orElse("-"))));
        // What the phone does not know: the table of species.
        all.addAll(s.faults().stream().filter(f -> !f.field().equals("species")).map(FieldFoldTest::fault).sorted().toList());
        return all;
    }

    private static String fault(Fault f) { return String.join(" ", "fault", f.entry().substring("entry ".length()), f.field(), "" + f.grave()); }

    private static String spot(sillwright.walk.Spot s) { return String.join(" ", s.member(), word(s.face()), n(s.alongMm()), n(s.acrossMm())); }

    private static String word(Enum<?> one) { return sillwright.walk.Choice.word(one); }

    private static String n(double value) { return "" + Math.round(value * 1000); }

    private static String n(Optional<Quantity> value) { return value.map(v -> n(v.own())).orElse("-"); }

    private static void same(String name, String text) {
        SurveyFile.Held held = SurveyFile.read(name, text);
        assertEquals(List.of(), held.setAside(), name);
        assertEquals(told(held.fold()), page.evaluate(FOLD, text), name);
    }

    @Test
    void every_example_folds_the_same_on_the_phone() throws IOException {
        try (var files = Files.list(Path.of("../examples"))) {
            List<Path> surveys = files.filter(file -> file.toString().endsWith(".survey.json")).toList();
            assertTrue(surveys.size() >= 4);
            for (Path file : surveys) same(file.getFileName().toString(), Files.readString(file));
        }
    }

    @Test
    void any_history_folds_the_same_on_the_phone() {
        long faults = 0;
        for (long seed = 1; seed <= 150; seed++) {
            String text = new Histories(new Random(seed)).text(60);
            same("seed " + seed, text);
            faults += SurveyFile.read("h", text).fold().faults().size();
        }
        assertTrue(faults > 1000, "the histories have what can go wrong in them: " + faults);
        chromium.calm();
    }

    /// Books of an invented shed, with clocks that run ahead, amendments and strikes of anything, strikes of strikes, readings off their
    /// member, sides that nobody described, work done, ids that clash.
    private static final class Histories {
        private final Random random;
        private final List<String> ids = new ArrayList<>();
        private final List<String> entries = new ArrayList<>();

        Histories(Random random) { this.random = random; }

        String text(int length) {
            for (int i = 0; i < length; i++) {
                // No two that share an id share a stamp: what orders those is the text of Java's records, which no phone has.
                String id = !ids.isEmpty() && random.nextInt(25) == 0 ? any() : "id-" + random.nextInt(1_000_000_000);
                long at = 1_776_502_800_000L + 10_000L * i + random.nextInt(9_000) + (random.nextInt(12) == 0 ? 7_000L * random.nextInt(-20, 20) : 0);
                String tick = random.nextInt(4) == 0 ? ",\"tick\":" + random.nextInt(1, 4) : "";
                entries.add("{\"id\":\"" + id + "\",\"at\":\"" + Instant.ofEpochMilli(at) + "\"" + tick + ",\"device\":\"phone-" + random.nextInt(3) + "\"," + said(i, true) + "}");
                ids.add(id);
            }
            Collections.shuffle(entries, random);
            return "{\"format\":\"sillwright-survey\",\"version\":1,\"entries\":[\n" + String.join(",\n", entries) + "\n]}";
        }

        private String any() { return ids.get(random.nextInt(ids.size())); }

        private String one(String... words) { return words[random.nextInt(words.length)]; }

        private String length() {
            return one("0 in", "3/8 in", "1-1/2 in", "2 ft", "4ft 6-1/2in", "4' 6-1/2\\\"", "114 mm", "12.5 cm", "1.5m", "6\\\"", "½ in", "2½\\\"", "24 in", "0.9 m", "3 yd", "7/16in", "5 1/2 in", "18'");
        }

        private String said(int i, boolean outer) {
            int kind = i < 6 && outer ? new int[] {0, 1, 1, 2, 2, 2}[i] : random.nextInt(outer && !ids.isEmpty() ? 26 : 18);
            String side = one("south", "south", "north", "nowhere"), member = one("a", "b", "c", "nobody"), face = one("front", "back", "left", "right", "top", "bottom");
            return switch (kind) {
                case 0 -> kind("building", "\"id\":\"shed\",\"name\":\"A shed\",\"yearBuilt\":" + (1880 + random.nextInt(40)));
                case 1 -> kind("side", "\"id\":\"" + one("south", "north") + "\",\"bearing\":\"90deg\",\"length\":\"" + one("12 ft", "4 m", "24' 6\\\"") + "\",\"ground\":{\"surface\":\"soil\"},\"edges\":["
                        + one("", "{\"kind\":\"eave\",\"left\":\"0 in\",\"length\":\"12 ft\",\"height\":\"10' 3\\\"\",\"overhang\":\"12 in\"}",
                        "{\"kind\":\"rake\",\"left\":\"0 in\",\"length\":\"12 ft\",\"height\":\"3 m\",\"overhang\":\"12 in\",\"peak\":\"18 ft\"}") + "]");
                case 2, 3 -> kind("member", "\"id\":\"" + one("a", "b", "c") + "\",\"side\":\"" + side + "\",\"kind\":\"post\",\"role\":\"bears-load\",\"species\":\"" + one("pine-eastern-white", "pine-mystery")
                        + "\",\"run\":\"" + one("upright", "level", "raking", "outward") + "\",\"width\":\"" + one("5-1/2 in", "90 mm", "6\\\"") + "\",\"depth\":\"" + one("3-1/2 in", "140 mm")
                        + "\",\"length\":\"" + one("8 ft", "2.4 m", "4' 2\\\"") + "\",\"left\":\"" + one("2 in", "1 m", "30 ft") + "\",\"above\":\"8 in\",\"startEnd\":\"" + one("bare", "coated", "covered") + "\"");
                case 4, 5, 6, 7, 8 -> kind("probe", spot(member, face) + ",\"depth\":\"" + one("0 in", "3/8 in", "1/16 in", "20 mm", "2-1/4 in", "100 mm") + "\",\"reach\":\"" + one("4 in", "100 mm", "6 in")
                        + "\"" + one("", "", ",\"ranOut\":true"));
                case 9, 10, 11 -> kind("moisture", spot(member, face) + ",\"reading\":\"" + one("18%", "29.5%", "9 %") + "\"" + one("", ",\"wood\":\"70 F\"", ",\"wood\":\"15 °C\"", ",\"wood\":\"280K\""));
                case 12, 13 -> kind("sighting", "\"sign\":\"" + one("icicles", "fungus", "mud-tubes") + "\"" + one("", ",\"seen\":false", ",\"seen\":true") + ",\"side\":\"" + side + "\""
                        + one("", ",\"member\":\"" + member + "\"") + one("", ",\"left\":\"" + length() + "\",\"above\":\"" + length() + "\"") + ",\"words\":\"" + one("", "déjà vu — ½", "plain") + "\"");
                case 14 -> kind("decision", one("\"member\":\"" + member + "\",\"along\":\"" + length() + "\",\"taken\":\"dutchman\"", "\"source\":\"gutter-clogged\",\"side\":\"" + side + "\",\"taken\":\"clear-gutter\"")
                        + ",\"verdict\":\"" + one("accepted", "overruled") + "\",\"because\":\"plain\"");
                case 15 -> kind("photo", "\"file\":\"photos/" + random.nextInt(9) + ".jpg\",\"side\":\"" + side + "\"" + one("", ",\"pin\":{" + spot(member, face) + "}"));
                case 16, 17 -> kind("work-done", "\"done\":\"" + one("replace", "scarf-splice", "recoat", "fill") + "\",\"on\":\"" + one("2026-04-18", "2026-04-19", "2026-04-20", "2026-05-30") + "\",\"side\":\"" + side
                        + "\",\"member\":\"" + member + "\"" + one("", ",\"from\":\"2 in\",\"to\":\"" + one("2 ft", "20 ft") + "\"") + one("", ",\"coat\":{\"film\":\"" + one("oil", "oil-paint") + "\",\"ends\":true}"));
                case 18, 19, 20, 21 -> kind("amend", "\"entry\":\"" + target() + "\"," + said(9, false));
                default -> kind("strike", "\"entry\":\"" + target() + "\",\"because\":\"" + one("", "read wrongly") + "\"");
            };
        }

        private String target() { return random.nextInt(20) == 0 ? "none" : any(); }

        private String spot(String member, String face) { return "\"member\":\"" + member + "\",\"face\":\"" + face + "\",\"along\":\"" + length() + "\",\"across\":\"" + one("0 in", "1 in", "2 in", "45 mm", "9 in") + "\""; }

        private static String kind(String kind, String says) { return "\"kind\":\"" + kind + "\",\"says\":{" + says + "}"; }
    }

    @Test
    void the_phones_tape_reads_and_says_what_the_cores_does() {
        Random random = new Random(20260418);
        List<String> texts = new ArrayList<>(List.of("4ft6in", "4' 6\"", "36\"", "0 in", "-3 in", "1e2 mm", "2½\"", "½ in", "3 ⅛ in", "1 1/2 in", "1.5 M", "12 IN", "6 feet", "3 foot 2 inches", "1m", "", "in", "3", "3 oz",
                "1/0 in", "4 ft 13 in", "6 in 4 ft", "1,5 m", "three inches", "4'6\"", "16' 6-3/4\"", "9′ 2″", "−2 in"));
        for (int i = 0; i < 300; i++) {
            String inches = random.nextInt(3) == 0 ? "" + random.nextInt(11) : random.nextInt(11) + "-" + random.nextInt(1, 16) + "/16";
            texts.add(switch (random.nextInt(5)) {
                case 0 -> random.nextInt(40) + "' " + inches + "\"";
                case 1 -> random.nextInt(40) + " ft " + inches + " in";
                case 2 -> inches + one(random, " in", "in", "\"");
                case 3 -> Words.number(random.nextDouble() * 5000, 1) + one(random, " mm", "mm");
                default -> Words.number(random.nextDouble() * 9, 3) + one(random, " m", "m", " ft", "'");
            });
        }
        List<String> wanted = new ArrayList<>();
        for (String text : texts) {
            try {
                double mm = Quantity.read(text, Kind.LENGTH).own();
                wanted.add(n(mm) + " " + Words.length(mm, Units.US) + " " + Words.length(mm, Units.SI));
            } catch (Refused _) {
                wanted.add("refused");
            }
        }
        Object answers = page.evaluate("""
                async texts => {
                    const m = await import('/field/measure.js');
                    return texts.map(text => {
                        try {
                            const mm = m.lengthMm(text);
                            return Math.round(mm * 1000) + ' ' + m.said(mm, 'us') + ' ' + m.said(mm, 'si');
                        } catch (thrown) {
                            if (!(thrown instanceof m.Unreadable)) throw thrown;
                            return 'refused';
                        }
                    });
                }""", texts);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) if (!wanted.get(i).equals(((List<?>) answers).get(i))) wrong.add(texts.get(i) + ": " + wanted.get(i) + ", not " + ((List<?>) answers).get(i));
        assertEquals(List.of(), wrong);
    }

    private static String one(Random random, String... words) { return words[random.nextInt(words.length)]; }

    @Test
    void ids_and_clocks_of_the_phone_are_the_stores() {
        Object ids = page.evaluate("async () => { const c = await import('/field/clock.js'); return Array.from({length: 500}, () => c.uuid7(1776502800123)); }");
        Set<String> all = new HashSet<>();
        for (Object id : (List<?>) ids) {
            UUID uuid = UUID.fromString((String) id);
            assertEquals(7, uuid.version());
            assertEquals(2, uuid.variant());
            assertEquals(1776502800123L, uuid.getMostSignificantBits() >>> 16);
            assertEquals(uuid.toString(), id);
            all.add(uuid.toString());
        }
        assertEquals(500, all.size());
        assertEquals(List.of("2026-04-18T09:00:00Z", "2026-04-18T09:00:00.120Z", true, false, true), page.evaluate("""
                async () => {
                    const c = await import('/field/clock.js'), last = { wallMs: 1776502800000, tick: 3 };
                    const behind = c.tick(last, 1776502700000), ahead = c.tick(last, 1776502900000);
                    const day = 86400000, far = c.follow(last, { wallMs: 1776502800000 + 2 * day, tick: 0 }, 1776502800000), near = c.follow(last, { wallMs: 1776502800001, tick: 0 }, 1776502800000);
                    return [c.instant(1776502800000), c.instant(1776502800120), behind.tick === 4 && behind.wallMs === last.wallMs && ahead.tick === 0 && ahead.wallMs === 1776502900000,
                        far !== last, near.wallMs === 1776502800001];
                }"""));
    }
}
