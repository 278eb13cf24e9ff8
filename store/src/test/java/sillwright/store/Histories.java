package sillwright.store;

import module java.base;

import sillwright.walk.Entry;

/// Field books as they might be written on an invented shed: by several phones with clocks of their own, with amendments,
/// strikes, strikes of strikes, things described twice, readings on members nobody described, and ids that clash.
final class Histories {
    private static final String BUILDING = """
            {"id":"shed","name":"An invented shed","note":"invented","yearBuilt":%d}""";
    private static final String SIDE = """
            {"id":"%s","title":"%s side","bearing":"180deg","length":"12ft","ground":{"surface":"soil"}}""";
    private static final String MEMBER = """
            {"id":"%s","side":"%s","kind":"sill","title":"a sill","role":"bears-load","species":"pine-eastern-white","run":"level","width":"6 in","depth":"6 in","length":"%d ft","left":"0 in","above":"8 in"}""";
    private static final String PROBE = """
            {"member":"%s","face":"front","along":"%d in","across":"2 in","depth":"%d/8 in","reach":"4 in"}""";
    private static final String MOISTURE = """
            {"member":"%s","face":"front","along":"%d in","across":"2 in","reading":"%d%%"}""";
    private static final String SIGHTING = """
            {"sign":"%s","seen":%b,"side":"%s","words":"%s"}""";
    private static final String PHOTO = """
            {"file":"photos/%d.jpg","side":"%s"}""";
    private static final String CHECKS = """
            {"member":"%s","face":"front","along":"%d in","across":"2 in","count":%d,"length":"6 in","width":"1/16 in","depth":"%d/8 in"}""";
    private static final String PROFILE = """
            {"member":"%s","title":"a moulding","offsets":[{"across":"0 in","out":"1/2 in"},{"across":"1/2 in","out":"%d/16 in"},{"across":"1 in","out":"0 in"}]}""";
    private static final String DECISION = """
            {"member":"%s","along":"%d in","verdict":"overruled","taken":"%s","by":"owner","because":"%s"}""";
    private static final String[] SIDES = {"south", "north", "nowhere"};
    private static final String[] MEMBERS = {"sill-1", "sill-2", "sill-3", "nothing"};
    private static final String[] WORDS = {"", "plain", "déjà vu — ½", "\\\"quoted\\\"\\n\\u0000", "\\ud83e\\udeb5", "\\ud83e alone"};

    private final RandomGenerator random;
    private final List<Entry> all = new ArrayList<>();
    private long wallMs = 1_776_502_800_000L;

    private Histories(RandomGenerator random) { this.random = random; }

    static List<Entry> of(RandomGenerator random, int length) {
        Histories history = new Histories(random);
        while (history.all.size() < length) history.all.add(history.next());
        return history.all;
    }

    private Entry next() {
        wallMs += random.nextInt(3) == 0 ? 0 : random.nextInt(100_000);
        // Clocks of phones run ahead and behind.
        long at = Math.max(0, wallMs + (random.nextInt(20) == 0 ? random.nextInt(-90_000_000, 90_000_000) : 0));
        String device = "phone-" + random.nextInt(3);
        String id = !all.isEmpty() && random.nextInt(15) == 0 ? any().id() : EntryIds.at(at, random);
        String json = "{\"id\":\"" + id + "\",\"at\":\"" + Instant.ofEpochMilli(at) + "\",\"tick\":" + random.nextInt(3) + ",\"device\":\"" + device
                + "\",\"author\":\"" + (random.nextBoolean() ? "A" : "Å") + "\"," + said(true) + "}";
        try {
            return new Line(0, "shed", id, "", new Entry.Stamp(at, 0), device, json).entry();
        } catch (Fields.Wrongs wrongs) {
            throw new AssertionError(json + ": " + wrongs.all());
        }
    }

    private Entry any() { return all.get(random.nextInt(all.size())); }

    private String one(String[] words) { return words[random.nextInt(words.length)]; }

    private String said(boolean outer) {
        int kind = all.size() < 6 && outer ? all.size() % 3 : random.nextInt(outer && !all.isEmpty() ? 24 : 16);
        return switch (kind) {
            case 0 -> kind("building", BUILDING.formatted(1880 + random.nextInt(20)));
            case 1 -> kind("side", SIDE.formatted(SIDES[random.nextInt(2)], "some"));
            case 2 -> kind("member", MEMBER.formatted(MEMBERS[random.nextInt(3)], one(SIDES), 2 + random.nextInt(5)));
            case 3, 4, 5, 6, 7 -> kind("probe", PROBE.formatted(one(MEMBERS), random.nextInt(40), random.nextInt(32)));
            case 8, 9, 10 -> kind("moisture", MOISTURE.formatted(one(MEMBERS), random.nextInt(40), 8 + random.nextInt(40)));
            case 11, 12, 13 -> kind("sighting", SIGHTING.formatted(random.nextBoolean() ? "icicles" : "fungus", random.nextBoolean(), one(SIDES), one(WORDS)));
            case 14 -> random.nextBoolean() ? kind("photo", PHOTO.formatted(random.nextInt(5), one(SIDES)))
                    : kind("decision", DECISION.formatted(one(MEMBERS), random.nextInt(40), random.nextBoolean() ? "dutchman" : "scarf-splice-8", "r" + random.nextInt(9)));
            case 15 -> random.nextBoolean() ? kind("checks", CHECKS.formatted(one(MEMBERS), random.nextInt(40), 1 + random.nextInt(9), 1 + random.nextInt(9)))
                    : kind("profile", PROFILE.formatted(one(MEMBERS), random.nextInt(16)));
            case 16, 17, 18, 19 -> kind("amend", "{\"entry\":\"" + target() + "\"," + said(false) + "}");
            default -> kind("strike", "{\"entry\":\"" + target() + "\",\"because\":\"" + one(WORDS) + "\"}");
        };
    }

    private String target() { return random.nextInt(20) == 0 ? "nobody" : any().id(); }

    private static String kind(String kind, String says) { return "\"kind\":\"" + kind + "\",\"says\":" + says; }
}
