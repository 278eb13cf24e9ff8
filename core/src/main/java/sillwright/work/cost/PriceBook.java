package sillwright.work.cost;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.measure.Units;

/// What things cost here, as the user keeps it: a table of item, unit, price, and where known low, high and date.
///
/// A price with no low and high is taken as it stands. The table is taken whole or not at all: every row that cannot be read is told at once. Rows of things that
/// this program never buys do no harm.
///
/// @param currency said with every sum; from a `# currency: NAME` line, empty where there is none
/// @param prices   by item, small letters
public record PriceBook(String currency, Map<String, Price> prices) {
    public static final List<String> COLUMNS = List.of("item", "unit", "price", "low", "high", "date");
    /// Nothing is priced.
    public static final PriceBook EMPTY = new PriceBook("", Map.of());

    public PriceBook { prices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(prices)); }

    public boolean isEmpty() { return prices.isEmpty(); }

    /// The price of the first of these names that the book has: the narrowest name comes first.
    public Optional<Price> find(List<String> names) {
        for (String name : names) {
            Price price = prices.get(plain(name));
            if (price != null) return Optional.of(price);
        }
        return Optional.empty();
    }

    /// @param file for what is refused
    /// @throws Refused with every bad row
    public static PriceBook read(String file, String text) {
        Whole whole = new Whole(file, "price book");
        Csv csv = whole.csv(text, List.of("item", "unit", "price"));
        Map<String, Price> prices = new LinkedHashMap<>();
        for (Csv.Row row : csv.rows())
            whole.row(row, () -> {
                Price price = price(row);
                Price before = prices.putIfAbsent(plain(price.item()), price);
                if (before != null) throw new Refused("item", "'{}' is priced in line {} already", "keep one of the two", price.item(), before.line());
            });
        if (csv.rows().isEmpty()) whole.fault("no price stands in it; write a header item,unit,price,low,high,date and a row for each thing");
        whole.done();
        return new PriceBook(currency(csv.notes()), prices);
    }

    private static Price price(Csv.Row row) {
        String item = row.get("item").strip();
        if (item.isEmpty()) throw new Refused("item", "is empty", "name what is priced");
        Sold sold;
        try {
            sold = Sold.read(row.get("unit"));
        } catch (Refused refused) {
            throw refused.at("unit");
        }
        double price = money(row, "price").orElseThrow(() -> new Refused("price", "is empty", "write what one unit costs, such as 24.50"));
        double low = money(row, "low").orElse(price), high = money(row, "high").orElse(price);
        if (!(low <= price && price <= high))
            throw new Refused("price", "{} does not lie between low {} and high {}", "write low, price and high in order", row.get("price"), row.get("low"), row.get("high"));
        return new Price(item, sold, new Spread(low, price, high), date(row), row.line());
    }

    private static Optional<Double> money(Csv.Row row, String column) {
        String cell = row.cells().getOrDefault(column, "");
        if (cell.isBlank()) return Optional.empty();
        double money;
        try {
            money = row.number(column);
        } catch (Refused refused) {
            throw new Refused(column, refused.what(Units.US), "write a plain number with a point and no sign of a currency, such as 24.50");
        }
        if (!(money >= 0 && money < 1e9)) throw new Refused(column, "{} is no price", "write a number from 0 up", cell);
        return Optional.of(money);
    }

    private static Optional<LocalDate> date(Csv.Row row) {
        String cell = row.cells().getOrDefault("date", "");
        if (cell.isBlank()) return Optional.empty();
        try {
            return Optional.of(LocalDate.parse(cell.strip()));
        } catch (DateTimeException _) {
            throw new Refused("date", "'{}' is no date", "write it as 2026-05-04", cell);
        }
    }

    private static String currency(List<String> notes) {
        for (String note : notes)
            if (note.toLowerCase(Locale.ROOT).startsWith("currency:")) return note.substring("currency:".length()).strip();
        return "";
    }

    private static String plain(String name) { return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", " "); }
}
