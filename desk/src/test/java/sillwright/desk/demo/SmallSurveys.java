package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Building;
import sillwright.walk.Entry;

/// Three small invented surveys, each to be read at one sitting.
public final class SmallSurveys {
    private SmallSurveys() {}

    /// A porch by itself, measured in millimetres.
    public static List<Entry> porchAlone() {
        var building = building("porch-alone", "A porch alone (invented)", 1904, "90 mm/h", "1.4 kPa", PORCH_MONTHS);
        return walked(building, new PorchAlone(), "2025-05-06T08:00:00Z", 21);
    }

    /// One window sill.
    public static List<Entry> oneSill() {
        return walked(building("one-sill", "One window sill (invented)", 1911, "3.5 in/h", "30 psf", DemoHouse.MONTHS), new OneSill(), "2025-09-22T14:00:00Z", 22);
    }

    /// A fascia under a gutter that is too small for its roof.
    public static List<Entry> fasciaUnderGutter() {
        return walked(building("fascia-under-gutter", "A fascia under a small gutter (invented)", 1926, "4 in/h", "25 psf", DemoHouse.MONTHS),
                new FasciaUnderGutter(), "2025-11-03T15:00:00Z", 23);
    }

    private static Building building(String id, String name, int year, String rain, String snow, String months) {
        return new Building(id, name, "An invented piece of an invented house: every measure, reading and sighting was made up to try the program out.", year,
                Optional.of(Quantity.read(rain, Kind.RAIN)), Optional.of(Quantity.read(snow, Kind.STRESS)), Written.months(months));
    }

    private static List<Entry> walked(Building building, SideNotes side, String start, long seed) {
        var walker = new Walker("phone-1", "A. Surveyor", Instant.parse(start), seed);
        walker.write(building);
        var round = new Round(side, walker);
        round.describe(walker);
        round.walk();
        return walker.entries();
    }

    /// Invented, and like those of a wet maritime place.
    private static final String PORCH_MONTHS = """
            high,low,rain,days,humidity,wind,snow
            6 C,1 C,110 mm,17,86%,4.6 m/s,60 mm
            7 C,1 C,82 mm,14,83%,4.5 m/s,50 mm
            10 C,2 C,80 mm,15,79%,4.3 m/s,20 mm
            13 C,4 C,66 mm,13,75%,4 m/s,0 mm
            17 C,8 C,62 mm,12,74%,3.7 m/s,0 mm
            20 C,11 C,66 mm,12,75%,3.5 m/s,0 mm
            22 C,13 C,70 mm,12,76%,3.4 m/s,0 mm
            21 C,13 C,84 mm,13,78%,3.4 m/s,0 mm
            18 C,10 C,90 mm,13,81%,3.7 m/s,0 mm
            14 C,7 C,112 mm,16,84%,4.1 m/s,0 mm
            9 C,3 C,118 mm,17,86%,4.3 m/s,10 mm
            7 C,1 C,120 mm,18,87%,4.5 m/s,40 mm
            """;
}
