package sillwright.desk.demo;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.walk.Entry;
import sillwright.walk.FieldBook;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Side;
import sillwright.walk.Survey;

import static org.junit.jupiter.api.Assertions.*;

/// What holds for every invented survey.
@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoSurveysTest {
    @Test
    void no_book_has_a_fault() {
        DemoBooks.all().forEach((file, entries) -> assertEquals(List.of(), FieldBook.fold(file, entries).faults()));
    }

    @Test
    void every_book_says_that_it_is_invented() {
        DemoBooks.all().forEach((file, entries) -> {
            var building = FieldBook.fold(file, entries).building().orElseThrow();
            assertTrue(building.name().contains("invented") && building.note().contains("made up"), file);
            assertEquals(12, building.months().size(), file);
        });
    }

    @Test
    void the_small_books_hold_what_they_are_said_to_hold() {
        assertEquals("14 members, 98 probes, 15 moistures, 6 seen, 6 not", count("porch-alone.survey.json"));
        assertEquals("1 members, 20 probes, 4 moistures, 4 seen, 4 not", count("one-sill.survey.json"));
        assertEquals("9 members, 24 probes, 110 moistures, 17 seen, 7 not", count("wash-house.survey.json"));
        assertEquals("1 members, 25 probes, 4 moistures, 4 seen, 6 not", count("fascia-under-gutter.survey.json"));
    }

    static String count(String file) {
        Survey survey = FieldBook.fold(file, DemoBooks.all().get(file));
        long seen = survey.sightings().stream().filter(noted -> noted.what().seen()).count();
        return survey.members().size() + " members, " + survey.probes().size() + " probes, " + survey.moistures().size() + " moistures, " + seen + " seen, "
                + (survey.sightings().size() - seen) + " not";
    }

    @Test
    void the_survey_is_the_same_whatever_the_order_of_arrival_and_however_often_an_entry_comes() {
        DemoBooks.all().forEach((file, entries) -> {
            Survey survey = FieldBook.fold(file, entries);
            for (int seed = 0; seed < 20; seed++) {
                var random = new Random(seed);
                List<Entry> arrived = new ArrayList<>(entries);
                for (Entry entry : entries) if (random.nextInt(4) == 0) arrived.add(entry);
                Collections.shuffle(arrived, random);
                Survey again = FieldBook.fold(file, arrived);
                assertEquals(survey, again, file + ", seed " + seed);
                assertEquals(List.copyOf(survey.members().keySet()), List.copyOf(again.members().keySet()), file + ", seed " + seed);
            }
        });
    }

    @Test
    void a_book_is_written_the_same_every_time() { assertEquals(DemoBooks.all(), DemoBooks.all()); }

    @Test
    void every_entry_has_a_version_7_id_of_its_own_that_carries_its_time() {
        DemoBooks.all().forEach((file, entries) -> {
            assertEquals(entries.size(), entries.stream().map(Entry::id).distinct().count(), file);
            for (Entry entry : entries) {
                UUID id = UUID.fromString(entry.id());
                assertEquals(7, id.version());
                assertEquals(2, id.variant());
                assertEquals(entry.stamp().wallMs(), id.getMostSignificantBits() >>> 16);
            }
        });
    }

    @Test
    void the_entries_stand_in_the_order_of_the_clock() {
        DemoBooks.all().forEach((file, entries) -> assertEquals(entries.stream().sorted(Entry.ORDER).toList(), entries, file));
    }

    @Test
    void every_member_lies_within_its_side_and_below_its_roof() {
        eachMember((side, m) -> {
            var place = Place.of(m);
            double slack = 6;        // a raking board is measured to a tenth of a degree
            assertTrue(place.left() >= 0 && place.right() <= side.lengthMm() + slack, m.id() + " " + place);
            assertTrue(place.bottom() >= 0 && place.top() <= side.topMm() + slack, m.id() + " " + place);
        });
    }

    @Test
    void openings_stand_apart_and_within_their_wall() {
        DemoBooks.all().forEach((file, entries) -> {
            for (Side side : FieldBook.fold(file, entries).sides().values()) {
                List<Place> all = side.openings().stream().map(Place::of).toList();
                for (int i = 0; i < all.size(); i++) {
                    assertTrue(all.get(i).right() <= side.lengthMm() && all.get(i).top() < side.topMm(), file + " " + all.get(i));
                    for (int j = 0; j < i; j++) assertFalse(all.get(i).overlaps(all.get(j)), file + " " + all.get(i) + " " + all.get(j));
                }
            }
        });
    }

    @Test
    void every_window_sill_lies_beneath_an_opening_and_reaches_past_it_on_both_hands() {
        assertEquals(6, eachOf(EnumSet.of(MemberKind.WINDOW_SILL), (side, sill) -> assertTrue(side.openings().stream().map(Place::of).anyMatch(hole ->
                Math.abs(hole.bottom() - sill.top()) < 1 && sill.left() <= hole.left() && sill.right() >= hole.right()), side.id() + " " + sill)));
    }

    @Test
    void every_casing_stands_beside_an_opening() {
        assertEquals(6, eachOf(EnumSet.of(MemberKind.CASING), (side, casing) -> assertTrue(side.openings().stream().map(Place::of).anyMatch(hole ->
                (Math.abs(hole.left() - casing.right()) < 1 || Math.abs(hole.right() - casing.left()) < 1) && Math.abs(hole.bottom() - casing.bottom()) < 1),
                side.id() + " " + casing)));
    }

    @Test
    void every_post_stands_on_what_is_beneath_it_and_carries_a_beam() {
        assertEquals(7, eachOf(EnumSet.of(MemberKind.POST), (side, post) -> {
            List<Place> others = placesOn(side);
            assertTrue(others.stream().anyMatch(p -> Math.abs(p.top() - post.bottom()) < 1 && p.left() <= post.left() && p.right() >= post.right()), "foot of " + post);
            assertTrue(others.stream().anyMatch(p -> Math.abs(p.bottom() - post.top()) < 1 && p.left() < post.right() && p.right() > post.left()), "head of " + post);
        }));
    }

    private static List<Place> placesOn(Side side) {
        return DemoBooks.all().values().stream().map(entries -> FieldBook.fold("", entries)).filter(survey -> side.equals(survey.sides().get(side.id())))
                .flatMap(survey -> survey.membersOn(side.id()).stream()).map(Place::of).toList();
    }

    private static int eachOf(Set<MemberKind> kinds, BiConsumer<Side, Place> check) {
        var seen = new AtomicInteger();
        eachMember((side, member) -> {
            if (!kinds.contains(member.kind())) return;
            seen.incrementAndGet();
            check.accept(side, Place.of(member));
        });
        return seen.get();
    }

    private static void eachMember(BiConsumer<Side, Member> check) {
        DemoBooks.all().forEach((file, entries) -> {
            Survey survey = FieldBook.fold(file, entries);
            survey.members().values().forEach(member -> check.accept(survey.sides().get(member.side()), member));
        });
    }
}
