package sillwright.lanes;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.measure.Memo;
import sillwright.measure.Quantity;
import sillwright.measure.Unit;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.Species;
import sillwright.wood.Exposure;
import sillwright.wood.Outlook;
import sillwright.wood.Outlooks;
import sillwright.wood.Wetting;
import sillwright.wood.drying.Air;
import sillwright.wood.drying.Skin;
import sillwright.wood.drying.Stack;
import sillwright.wood.drying.Timber;
import sillwright.wood.drying.Transport;
import sillwright.wood.weather.Normals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// Run with the module of the vector unit, as its build says.
@DisplayNameGeneration(ReplaceUnderscores.class)
class LanesTest {
    private static final Transport LANES = new LaneTransport();

    /// Everything at work: every coat and none, sealed faces, rain and standing water, sides, wood from dry to soaked.
    private static Stack stack(int slices, int pieces, long seed) {
        Random random = new Random(seed);
        List<Species> woods = List.copyOf(Species.all().values());
        Stack stack = new Stack(slices, pieces, 3600);
        for (int m = 0; m < pieces; m++) {
            Species wood = woods.get(random.nextInt(woods.size()));
            Timber timber = Timber.of(wood, random.nextBoolean() ? Timber.Grain.ACROSS : Timber.Grain.ALONG);
            stack.lay(m, timber, 0.01 + 0.2 * random.nextDouble(), skin(timber, random), skin(timber, random), 1 + random.nextDouble(), 0.05 + (timber.full() - 0.06) * random.nextDouble() * random.nextDouble());
            if (random.nextInt(3) == 0) stack.lose(m, Timber.of(wood, Timber.Grain.ACROSS), Skin.under(Member.Coat.NONE, timber), 0.1);
        }
        return stack;
    }

    private static Skin skin(Timber timber, Random random) {
        Member.Coat[] coats = Member.Coat.values();
        Skin skin = random.nextInt(6) == 0 ? Skin.SEALED : Skin.under(coats[random.nextInt(coats.length)], timber);
        if (random.nextBoolean()) skin = skin.inWind(5 * random.nextDouble(), timber);
        return random.nextBoolean() ? skin : skin.wetted(2 * random.nextDouble(), random.nextInt(30));
    }

    /// Frost, heat, rain on one hour in eight.
    private static Air air(int hours, long seed) {
        Random random = new Random(seed);
        Air air = new Air(hours);
        for (int h = 0; h < hours; h++)
            air.set(h, 10 + 20 * Math.sin(h / 700.0) + 5 * Math.sin(h / 4.0), random.nextDouble(), random.nextInt(8) == 0 ? -3 * Math.log(1 - random.nextDouble()) : 0);
        return air;
    }

