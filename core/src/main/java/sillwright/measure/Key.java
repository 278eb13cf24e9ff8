package sillwright.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/// One value that a figure takes: its name, what sort of thing it is, its range, and what stands when it is left out.
///
/// @param name     as typed before the equals sign
/// @param says     what it is, in a few words
/// @param takes    a measured value, a word from a list, free text, or yes and no
/// @param needed   whether the figure cannot be worked without it
/// @param standing what stands when it is left out, as it would be typed; empty when nothing does
public record Key(String name, String says, Takes takes, boolean needed, Optional<String> standing) {

    /// What sort of value a key takes.
    public sealed interface Takes {
        /// A value of a kind between two bounds, in the program's own unit.
        record Measured(Kind kind, double least, double most) implements Takes {}
        /// So many values of a kind, parted by commas.
        record Several(Kind kind, int count, double least, double most) implements Takes {}
        /// One of these words.
        record OneOf(List<String> words) implements Takes {}
        /// Any text: a species, a file.
        record Text(String example) implements Takes {}
        /// true or false.
        record YesNo() implements Takes {}
    }

    public static Key of(String name, Kind kind, String says) {
        return new Key(name, says, new Takes.Measured(kind, -Double.MAX_VALUE, Double.MAX_VALUE), true, Optional.empty());
    }

    /// Many values of one kind, parted by commas.
    public static Key several(String name, Kind kind, int count, String says) {
        return new Key(name, says, new Takes.Several(kind, count, -Double.MAX_VALUE, Double.MAX_VALUE), true, Optional.empty());
    }

    public static Key oneOf(String name, String says, String... words) {
        return new Key(name, says, new Takes.OneOf(List.of(words)), true, Optional.empty());
    }

    public static Key text(String name, String says, String example) {
        return new Key(name, says, new Takes.Text(example), true, Optional.empty());
    }

    public static Key yesNo(String name, String says) {
        return new Key(name, says, new Takes.YesNo(), false, Optional.of("false"));
    }

    /// Outside these bounds the figure refuses; both are in the program's own unit.
    public Key within(double least, double most) {
        return new Key(name, says, switch (takes) {
            case Takes.Measured(var kind, _, _) -> new Takes.Measured(kind, least, most);
            case Takes.Several(var kind, var count, _, _) -> new Takes.Several(kind, count, least, most);
            case Takes.OneOf _, Takes.Text _, Takes.YesNo _ -> takes;
        }, needed, standing);
    }

    /// Bounds written as a person would: `within("-1C", "130C")`.
    public Key within(String least, String most) {
        Kind kind = kind().orElseThrow();
        return within(Quantity.read(least, kind).own(), Quantity.read(most, kind).own());
    }

    public Key optional() { return new Key(name, says, takes, false, standing); }

    /// What stands when it is left out.
    public Key or(String typed) { return new Key(name, says, takes, false, Optional.of(typed)); }

    public Optional<Kind> kind() {
        return switch (takes) {
            case Takes.Measured(var kind, _, _) -> Optional.of(kind);
            case Takes.Several(var kind, _, _, _) -> Optional.of(kind);
            case Takes.OneOf _, Takes.Text _, Takes.YesNo _ -> Optional.empty();
        };
    }

    /// What may be typed, for help and for errors.
    public String accepts(Units units) {
        return switch (takes) {
            case Takes.Measured(var kind, var least, var most) -> unitsOf(kind) + range(kind, least, most, units);
            case Takes.Several(var kind, var count, var least, var most) ->
                    count + " values parted by commas, " + unitsOf(kind) + range(kind, least, most, units);
            case Takes.OneOf(var words) -> String.join(" | ", words);
            case Takes.Text(var example) -> "text, such as " + example;
            case Takes.YesNo() -> "true | false";
        };
    }

    private static String unitsOf(Kind kind) {
        if (kind == Kind.NUMBER) return "a bare number";
        if (kind == Kind.RATIO) return "a ratio such as 1:1 or 1:10";
        if (kind == Kind.PITCH) return "a pitch such as 5/12";
        return String.join(", ", kind.accepted());
    }

    private static String range(Kind kind, double least, double most, Units units) {
        boolean low = least > -Double.MAX_VALUE, high = most < Double.MAX_VALUE;
        Unit unit = kind == Kind.FRACTION ? Unit.PERCENT : kind.in(units);
        String from = low ? bound(unit.fromOwn(least), RoundingMode.CEILING) : "", to = high ? bound(unit.fromOwn(most), RoundingMode.FLOOR) : "";
        String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
        if (low && high) return " (" + from + " to " + to + symbol + ")";
        return low ? " (" + from + symbol + " or more)" : high ? " (" + to + symbol + " or less)" : "";
    }

    /// In four digits where that is all of it, else in two, rounded to the side that is accepted.
    private static String bound(double value, RoundingMode inward) {
        BigDecimal four = new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_EVEN));
        if (Math.abs(four.doubleValue() - value) <= 1e-9 * Math.abs(value)) return Words.significant(value, 4);
        return Words.significant(new BigDecimal(value).round(new MathContext(2, inward)).doubleValue(), 2);
    }
}
