package sillwright.wood.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.Refused;
import sillwright.measure.Words;

/// A year of hourly weather in the EPW layout: eight header lines, then 8760 rows of 35 fields.
///
/// A mark of a missing value is read as missing, never as a value. Source: EPW data dictionary and a public field list (read): 7 dry bulb °C, 8 dew point °C, 9 relative
/// humidity %, 22 wind m/s, 34 liquid depth mm; missing 99.9 or 999, 999, 999, 999.
///
/// @param place      as the file's first line has it
/// @param weather    the hours; a short gap is bridged by straight lines, and missing rain is nothing until [#withRain] lays some in
/// @param rainHours  hours that give a depth of rain, nothing included
/// @param bridged    values of temperature, humidity and wind that were missing
public record HourlyFile(String place, Weather weather, int rainHours, int bridged) {
    public static final Basis BASIS = Basis.read("EPW data dictionary", "fields and missing marks, in public notes");
    private static final int LONGEST_GAP_H = 48;

    /// True where rain is given for less than nine hours in ten, so that the file cannot tell what wets wood.
    public boolean rainIsMissing() { return rainHours < 0.9 * weather.hours(); }

    /// @throws Refused naming every bad row at once; weather with a hole in it is of no use
    public static HourlyFile read(String text) {
        List<String> lines = text.lines().toList();
        List<String> faults = new ArrayList<>();
        if (lines.size() < 9 || !lines.getFirst().startsWith("LOCATION"))
            throw new Refused("line 1", "this is no hourly weather file in the EPW layout", "give a file whose first line begins with LOCATION and that has 8 header lines");
        Weather weather = new Weather(Weather.HOURS_A_YEAR);
        int rows = 0, rain = 0;
        for (int i = 8; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) continue;
            String[] fields = lines.get(i).split(",", -1);
            if (fields.length >= 3 && fields[1].strip().equals("2") && fields[2].strip().equals("29")) continue;
            if (rows == Weather.HOURS_A_YEAR) {
                faults.add("line " + (i + 1) + " is one hour too many");
                break;
            }
            if (fields.length < 34) {
                faults.add("line " + (i + 1) + " has " + fields.length + " fields where 34 or 35 are wanted");
                rows++;
                continue;
            }
            weather.tempC[rows] = value(fields[6], 99.9, -70, 70, i, "dry bulb", faults);
            weather.humidity[rows] = value(fields[8], 999, 0, 110, i, "relative humidity", faults) / 100;
            weather.windMs[rows] = value(fields[21], 999, 0, 60, i, "wind speed", faults);
            double mm = value(fields[33], 999, 0, 400, i, "liquid depth", faults);
            if (!Double.isNaN(mm)) rain++;
            weather.fallsMm[rows] = Double.isNaN(mm) ? 0 : mm;
            rows++;
        }
        if (faults.isEmpty() && rows != Weather.HOURS_A_YEAR) faults.add("there are " + rows + " hours where " + Weather.HOURS_A_YEAR + " are wanted");
        int bridged = 0;
        if (faults.isEmpty()) {
            bridged += bridge(weather.tempC, "dry bulb", faults) + bridge(weather.humidity, "relative humidity", faults) + bridge(weather.windMs, "wind speed", faults);
            for (int h = 0; h < rows; h++) weather.humidity[h] = Math.min(1, weather.humidity[h]);
        }
        if (!faults.isEmpty())
            throw new Refused("hourly weather", Words.list(faults.subList(0, Math.min(12, faults.size()))) + (faults.size() > 12 ? "; and " + (faults.size() - 12) + " more" : ""),
                    "mend the file, or use monthly normals");
        String[] first = lines.getFirst().split(",", -1);
        return new HourlyFile(first.length > 3 ? first[1] + ", " + first[2] + ", " + first[3] : first[1], weather, rain, bridged);
    }

    /// NaN where missing: the mark itself, 999 and more, or an empty field.
    private static double value(String field, double mark, double least, double most, int line, String what, List<String> faults) {
        String text = field.strip();
        if (text.isEmpty()) return Double.NaN;
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException _) {
            faults.add("line " + (line + 1) + ": " + what + " '" + text + "' is not a number");
            return Double.NaN;
        }
        if (value == mark || value >= 999) return Double.NaN;
        if (value >= least && value <= most) return value;
        faults.add("line " + (line + 1) + ": " + what + " " + text + " is out of all reason");
        return Double.NaN;
    }

    private static int bridge(double[] values, String what, List<String> faults) {
        int missing = 0;
        for (int h = 0; h < values.length; h++) {
            if (!Double.isNaN(values[h])) continue;
            int end = h;
            while (end < values.length && Double.isNaN(values[end])) end++;
            if (end - h > LONGEST_GAP_H || end - h == values.length) {
                faults.add(what + " is missing for " + (end - h) + " hours from hour " + (h + 1));
                return missing;
            }
            double before = h > 0 ? values[h - 1] : values[end], after = end < values.length ? values[end] : before;
            for (int k = h; k < end; k++) values[k] = before + (after - before) * (k - h + 1) / (end - h + 1);
            missing += end - h;
            h = end - 1;
        }
        return missing;
    }

    /// The same hours with rain laid in from monthly totals and counts of rain days; what rain the file gives is dropped.
    ///
    /// Whole days are wet, damp ones first by a chance that grows with the day's humidity; each month gets its total exactly. The same random state gives the same rain.
    public Weather withRain(Normals normals, RandomGenerator random) {
        Weather wet = new Weather(weather.hours());
        System.arraycopy(weather.tempC, 0, wet.tempC, 0, wet.hours());
        System.arraycopy(weather.humidity, 0, wet.humidity, 0, wet.hours());
        System.arraycopy(weather.windMs, 0, wet.windMs, 0, wet.hours());
        for (int month = 0; month < 12; month++) {
            int count = (int) Math.round(normals.month(month).rainDays()), first = Normals.firstDay(month), days = Normals.daysIn(month);
            if (count == 0) continue;
            double[] key = new double[days];
            for (int d = 0; d < days; d++) {
                double mean = 0;
                for (int h = 24 * (first + d); h < 24 * (first + d) + 24; h++) mean += weather.humidity[h] / 24;
                key[d] = 8 * mean - Math.log(-Math.log(1 - random.nextDouble() * (1 - 1e-12)));
            }
            double[] amount = new double[days];
            double total = 0;
            for (int k = 0; k < count; k++) {
                int best = 0;
                for (int d = 1; d < days; d++) if (key[d] > key[best]) best = d;
                key[best] = Double.NEGATIVE_INFINITY;
                total += amount[best] = Rainfall.amountMm(normals.month(month).rainMm() / count, random);
            }
            for (int d = 0; d < days; d++)
                if (amount[d] > 0) Rainfall.lay(amount[d] * normals.month(month).rainMm() / total, wet.fallsMm, 24 * (first + d), random);
        }
        return wet;
    }

    /// The normals that this one year has, for what the file gives; rain and rain days are the caller's.
    public Normals normals(List<Double> rainMm, List<Double> rainDays) {
        List<Normals.Month> months = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            double high = 0, low = 0, humidity = 0, wind = 0;
            int first = Normals.firstDay(month), days = Normals.daysIn(month);
            for (int d = first; d < first + days; d++) {
                double top = -100, bottom = 100;
                for (int h = 24 * d; h < 24 * d + 24; h++) {
                    top = Math.max(top, weather.tempC[h]);
                    bottom = Math.min(bottom, weather.tempC[h]);
                    humidity += weather.humidity[h] / days / 24;
                    wind += weather.windMs[h] / days / 24;
                }
                high += top / days;
                low += bottom / days;
            }
            months.add(new Normals.Month(high, low, rainMm.get(month), rainDays.get(month), humidity, wind));
        }
        return new Normals(months);
    }
}
