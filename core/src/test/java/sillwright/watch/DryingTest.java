package sillwright.watch;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.Exposure;
import sillwright.wood.Outlooks;
import sillwright.wood.Wetting;
import sillwright.wood.moisture.Moisture;
import sillwright.wood.weather.Normals;
import sillwright.work.Months;

import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class DryingTest {
    private static Quantity mm(double length) { return Quantity.read(length + " mm", Kind.LENGTH); }

    /// The watch predicts from the year's mean air, the outlook hour by hour from four seasons: in the mean of the four they must not part by more than the watch's own spread of speeds, half to twice.
    @ParameterizedTest(name = "{0}, {1} mm")
    @CsvSource({"NONE, 20", "NONE, 45", "FAILING, 20", "FAILING, 45", "SOUND, 20"})
    void the_watch_and_the_outlook_dry_at_the_same_speed(Member.Coat coat, double thickMm) {
        Building building = new Building("invented", "Invented house", "invented for a test", 1890, Optional.empty(), Optional.empty(), Months.chicago());
        Member board = new Member("board", "south", MemberKind.CASING, "board", Member.Role.SHEDS_WATER, "pine-eastern-white", Member.Run.UPRIGHT, mm(140), mm(thickMm), mm(2400), mm(200), mm(400), Optional.empty(),
                Member.EndGrain.COVERED, Member.EndGrain.COVERED, coat, Member.Contact.NONE);
        double from = 0.26, tempC = building.months().stream().mapToDouble(Building.Month::meanC).average().orElseThrow();
        double rest = Moisture.atRest(tempC, building.months().stream().mapToDouble(month -> month.humidity().own()).average().orElseThrow()), half = (from + rest) / 2, sum = 0;
        for (int day : new int[] {15, 105, 196, 288})
            sum += Outlooks.of(List.of(new Wetting(board, Exposure.DRY, Exposure.DRY, Optional.of(from), 0)), Normals.of(Months.chicago()), day, half, new Random(7)).getFirst().dryDownDays().median();
        double watch = Drying.halfDays(board, from, Optional.of(building)), outlook = sum / 4;
        assertTrue(watch > outlook / 2 && watch < outlook * 2, watch + " days by the watch, " + outlook + " by the outlook");
    }
}
