package sillwright.wood.weather;

/// Hours of weather, one after the other, in years of 365 days from the first of January.
///
/// The arrays belong to the caller. Hour h of a day is the hour that ends at h + 1.
public final class Weather {
    public static final int HOURS_A_YEAR = 8760;

    public final double[] tempC;
    /// Relative humidity, a fraction.
    public final double[] humidity;
    /// What falls in the hour, mm of water, as rain or as snow.
    public final double[] fallsMm;
    public final double[] windMs;

    public Weather(int hours) {
        tempC = new double[hours];
        humidity = new double[hours];
        fallsMm = new double[hours];
        windMs = new double[hours];
    }

    public int hours() { return tempC.length; }

    public int years() { return hours() / HOURS_A_YEAR; }

    /// Below this, what falls is taken for snow, °C.
    public static final double SNOW_C = 1;

    /// What falls as rain in an hour, mm.
    public double rainMm(int hour) { return tempC[hour] < SNOW_C ? 0 : fallsMm[hour]; }

    /// What falls in a day, mm.
    public double dayMm(int day) {
        double sum = 0;
        for (int h = 24 * day; h < 24 * day + 24; h++) sum += fallsMm[h];
        return sum;
    }
}
