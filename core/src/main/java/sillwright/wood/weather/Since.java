package sillwright.wood.weather;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.random.RandomGenerator;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.SplitMix;
import sillwright.measure.Words;

/// What the weather really was, month by month or hour by hour, as the user wrote it down or a station did.
///
/// Hours of a month of which only the totals are known are made to have them, by [WeatherMaker], several times over; a month of which nothing is known has the building's normals.
///
/// @param months totals and means of real months
/// @param years  whole years of hours, by their year
public record Since(Map<YearMonth, Normals.Month> months, Map<Integer, HourlyFile> years) {
    public static final Basis BASIS = Basis.own("weather since: hours of a month are made to have its totals, four times over; months not told have the normals");
    public static final Since NOTHING = new Since(Map.of(), Map.of());
    private static final int DRAWS = 4;
    private static final List<String> NEEDED = List.of("month", "high", "low", "humidity", "rain", "rain_days");
    /// Where no wind is told: it does not move what wood rests at.
    private static final double WIND_MS = 4;

    public Since {
        months = Collections.unmodifiableMap(new TreeMap<>(months));
        years = Collections.unmodifiableMap(new TreeMap<>(years));
    }

    public boolean isEmpty() { return months.isEmpty() && years.isEmpty(); }

    /// Whether the month of a day is told.
    public boolean tells(LocalDate day) { return years.containsKey(day.getYear()) || months.containsKey(YearMonth.from(day)); }

    public Since with(Since more) {
        Map<YearMonth, Normals.Month> months = new TreeMap<>(this.months);
        months.putAll(more.months);
        Map<Integer, HourlyFile> years = new TreeMap<>(this.years);
        years.putAll(more.years);
        return new Since(months, years);
    }

    /// Reads hours in the EPW layout of one real year, or a table of months: `month,high,low,humidity,rain,rain_days`, values with their units.
    ///
    /// @param name of the file, for what is refused
    public static Since read(String name, String text) {
        try {
            return text.startsWith("LOCATION") ? hours(text) : months(text);
        } catch (Refused refused) {
            throw refused.at(name);
        }
    }

    private static Since hours(String text) {
        Set<String> years = new TreeSet<>();
        text.lines().skip(8).filter(line -> !line.isBlank()).forEach(line -> years.add(line.substring(0, Math.max(0, line.indexOf(','))).strip()));
        if (years.size() != 1) throw new Refused("hourly weather", "its rows are of {} years: a typical year, and not the weather of one", "give the hours of one year that was, or monthly totals", years.size());
        String year = years.iterator().next();
        if (!year.matches("(19|20|21)[0-9]{2}")) throw new Refused("line 9", "'{}' is no year", "give rows that begin with their year", year);
        return new Since(Map.of(), Map.of(Integer.parseInt(year), HourlyFile.read(text)));
    }

    private static Since months(String text) {
        Csv csv = Csv.read(text);
        List<String> missing = NEEDED.stream().filter(column -> !csv.header().contains(column)).toList();
        if (!missing.isEmpty()) throw new Refused("line 1", "the table of months has no column {}", "write a header with " + String.join(", ", NEEDED), String.join(", ", missing));
        Map<YearMonth, Normals.Month> months = new TreeMap<>();
        List<String> faults = new ArrayList<>();
        for (Csv.Row row : csv.rows()) try {
            if (months.putIfAbsent(named(row.get("month")), month(row)) != null) throw new Refused("month", "'{}' stands twice", "keep one row", row.get("month"));
        } catch (Refused refused) {
            faults.add("line " + row.line() + ", " + refused.line(sillwright.measure.Units.SI));
        }
        if (months.isEmpty() && faults.isEmpty()) faults.add("no month stands in it");
        if (!faults.isEmpty()) throw new Refused("", "the table of months is taken whole or not at all: " + Words.list(faults), "write rows such as 2026-05,71F,49F,64%,3.2in,9");
        return new Since(months, Map.of());
    }

    private static YearMonth named(String text) {
        try {
            return YearMonth.parse(text.strip());
        } catch (java.time.DateTimeException _) {
            throw new Refused("month", "'{}' is no month", "write it as 2026-05", text);
        }
    }

    private static Normals.Month month(Csv.Row row) {
        double high = own(row, "high", Kind.TEMPERATURE), low = own(row, "low", Kind.TEMPERATURE), humidity = own(row, "humidity", Kind.PERCENT), rain = own(row, "rain", Kind.LENGTH), days = row.number("rain_days");
        if (low > high) throw new Refused("low", "{} is above the mean high of {}", "change the two about", row.get("low"), row.get("high"));
        if (!(high < 60 && low > -60)) throw new Refused("high", "{} to {} is no weather", "write mean highs and lows of the month, such as 71F", row.get("low"), row.get("high"));
        if (!(humidity > 0.05 && humidity <= 1)) throw new Refused("humidity", "{} is no mean humidity", "write 5% to 100%", row.get("humidity"));
        if (!(days >= 0 && days <= 31)) throw new Refused("rain_days", "{} is no number of days in a month", "write 0 to 31", days);
        if (days > 0 != rain > 0 || rain < days * Normals.LEAST_MM) throw new Refused("rain", "{} does not go with {} rain days", "give both or neither, at least 0.01 in for each rain day", row.get("rain"), days);
        String wind = row.cells().getOrDefault("wind", "");
        return new Normals.Month(high, low, rain, days, humidity, wind.isBlank() ? WIND_MS : own(row, "wind", Kind.WIND));
    }

    private static double own(Csv.Row row, String column, Kind kind) {
        try {
            return Quantity.read(row.get(column).strip(), kind).own();
        } catch (Refused refused) {
            throw refused.at(column);
        }
    }

    /// The weather of whole years, one after another, as often as it must be drawn.
    ///
    /// @param normals of what is not told
    public List<Weather> drawn(Normals normals, int firstYear, int lastYear, long seed) {
        List<Weather> all = new ArrayList<>();
        boolean certain = years.keySet().containsAll(java.util.stream.IntStream.rangeClosed(firstYear, lastYear).boxed().toList());
        for (int draw = 0; draw < (certain ? 1 : DRAWS); draw++) {
            Weather whole = new Weather(Weather.HOURS_A_YEAR * (lastYear - firstYear + 1));
            for (int year = firstYear; year <= lastYear; year++) {
                RandomGenerator random = new SplitMix(seed + 31L * year + draw);
                Weather one = year(normals, year, random);
                int at = Weather.HOURS_A_YEAR * (year - firstYear);
                System.arraycopy(one.tempC, 0, whole.tempC, at, Weather.HOURS_A_YEAR);
                System.arraycopy(one.humidity, 0, whole.humidity, at, Weather.HOURS_A_YEAR);
                System.arraycopy(one.fallsMm, 0, whole.fallsMm, at, Weather.HOURS_A_YEAR);
                System.arraycopy(one.windMs, 0, whole.windMs, at, Weather.HOURS_A_YEAR);
            }
            all.add(whole);
        }
        return List.copyOf(all);
    }

    private Weather year(Normals normals, int year, RandomGenerator random) {
        List<Normals.Month> told = new ArrayList<>();
        for (int m = 0; m < 12; m++) told.add(months.getOrDefault(YearMonth.of(year, m + 1), normals.month(m)));
        HourlyFile file = years.get(year);
        if (file == null) return WeatherMaker.years(new Normals(told), 1, random);
        return file.rainIsMissing() ? file.withRain(new Normals(told), random) : file.weather();
    }
}