    /// Hour by hour from one state: over a year a front that dries past a slice an hour sooner parts two runs of plain Java too, when one starts wetter by the last digit.
    @ParameterizedTest(name = "{0} slices, {1} pieces, seed {2}")
    @CsvSource({"16, 1, 1", "16, 7, 2", "20, 16, 3", "12, 33, 4", "16, 130, 5", "2, 64, 6", "13, 20, 7", "3, 40, 8"})
    void every_hour_comes_to_the_same_as_in_plain_java_to_a_millionth(int slices, int pieces, long seed) {
        Stack plain = stack(slices, pieces, seed), wide = stack(slices, pieces, seed);
        Air air = air(8760, seed);
        for (int h = 0; h < 8760; h++) {
            Transport.PLAIN.hours(plain, air, h, h + 1);
            LANES.hours(wide, air, h, h + 1);
            for (int m = 0; m < pieces; m++) {
                for (int i = 0; i < slices; i++) assertEquals(plain.moisture[i][m], wide.moisture[i][m], 1e-6, "hour " + h + ", piece " + m + ", slice " + i);
                assertEquals(plain.near.left[m], wide.near.left[m], 0);
            }
            for (int i = 0; i < slices; i++) System.arraycopy(plain.moisture[i], 0, wide.moisture[i], 0, pieces);
        }
        for (int m = 0; m < pieces; m++) {
            assertEquals(plain.wetHours[m], wide.wetHours[m], 1e-6);
            assertEquals(plain.gained[m] + plain.gainedBySides[m], wide.gained[m] + wide.gainedBySides[m], 1e-6);
        }
    }

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    @Test
    void the_outlook_of_members_is_the_same_as_it_is_told() {
        List<Wetting> wettings = new ArrayList<>();
        Exposure[] waters = {new Exposure(Set.of(Member.Face.FRONT), 0.2, 0, 0, false, false), new Exposure(Set.of(Member.Face.FRONT), 0.2, 1, 8, true, false), new Exposure(Set.of(Member.Face.TOP, Member.Face.BACK), 3, 0, 48, true, false)};
        for (int i = 0; i < 24; i++)
            wettings.add(new Wetting(new Member("m" + i, "south", MemberKind.POST, "post", Member.Role.BEARS_LOAD, i % 2 == 0 ? "pine-eastern-white" : "oak-white", Member.Run.UPRIGHT, mm(90 + 4 * i), mm(18 + 7 * i), mm(2400), mm(0), mm(0),
                    Optional.empty(), Member.EndGrain.values()[i % 3], Member.EndGrain.COVERED, Member.Coat.values()[i % Member.Coat.values().length], Member.Contact.NONE), waters[i % 3], waters[0], Optional.empty(), 0.5));
        double[] high = {0, 2, 8, 15, 21, 27, 29, 28, 24, 17, 9, 2}, rain = {50, 48, 64, 92, 105, 98, 94, 108, 83, 81, 73, 56};
        List<Normals.Month> months = new ArrayList<>();
        for (int m = 0; m < 12; m++) months.add(new Normals.Month(high[m], high[m] - 9, rain[m], 10, 0.70, 4));
        List<Outlook> plain = Outlooks.of(wettings, new Normals(months), 120, 0.16, new Random(7)), wide = Outlooks.of(wettings, new Normals(months), 120, 0.16, new Random(7), LANES, Memo.NONE);
        for (int i = 0; i < wettings.size(); i++) {
            Outlook one = plain.get(i), other = wide.get(i);
            assertEquals(one.meanMoisture(), other.meanMoisture(), 1e-4, "member " + i);
            assertEquals(one.stoppedMoisture(), other.stoppedMoisture(), 1e-6, "member " + i);
            assertEquals(one.asIs().daysAYear().median(), other.asIs().daysAYear().median(), 1e-3 * one.asIs().daysAYear().median(), "member " + i);
            assertEquals(one.dryDownDays().median(), other.dryDownDays().median(), 1, "member " + i);
        }
    }

    @Test
    void no_water_is_lost() {
        Stack stack = stack(16, 40, 9);
        double[] before = new double[40];
        for (int m = 0; m < 40; m++) before[m] = stack.held(m);
        LANES.hours(stack, air(5000, 9), 0, 5000);
        for (int m = 0; m < 40; m++)
            assertEquals(before[m] + stack.gained[m] + stack.gainedBySides[m], stack.held(m), 1e-9 * Math.max(before[m], stack.held(m)), "piece " + m);
    }

    @Test
    void parted_in_hours_and_in_pieces_it_comes_to_the_same_last_digit() {
        Stack whole = stack(16, 80, 3), parted = stack(16, 80, 3);
        Air air = air(600, 3);
        LANES.hours(whole, air, 0, 600);
        LANES.hours(parted, air, 0, 600, 48, 80);
        LANES.hours(parted, air, 0, 250, 0, 48);
        LANES.hours(parted, air, 250, 600, 0, 48);
        for (int i = 0; i < 16; i++) for (int m = 0; m < 80; m++) assertEquals(whole.moisture[i][m], parted.moisture[i][m], 0);
        assertThrows(IllegalArgumentException.class, () -> LANES.hours(parted, air, 0, 1, 3, 80));
    }

    @Test
    void a_process_started_with_the_module_moves_moisture_in_the_vector_unit() {
        assertTrue(LaneTransport.fits(), "this machine's vectors do not part " + Stack.TOGETHER + " pieces evenly");
        assertInstanceOf(LaneTransport.class, Lanes.best());
    }
}
