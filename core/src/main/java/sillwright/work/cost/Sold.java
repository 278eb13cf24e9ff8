package sillwright.work.cost;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;

/// What one price buys: `qt`, `2L`, `100 each`, `ft`, `bdft`, `h`.
///
/// @param amount of the measure: mm, mm², mL, pieces or hours
/// @param by     how it is measured
/// @param text   as written
public record Sold(double amount, By by, String text) {
    public enum By { LENGTH, AREA, VOLUME, COUNT, HOURS }

    /// A board foot, 144 in³: mL.
    private static final double BOARD_FOOT_ML = 144 * 16.387064, CUBIC_METRE_ML = 1e6, HOURS_A_DAY = 8;
    private static final List<String> EACH = List.of("each", "ea", "piece", "pieces", "pc", "pcs", "sheet", "sheets", "bag", "bags", "pair", "roll", "job", "visit", "day hire", "hire");

    /// @throws Refused where there is no unit that anything is sold by
    public static Sold read(String written) {
        String text = written.strip(), unit = text.replaceFirst("^[0-9.]+\\s*", "");
        String number = text.substring(0, text.length() - unit.length()).strip();
        double count = 1;
        if (!number.isEmpty()) {
            if (!number.matches("[0-9]+(\\.[0-9]+)?")) throw wrong(text);
            count = Double.parseDouble(number);
        }
        if (!(count > 0)) throw wrong(text);
        if (EACH.contains(unit)) return new Sold(count, By.COUNT, text);
        switch (unit) {
            case "bdft", "bd ft", "board ft", "board foot", "fbm" -> { return new Sold(count * BOARD_FOOT_ML, By.VOLUME, text); }
            case "m3", "m³" -> { return new Sold(count * CUBIC_METRE_ML, By.VOLUME, text); }
            case "h", "hr", "hour", "hours" -> { return new Sold(count, By.HOURS, text); }
            case "day", "d", "days" -> { return new Sold(count * HOURS_A_DAY, By.HOURS, text); }
            default -> { }
        }
        String measured = number.isEmpty() ? "1" + text : text;
        List<Kind> kinds = List.of(Kind.LENGTH, Kind.AREA, Kind.VOLUME);
        for (Kind kind : kinds) {
            try {
                double own = Quantity.read(measured, kind).own();
                if (own > 0) return new Sold(own, By.values()[kinds.indexOf(kind)], text);
            } catch (Refused _) {
                // Not of this kind: the next is tried, and what is of none is refused below.
            }
        }
        throw wrong(text);
    }

    private static Refused wrong(String text) {
        List<String> units = new ArrayList<>();
        for (Kind kind : List.of(Kind.LENGTH, Kind.AREA, Kind.VOLUME)) units.addAll(kind.accepted());
        return new Refused("", "'{}' is no unit that a price is for", "write one of " + String.join(", ", units) + ", bdft, m3, each, h, day, with a number before it for a pack: 2L, 100 each", text);
    }
}
