package sillwright.work.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;

/// What the remedies against water use up beside their hours: an allowance for each, which the user may replace.
///
/// An item that the price book has is priced there. One that it has not is allowed for in hours of general labour, so that an allowance holds in any money; where the book has no wage
/// either, it is left out and said so.
///
/// @param rows by remedy, `hang-gutter`
public record Allowances(Map<String, List<Row>> rows) {
    public static final Basis BASIS = Basis.practice("what remedies against water use up, and what that costs beside an hour's pay");
    /// Ends the words of a line whose price is hours of pay.
    public static final String BY_PAY = ", allowed for by hours of pay";
    private static final List<String> COLUMNS = List.of("remedy", "item", "unit", "each", "per_m", "low", "high", "pay_low", "pay", "pay_high");
    private static final Allowances USUAL = read("the table of allowances", AllowancesCsv.TEXT, Map.of());

    public Allowances { rows = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(rows)); }

    /// @param item as a price book may name it
    /// @param unit that it is counted by, `m`, `m3`, `each`
    /// @param each so many for the job, in that unit, and `perM` so many more for each metre
    /// @param pay  hours of general labour that one unit costs
    public record Row(String item, Sold unit, double each, double perM, double low, double high, Spread pay) {
        Spread amount(double metres) {
            double likely = each + perM * metres;
            return new Spread(likely * low, likely, likely * high);
        }
    }

    public static Allowances usual() { return USUAL; }

    /// The usual table with all rows of a remedy replaced by a user's own.
    ///
    /// @throws Refused with every bad row; a remedy that this program does not know is one
    public static Allowances read(String file, String text) {
        Allowances own = read(file, text, USUAL.rows);
        Map<String, List<Row>> all = new LinkedHashMap<>(USUAL.rows);
        all.putAll(own.rows);
        return new Allowances(all);
    }

    private static Allowances read(String file, String text, Map<String, List<Row>> known) {
        Whole whole = new Whole(file, "table of allowances");
        Csv csv = whole.csv(text, COLUMNS);
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (Csv.Row row : csv.rows()) whole.row(row, () -> {
            String remedy = row.get("remedy").strip();
            if (!known.isEmpty() && !known.containsKey(remedy)) {
                List<String> near = Words.near(remedy, known.keySet());
                throw new Refused("remedy", "'{}' is no remedy of this table", near.isEmpty() ? "use one of " + String.join(", ", known.keySet()) : "did you mean " + String.join(", ", near) + "?", remedy);
            }
            rows.computeIfAbsent(remedy, _ -> new ArrayList<>()).add(row(row));
        });
        whole.done();
        return new Allowances(rows);
    }

    private static Row row(Csv.Row row) {
        double each = row.number("each"), perM = row.number("per_m"), low = row.number("low"), high = row.number("high");
        if (row.get("item").isBlank()) throw new Refused("item", "is empty", "name what is used up");
        if (!(each >= 0 && perM >= 0 && each + perM > 0 && each < 1e5 && perM < 1e5))
            throw new Refused("each", "{} and {} for each metre are no amount", "write so many for the job and so many for each metre, one of them above 0", row.get("each"), row.get("per_m"));
        if (!(low >= 0 && low <= 1 && high >= 1 && high < 1000)) throw new Refused("low", "factors of {} and {} do not lie about 1", "write the least and the most, such as 0.8 and 1.5", row.get("low"), row.get("high"));
        double payLow = row.number("pay_low"), pay = row.number("pay"), payHigh = row.number("pay_high");
        if (!(payLow >= 0 && payLow <= pay && pay <= payHigh && payHigh < 1e5))
            throw new Refused("pay", "{} does not lie between {} and {}", "write hours of pay from 0 up, the least, the likeliest and the most", row.get("pay"), row.get("pay_low"), row.get("pay_high"));
        Sold unit;
        try {
            unit = Sold.read(row.get("unit"));
        } catch (Refused refused) {
            throw refused.at("unit");
        }
        return new Row(row.get("item").strip(), unit, each, perM, low, high, new Spread(payLow, pay, payHigh));
    }

    /// What a remedy uses up, line by line.
    ///
    /// @param remedy `hang-gutter`; one that has no rows uses up nothing
    /// @param metres that it runs along
    /// @param gaps   is told what has no price
    public List<Line> lines(PriceBook prices, String remedy, double metres, String ref, List<String> gaps) {
        List<Line> lines = new ArrayList<>();
        Optional<Price> wage = prices.find(List.of("labour general", "labor general", "labour", "labor")).filter(price -> price.sold().by() == Sold.By.HOURS);
        for (Row row : rows.getOrDefault(remedy, List.of())) {
            Spread amount = row.amount(metres);
            Optional<Price> own = prices.find(List.of(row.item, row.item + "s")).filter(price -> price.sold().by() == row.unit.by());
            if (own.isPresent()) lines.add(new Line(row.item, false, amount.times(row.unit.amount() / own.get().sold().amount()), Spread.exactly(1), 0, own, List.of(ref)));
            else if (wage.isPresent()) lines.add(new Line(row.item + BY_PAY, false, amount, row.pay.times(1 / wage.get().sold().amount()), 0, wage, List.of(ref)));
            else {
                lines.add(new Line(row.item, false, amount, Spread.exactly(1), 0, Optional.empty(), List.of(ref)));
                if (!prices.isEmpty()) gaps.add("Neither " + row.item + " nor an hour of general labour has a price in the book: not in the sum.");
            }
        }
        return lines;
    }

    /// `gutter 24 ft, downspout 16 ft`: the likeliest amounts.
    public String words(String remedy, double metres, Units units) {
        List<String> said = new ArrayList<>();
        for (Row row : rows.getOrDefault(remedy, List.of())) {
            double amount = row.amount(metres).mid(), own = amount * row.unit.amount();
            said.add(row.item + " " + switch (row.unit.by()) {
                case LENGTH -> units == Units.US ? Words.number(own / 304.8, 0) + " ft" : Words.number(own / 1000, 1) + " m";
                case AREA -> units == Units.US ? Words.significant(own / 92_903.04, 2) + " ft²" : Words.significant(own / 1e6, 2) + " m²";
                case VOLUME -> own < 1e5 ? Words.volume(own, units) : units == Units.US ? Words.significant(own / 764_555, 2) + " yd³" : Words.significant(own / 1e6, 2) + " m³";
                case COUNT, HOURS -> "× " + (amount < 1.5 ? Words.significant(amount, 1) : Words.number(amount, 0));
            });
        }
        return String.join(", ", said);
    }
}
