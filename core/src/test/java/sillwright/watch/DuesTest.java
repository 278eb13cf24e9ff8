package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.*;
import sillwright.walk.WorkDone.Coating;
import sillwright.walk.WorkDone.Done;
import sillwright.walk.WorkDone.Film;
import sillwright.work.Outfit;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DuesTest {
    private static Quantity q(String text, Kind kind) { return Quantity.read(text, kind); }

    private static Side side(String bearing) {
        return new Side("a", "a", q(bearing, Kind.ANGLE), q("12 m", Kind.LENGTH), List.of(), new Side.Ground(Side.Surface.GRASS, Optional.empty(), Optional.empty()), Optional.empty(), List.of());
    }

    private static Member member(MemberKind kind) {
        return new Member("m", "a", kind, "the piece", Member.Role.SHEDS_WATER, "pine-eastern-white", Member.Run.LEVEL, q("120 mm", Kind.LENGTH), q("40 mm", Kind.LENGTH), q("2400 mm", Kind.LENGTH), q("0 mm", Kind.LENGTH),
                q("400 mm", Kind.LENGTH), Optional.empty(), Member.EndGrain.COVERED, Member.EndGrain.COVERED, Member.Coat.SOUND, Member.Contact.NONE);
    }

    private static Coating coat(Film film, int primer, int coats, String moisture) {
        return new Coating(film, primer, coats, true, false, moisture.isEmpty() ? Optional.empty() : Optional.of(q(moisture, Kind.PERCENT)), Optional.empty(), Optional.empty());
    }

    @Test
    void a_full_coat_of_paint_lasts_the_five_to_eight_years_of_the_briefs() {
        for (String bearing : List.of("0deg", "90deg", "180deg", "270deg")) {
            double wall = Dues.lifeYears(coat(Film.OIL_PAINT, 1, 2, "12%"), member(MemberKind.CLAPBOARD), side(bearing)), sill = Dues.lifeYears(coat(Film.OIL_PAINT, 1, 2, "12%"), member(MemberKind.WINDOW_SILL), side(bearing));
            assertTrue(wall >= 5 && wall <= 8 && sill < wall && sill >= 4, bearing + ": " + wall + ", " + sill);
        }
    }

    @Test
    void what_was_coated_worse_falls_due_sooner() {
        Member board = member(MemberKind.CLAPBOARD);
        double good = Dues.lifeYears(coat(Film.OIL_PAINT, 1, 2, "12%"), board, side("180deg"));
        for (Coating worse : List.of(coat(Film.OIL_PAINT, 0, 1, ""), coat(Film.OIL_PAINT, 1, 2, "22%"), coat(Film.STAIN, 0, 2, ""), coat(Film.OIL_PAINT, 0, 2, "12%"))) assertTrue(Dues.lifeYears(worse, board, side("180deg")) < good, worse::toString);
    }

    @Test
    void like_dues_of_one_day_and_reason_are_told_together_with_every_member_and_cost_what_they_cost_alone() {
        LocalDate day = LocalDate.of(2026, 5, 1), later = day.plusYears(2);
        sillwright.work.cost.Range each = new sillwright.work.cost.Range(10, 20, 40, 22, 22, 5, 100, List.of());
        Survey survey = survey(List.of());
        Due one = new Due(day, "recoat the piece", "recoat {}", "a", Optional.of("m"), "its coat fails now", 1.5, each), same = new Due(day.minusYears(1), "recoat the piece", "recoat {}", "a", Optional.of("m"), "its coat fails now", 2, each);
        Due other = new Due(later, "recoat the piece", "recoat {}", "a", Optional.of("m"), "its coat fails now", 4, each), roof = new Due(day, "look at the roof", "look at the roof", "", Optional.empty(), "yearly", 1, each);
        List<Gathered> all = Gathered.of(List.of(same, one, roof, other), survey, day);
        assertEquals(List.of(2, 1, 1), all.stream().map(gathered -> gathered.dues().size()).toList());
        assertEquals("recoat 2 members. A: the piece, the piece", all.getFirst().words());
        assertEquals(3.5, all.getFirst().hours(), 1e-9);
        assertEquals(List.of(20.0, 40.0, 80.0), List.of(all.getFirst().money().low(), all.getFirst().money().middle(), all.getFirst().money().high()));
        assertEquals(List.of("look at the roof", "recoat the piece"), all.stream().skip(1).map(Gathered::words).toList());
        assertEquals(Optional.of(later), all.getLast().on());
    }

    @Test
    void a_coat_and_a_splice_fall_due_in_order_and_a_later_coat_begins_anew() {
        LocalDate done = LocalDate.of(2024, 6, 1), today = LocalDate.of(2024, 9, 1);
        WorkDone splice = new WorkDone(Done.SCARF_SPLICE, done, "a", Optional.of("m"), Optional.empty(), Optional.empty(), Optional.empty(), "", Optional.empty(), Optional.of(coat(Film.OIL_PAINT, 1, 2, "12%")),
                Optional.empty(), Optional.empty(), "");
        Survey survey = survey(List.of(new Survey.Noted<>("1", ms(done), splice)));
        List<Due> due = Dues.of(survey, today, Outfit.COMMON).stream().filter(one -> one.member().isPresent()).toList();
        assertEquals(LocalDate.of(2025, 6, 1), due.getFirst().on());
        assertTrue(due.getLast().words().startsWith("recoat") && due.getLast().on().getYear() >= 2029, due::toString);
        WorkDone again = new WorkDone(Done.RECOAT, done.plusYears(3), "a", Optional.of("m"), Optional.empty(), Optional.empty(), Optional.empty(), "", Optional.empty(), Optional.of(coat(Film.OIL_PAINT, 1, 2, "12%")),
                Optional.empty(), Optional.empty(), "");
        WorkDone first = new WorkDone(Done.RECOAT, done, "a", Optional.of("m"), Optional.empty(), Optional.empty(), Optional.empty(), "", Optional.empty(), Optional.of(coat(Film.OIL_PAINT, 1, 2, "12%")), Optional.empty(), Optional.empty(), "");
        long recoats = Dues.of(survey(List.of(new Survey.Noted<>("1", ms(done), first), new Survey.Noted<>("2", ms(done.plusYears(3)), again))), today.plusYears(4), Outfit.COMMON).stream().filter(one -> one.words().startsWith("recoat")).count();
        assertEquals(1, recoats);
    }

    private static long ms(LocalDate day) { return day.toEpochDay() * 86_400_000L; }

    private static Survey survey(List<Survey.Noted<WorkDone>> works) {
        return new Survey(Optional.empty(), Map.of("a", side("180deg")), Map.of("m", member(MemberKind.CLAPBOARD)), List.of(), List.of(), List.of(), List.of(), works, List.of(), works.size());
    }
}
