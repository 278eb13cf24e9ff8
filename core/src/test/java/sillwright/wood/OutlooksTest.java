package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.measure.Refused;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.weather.Normals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class OutlooksTest {
    private static final Set<Member.Face> FRONT = Set.of(Member.Face.FRONT);
    private static final Exposure WALL = new Exposure(FRONT, 0.2, 0, 0, false, false), SPLASHED = new Exposure(FRONT, 0.2, 1, 8, true, false), SOAKED = new Exposure(FRONT, 2, 1, 48, true, false);

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    static Member member(String id, String species, Member.Coat coat, Member.EndGrain start, double width, double depth) {
        return new Member(id, "south", MemberKind.POST, "post", Member.Role.BEARS_LOAD, species, Member.Run.UPRIGHT, mm(width), mm(depth), mm(2400), mm(0), mm(0), Optional.empty(), start,
                Member.EndGrain.COVERED, coat, Member.Contact.NONE);
    }

    static Normals lakeside() {
        double[] high = {0, 2, 8, 15, 21, 27, 29, 28, 24, 17, 9, 2}, rain = {50, 48, 64, 92, 105, 98, 94, 108, 83, 81, 73, 56}, days = {10.8, 9.1, 11, 11.7, 11.9, 10.5, 9.4, 9.3, 8.4, 9.8, 10, 11};
        List<Normals.Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) months.add(new Normals.Month(high[m], high[m] - 9, rain[m], days[m], 0.70, 4));
        return new Normals(months);
    }

    private static Wetting wetting(Member member, Exposure now) { return new Wetting(member, now, Exposure.DRY, Optional.empty(), 0.5); }

    private static List<Outlook> work(Wetting... wettings) { return Outlooks.of(List.of(wettings), lakeside(), 120, 0.16, new Random(7)); }

    @Test
    void more_water_makes_it_wetter_and_decay_quicker_and_stopping_it_helps() {
        Member post = member("post", "pine-eastern-white", Member.Coat.FAILING, Member.EndGrain.BARE, 140, 140);
        List<Outlook> all = work(wetting(post, Exposure.DRY), wetting(post, WALL), wetting(post, new Exposure(FRONT, 1, 1, 24, false, false)),
                wetting(post, new Exposure(FRONT, 2, 1, 48, false, false)));
        for (int i = 1; i < 4; i++) {
            Outlook less = all.get(i - 1), more = all.get(i);
            assertTrue(more.wettingHours() >= less.wettingHours() && more.meanMoisture() > less.meanMoisture(), more + " is no wetter than " + less);
            assertTrue(more.dryDownDays().median() >= less.dryDownDays().median(), more + " dries before " + less);
        }
        Outlook dry = all.get(0), soaked = all.get(3);
        assertTrue(all.get(1).asIs().daysAYear().median() < all.get(2).asIs().daysAYear().median(), "past 52 % more water is no longer more decay; up to there it is");
        assertEquals(0, dry.wettingHours());
        assertEquals(0, dry.asIs().daysAYear().high(), "a member that no water reaches does not decay");
        assertTrue(dry.meanMoisture() > 0.10 && dry.meanMoisture() < 0.18, "under cover wood lies near 12 %: " + dry.meanMoisture());
        assertTrue(soaked.asIs().daysAYear().median() > 60, "a soaked foot: " + soaked.asIs());
        assertTrue(soaked.asIs().yearsToNext().orElseThrow().median() < 10);
        assertTrue(soaked.stopped().ratings().getLast().median() < soaked.asIs().ratings().getLast().median());
        assertEquals(Forecast.CURVE_YEARS + 1, soaked.asIs().ratings().size());
        for (Outlook one : all) for (Forecast forecast : List.of(one.asIs(), one.stopped())) {
            assertEquals(0.5, forecast.ratings().getFirst().median());
            for (int y = 1; y <= Forecast.CURVE_YEARS; y++) assertTrue(forecast.ratings().get(y).median() >= forecast.ratings().get(y - 1).median() && forecast.ratings().get(y).high() <= 4);
        }
    }

    /// The curve nears 4 and never comes to it, so the worst wood in running water would seem to last for ever.
    @Test
    void severe_decay_in_running_water_is_soon_as_good_as_failed_and_said_so() {
        Member post = member("post", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.BARE, 140, 140);
        Outlook soaked = Outlooks.of(List.of(new Wetting(post, SOAKED, Exposure.DRY, Optional.empty(), 3)), lakeside(), 120, 0.16, new Random(7)).getFirst();
        double years = soaked.asIs().yearsToNext().orElseThrow().median();
        assertTrue(years > 0.5 && years < 20, years + " years");
        assertEquals(Optional.empty(), soaked.stopped().yearsToNext(), "under cover and dry it goes no further");
        Change change = new Change("W1", "post", List.of(), 900, 0, 1.2, 0.14, Optional.of(years), Optional.empty(), Forecast.next(3));
        assertEquals("900 to 0 h wet a year, moisture over 60 % to 14 %, as good as failed in " + sillwright.measure.Words.count((int) Math.round(years), "year") + " as it is, in over 60 years then",
                change.words());
    }

    @Test
    void durable_heartwood_lasts_longer_under_the_same_water() {
        List<Outlook> all = work(wetting(member("a", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.BARE, 140, 140), SOAKED), wetting(member("b", "cedar-western-red", Member.Coat.NONE, Member.EndGrain.BARE, 140, 140), SOAKED));
        double pine = all.get(0).asIs().ratings().get(10).median(), cedar = all.get(1).asIs().ratings().get(10).median();
        assertTrue(cedar < pine, cedar + " of the cedar, " + pine + " of the pine");
    }

    @Test
    void thin_wood_dries_sooner_than_thick_and_bare_sooner_than_painted() {
        Exposure rain = new Exposure(FRONT, 2, 0, 24, false, false);
        List<Outlook> all = work(wetting(member("thin", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.COVERED, 140, 20), rain), wetting(member("thick", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.COVERED, 140, 140), rain));
        assertTrue(all.get(0).dryDownDays().median() < all.get(1).dryDownDays().median(), all.get(0).dryDownDays() + " thin, " + all.get(1).dryDownDays() + " thick");
        Wetting bare = new Wetting(member("bare", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.COVERED, 140, 40), Exposure.DRY, Exposure.DRY, Optional.of(0.28), 0);
        Wetting painted = new Wetting(member("painted", "pine-eastern-white", Member.Coat.SOUND, Member.EndGrain.COVERED, 140, 40), Exposure.DRY, Exposure.DRY, Optional.of(0.28), 0);
        List<Outlook> read = work(bare, painted);
        assertTrue(read.get(0).dryDownDays().high() < read.get(1).dryDownDays().low(), read.get(0).dryDownDays() + " bare, " + read.get(1).dryDownDays() + " painted");
    }

    /// What the work takes the coat off anyway need not wait for the coat to let the water out.
    @Test
    void with_its_coat_off_and_a_sheet_before_it_wet_wood_dries_in_weeks_where_the_coat_holds_it_for_months() {
        for (Member.Coat coat : List.of(Member.Coat.SOUND, Member.Coat.FAILING)) {
            Outlook one = work(new Wetting(member("post", "pine-eastern-white", coat, Member.EndGrain.COVERED, 140, 140), SOAKED, Exposure.DRY, Optional.of(0.32), 1)).getFirst();
            assertTrue(one.openedDays().median() < one.dryDownDays().median(), coat + ": " + one.openedDays() + " opened, " + one.dryDownDays() + " under its coat");
            assertTrue(one.openedInAYear() >= one.driesInAYear() && one.words().contains("coat off"), one.words());
        }
        Outlook board = work(new Wetting(member("board", "pine-eastern-white", Member.Coat.SOUND, Member.EndGrain.COVERED, 140, 20), SOAKED, Exposure.DRY, Optional.of(0.28), 1)).getFirst();
        assertTrue(board.openedDays().median() < 30, "an inch board in summer: " + board.openedDays());
        Outlook bare = work(new Wetting(member("bare", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.COVERED, 140, 140), SOAKED, Exposure.DRY, Optional.of(0.28), 1)).getFirst();
        assertEquals(bare.dryDownDays(), bare.openedDays(), "bare already, and no rain comes to it");
    }

    @Test
    void a_dry_reading_needs_no_drying_and_the_same_seed_gives_the_same() {
        Wetting dry = new Wetting(member("dry", "douglas-fir-coast", Member.Coat.SOUND, Member.EndGrain.BARE, 90, 90), WALL, Exposure.DRY, Optional.of(0.12), 0);
        Outlook one = work(dry).getFirst();
        assertEquals(0, one.dryDownDays().high());
        assertEquals(one, work(dry).getFirst());
        assertTrue(one.words().contains("dry enough"), one.words());
    }

    @Test
    void one_more_member_changes_no_other() {
        Wetting a = wetting(member("a", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.BARE, 140, 140), SPLASHED), b = wetting(member("b", "redwood-old-growth", Member.Coat.FAILING, Member.EndGrain.BARE, 90, 30), WALL);
        Outlook alone = work(a).getFirst(), together = work(a, b).getFirst();
        assertEquals(alone.meanMoisture(), together.meanMoisture());
        assertEquals(alone.dryDownDays(), together.dryDownDays());
        assertEquals(alone.asIs(), together.asIs());
    }

    @Test
    void what_makes_no_sense_is_refused() {
        Member post = member("post", "pine-eastern-white", Member.Coat.NONE, Member.EndGrain.BARE, 140, 140);
        assertThrows(Refused.class, () -> new Wetting(post, WALL, WALL, Optional.empty(), 4));
        assertThrows(Refused.class, () -> new Wetting(post, WALL, WALL, Optional.of(18.0), 1));
        assertThrows(Refused.class, () -> new Exposure(FRONT, Double.NaN, 0, 0, false, false));
    }

    /// Six hands that take turns as they come.
    private static final sillwright.measure.Memo HANDS = new sillwright.measure.Memo() {
        @Override
        public <T> T of(Object key, Supplier<T> work) { return work.get(); }

        @Override
        public <T> Optional<T> known(Object key) { return Optional.empty(); }

        @Override
        public int hands() { return 6; }

        @Override
        public <T> List<T> sideBySide(int count, IntFunction<T> work) { return IntStream.range(0, count).parallel().mapToObj(work).toList(); }
    };

    @Test
    void many_hands_come_to_the_same_last_digit_as_one() {
        List<Wetting> wettings = new ArrayList<>();
        for (int i = 0; i < 11; i++)
            wettings.add(wetting(member("m" + i, i % 2 == 0 ? "pine-eastern-white" : "oak-white", Member.Coat.values()[i % 4], Member.EndGrain.values()[i % 3], 40 + 12 * i, 90), List.of(WALL, SPLASHED, SOAKED).get(i % 3)));
        List<Outlook> one = Outlooks.of(wettings, lakeside(), 120, 0.16, new Random(7)), many = Outlooks.of(wettings, lakeside(), 120, 0.16, new Random(7), sillwright.wood.drying.Transport.PLAIN, HANDS);
        assertEquals(one, many);
        assertEquals(one.subList(0, 5), Outlooks.of(wettings.subList(0, 5), lakeside(), 120, 0.16, new Random(7)), "nor do other members change it");
    }
}
