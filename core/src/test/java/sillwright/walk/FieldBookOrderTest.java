package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

/// Laws of the fold over invented histories full of amendments, strikes, clashes and slips.
@DisplayNameGeneration(ReplaceUnderscores.class)
class FieldBookOrderTest {
    private static final int HISTORIES = 300;

    /// A history from one seed: targets may be struck, amended, later, unknown; clocks stand still; ids clash.
    private static List<Entry> history(RandomGenerator random) {
        List<Entry> entries = new ArrayList<>(begun());
        int more = random.nextInt(4, 60);
        for (int i = 0; i < more; i++) {
            String id = random.nextInt(20) == 0 ? "e" + random.nextInt(more) : "e" + i;
            var stamp = new Entry.Stamp(2 + i / 2 + random.nextInt(4), random.nextInt(2));
            entries.add(new Entry(id, stamp, "phone-" + random.nextInt(1, 3), "A. Surveyor", body(random, i)));
        }
        return entries;
    }

    private static Body body(RandomGenerator random, int i) {
        String target = random.nextInt(12) == 0 ? "nowhere" : random.nextInt(8) == 0 ? "p" : "e" + random.nextInt(i + 2);
        return switch (random.nextInt(5)) {
            case 0 -> new Body.Struck(target, "a slip");
            case 1, 2 -> new Body.Amended(target, said(random));
            default -> said(random);
        };
    }

    private static Body said(RandomGenerator random) {
        String along = random.nextInt(1, 90) + " in";
        return switch (random.nextInt(8)) {
            case 0 -> sighting(random.nextInt(5) == 0 ? "north" : "south", Sign.values()[random.nextInt(Sign.values().length)]);
            case 1 -> moisture("post", along, random.nextInt(8, 40) + "%");
            case 2 -> post(random.nextBoolean() ? "post" : "post-2", random.nextInt(5) == 0 ? "north" : "south");
            case 3 -> random.nextInt(6) == 0 ? side("north") : building("shed " + random.nextInt(9));
            default -> probe(random.nextBoolean() ? "post" : "post-2", along, random.nextInt(0, 5) + "/2 in");
        };
    }

    private static List<Entry> shuffledWithRepeats(List<Entry> entries, RandomGenerator random) {
        List<Entry> arrived = new ArrayList<>(entries);
        for (Entry entry : entries) if (random.nextInt(3) == 0) arrived.add(entry);
        Collections.shuffle(arrived, Random.from(random));
        return arrived;
    }

    private static void assertSame(Survey expected, Survey actual, String seed) {
        assertEquals(expected, actual, seed);
        assertEquals(List.copyOf(expected.members().keySet()), List.copyOf(actual.members().keySet()), seed);
        assertEquals(List.copyOf(expected.sides().keySet()), List.copyOf(actual.sides().keySet()), seed);
    }

    @Test
    void the_survey_is_the_same_in_every_order_of_arrival_with_any_repeats() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            var random = new Random(seed);
            List<Entry> entries = history(random);
            Survey survey = FieldBook.fold("", entries);
            for (int i = 0; i < 5; i++) assertSame(survey, FieldBook.fold("", shuffledWithRepeats(entries, random)), "seed " + seed);
        }
    }

    @Test
    void two_phones_merged_either_way_and_merged_again_make_one_survey() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            Map<Boolean, List<Entry>> phones = history(new Random(seed)).stream().collect(Collectors.partitioningBy(e -> e.device().equals("phone-1")));
            List<Entry> oneWay = Stream.of(phones.get(true), phones.get(false), phones.get(true)).flatMap(List::stream).toList();
            List<Entry> other = Stream.of(phones.get(false), phones.get(true)).flatMap(List::stream).toList();
            assertSame(FieldBook.fold("", other), FieldBook.fold("", oneWay), "seed " + seed);
        }
    }

    @Test
    void what_stands_is_what_the_plain_reading_of_the_rule_says() {
        int struckSomewhere = 0, amendedSomewhere = 0;
        for (int seed = 0; seed < HISTORIES; seed++) {
            List<Entry> entries = oneOfEachId(history(new Random(seed)));
            List<Standing> fast = Standing.of(entries).all(), slow = PlainStanding.of(entries);
            assertEquals(slow, fast, "seed " + seed);
            if (fast.size() < entries.size()) struckSomewhere++;
            if (fast.stream().anyMatch(standing -> standing.body() != standing.entry().body())) amendedSomewhere++;
        }
        assertTrue(struckSomewhere > HISTORIES / 2 && amendedSomewhere > HISTORIES / 3, struckSomewhere + " and " + amendedSomewhere + " try too little");
    }

    private static List<Entry> oneOfEachId(List<Entry> entries) {
        Map<String, Entry> byId = new LinkedHashMap<>();
        entries.stream().sorted(Entry.ORDER).forEach(entry -> byId.putIfAbsent(entry.id(), entry));
        return List.copyOf(byId.values());
    }

    /// The slow twin: an entry stands unless a strike that stands names it and is later; it says what the last amendment
    /// that stands, names it, is later and is of its kind says.
    private record PlainStanding(List<Entry> entries) {
        static List<Standing> of(List<Entry> entries) {
            var plain = new PlainStanding(entries);
            return IntStream.range(0, entries.size()).filter(plain::stands).mapToObj(i -> new Standing(entries.get(i), plain.said(i))).toList();
        }

        boolean stands(int i) {
            for (int j = i + 1; j < entries.size(); j++)
                if (entries.get(j).body() instanceof Body.Struck(var target, _) && target.equals(entries.get(i).id()) && stands(j)) return false;
            return true;
        }

        Body said(int i) {
            Body body = entries.get(i).body();
            for (int j = i + 1; j < entries.size(); j++)
                if (entries.get(j).body() instanceof Body.Amended(var target, var instead) && target.equals(entries.get(i).id())
                        && instead.getClass() == entries.get(i).body().getClass() && stands(j)) body = instead;
            return body;
        }
    }

    @Test
    void nothing_is_lost_every_reading_is_in_the_survey_or_struck_or_named_in_a_fault() {
        for (int seed = 0; seed < HISTORIES; seed++) {
            List<Entry> entries = oneOfEachId(history(new Random(seed)));
            Survey survey = FieldBook.fold("", entries);
            Set<String> accounted = new HashSet<>();
            Stream.of(survey.probes(), survey.moistures(), survey.sightings()).flatMap(List::stream).forEach(noted -> accounted.add(noted.entry()));
            survey.faults().forEach(fault -> accounted.add(fault.entry().substring("entry ".length())));
            Set<String> standing = new HashSet<>();
            for (Standing s : Standing.of(entries).all())
                if (s.body() instanceof ProbeReading || s.body() instanceof MoistureReading || s.body() instanceof Sighting) standing.add(s.entry().id());
            assertTrue(accounted.containsAll(standing), "seed " + seed);
        }
    }
}
