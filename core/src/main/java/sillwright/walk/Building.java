package sillwright.walk;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// The building itself, and the weather it stands in.
///
/// @param id         a short name for files: `pond-lane-house`
/// @param name       as people call it
/// @param note       anything worth knowing; an invented building says so here
/// @param yearBuilt  the year, 1500 to 2100
/// @param designRain the rate of rain that gutters are sized for, mm/h
/// @param groundSnow the snow load on the ground, MPa
/// @param months     twelve monthly normals, or none
public record Building(String id, String name, String note, int yearBuilt, Optional<Quantity> designRain, Optional<Quantity> groundSnow,
                       List<Month> months) implements Body {
    public Building {
        months = List.copyOf(months);
        if (id.isEmpty()) throw new Refused("id", "is empty", "give the building a short name, such as pond-lane-house");
        if (yearBuilt < 1500 || yearBuilt > 2100) throw new Refused("yearBuilt", "{} is not a year this can be used for", "write the year, such as 1888", yearBuilt);
        if (!months.isEmpty() && months.size() != 12)
            throw new Refused("months", "there are {} months where 12 are wanted", "give January to December, or leave months out", months.size());
        designRain.ifPresent(rain -> Measured.positive("designRain", rain));
        groundSnow.ifPresent(snow -> Measured.notNegative("groundSnow", snow));
    }

    /// The normals of one month.
    ///
    /// @param meanHigh mean of daily highs, °C
    /// @param meanLow  mean of daily lows, °C
    /// @param rain     depth in the month, mm
    /// @param rainDays days with 0.01 in or more
    /// @param humidity mean relative humidity, a fraction
    /// @param wind     mean speed, m/s
    /// @param snow     depth fallen in the month, mm
    public record Month(Quantity meanHigh, Quantity meanLow, Quantity rain, double rainDays, Quantity humidity, Quantity wind, Quantity snow) {
        public Month {
            if (meanLow.own() > meanHigh.own())
                throw new Refused("meanLow", "{} is above the mean high of {}", "change the two about", meanLow, meanHigh);
            if (!(rainDays >= 0 && rainDays <= 31)) throw new Refused("rainDays", "{} is not a number of days in a month", "write 0 to 31", rainDays);
            if (!(humidity.own() >= 0 && humidity.own() <= 1)) throw new Refused("humidity", "{} is not a relative humidity", "write 0% to 100%", humidity);
            Measured.notNegative("rain", rain);
            Measured.notNegative("wind", wind);
            Measured.notNegative("snow", snow);
        }

        public double meanC() { return (meanHigh.own() + meanLow.own()) / 2; }
    }
}
