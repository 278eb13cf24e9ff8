package sillwright.measure;

import java.util.ArrayList;
import java.util.List;

/// A number with its unit as somebody wrote it: the text is kept, so that it comes back the same.
///
/// @param own  in the program's own unit of the dimension (mm, °C, N, ...)
/// @param unit the unit it was written in; of several (`4ft 6in`) the smallest
/// @param text as written, outer blanks dropped
public record Quantity(double own, Unit unit, String text) {
    public Quantity {
        if (!(Math.abs(own) <= 1e15)) throw new Refused("", "'{}' is not a number that can be used", "write a plain number with its unit", text);
    }

    /// The value in the unit it was written in.
    public double value() { return unit.fromOwn(own); }

    /// Reads text such as `3/8 in`, `4' 6-1/2"`, `114 mm`, `65%`, `5/12`, `1/16in/ft`.
    ///
    /// @throws Refused when there is no number, no unit, a unit of another dimension, or a unit that nobody uses
    public static Quantity read(String written, Kind kind) {
        String text = written.strip();
        if (text.isEmpty()) throw new Refused("", "nothing is written", "write a value such as " + kind.example());
        String plain = plain(text);
        return switch (kind.dimension()) {
            case SLOPE -> slope(text, plain, kind);
            case NUMBER -> bare(text, plain);
            default -> measured(text, plain, kind);
        };
    }

    /// A length in the program's own unit, said in the reader's: for values that nobody wrote.
    public static Quantity ofLength(double mm, Units units) {
        Unit unit = units == Units.US ? Unit.INCH : Unit.MILLIMETRE;
        return new Quantity(mm, unit, Words.length(mm, units));
    }

    private static Quantity bare(String text, String plain) {
        Scan scan = new Scan(plain);
        double number = scan.number(text, Kind.NUMBER);
        scan.blanks();
        if (!scan.done())
            throw new Refused("", "'{}' is a bare number with something behind it", "write the number alone, such as 0.45", text);
        return new Quantity(number, Unit.NUMBER, text);
    }

    private static Quantity measured(String text, String plain, Kind kind) {
        Scan scan = new Scan(plain);
        double own = 0;
        Unit last = null;
        boolean negative = false;
        do {
            double number = scan.number(text, kind);
            Unit unit = unit(scan.letters(), text, kind);
            if (last != null && !(feetThenInches(last, unit) && number >= 0 && number < 12))
                throw new Refused("", "'{}' puts two values together that do not make one", "write " + kind.example(), text);
            if (last == null) negative = number < 0 || plain.startsWith("-");
            double part = unit.toOwn(number);
            own = last != null && negative ? own - part : own + part;
            last = unit;
            scan.blanks();
        } while (!scan.done());
        return new Quantity(own, last, text);
    }

    private static boolean feetThenInches(Unit first, Unit second) { return first == Unit.FOOT && second == Unit.INCH; }

    private static Unit unit(String letters, String text, Kind kind) {
        if (letters.isEmpty())
            throw new Refused("", "'{}' has no unit", "add one of " + String.join(", ", kind.accepted()) + ", as in " + kind.example(), text);
        for (Unit unit : Unit.values())
            if (unit.dimension() == kind.dimension() && unit.answersTo(letters)) return unit;
        if (letters.startsWith(",") && letters.length() > 1 && Scan.isDigit(letters.charAt(1)))
            throw new Refused("", "'{}' has a comma in its number", "write thousands without a mark and decimals with a point, such as 1200lb or 1.5m", text);
        for (Unit unit : Unit.values())
            if (unit.answersTo(letters))
                throw new Refused("", "'{}' is " + article(unit.dimension()) + ", where " + article(kind.dimension()) + " is wanted",
                        "use one of " + String.join(", ", kind.accepted()) + ", as in " + kind.example(), text);
        throw new Refused("", "'{}' has the unit '" + letters + "', which is not known here",
                "use one of " + String.join(", ", kind.accepted()) + ", as in " + kind.example(), text);
    }

    private static String article(Dimension dimension) {
        String name = dimension.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }

    /// `5/12`, `5:12`, `5 in 12`, `1:10`, `1/16in/ft`, `1/4in per ft`, `1/2in per 10ft`, `5mm/m`, `2%`. A fall is never a bare
    /// fraction: `1/16` might be an inch in a foot or one in sixteen, and the one is twelve times the other.
    private static Quantity slope(String text, String plain, Kind kind) {
        int per = plain.indexOf(" per ");
        if (per > 0) {
            String run = plain.substring(per + 5).strip();
            double rise = read(plain.substring(0, per), Kind.LENGTH).own;
            return ratio(rise, read(startsWithNumber(run) ? run : "1 " + run, Kind.LENGTH).own, text, kind);
        }
        int in = plain.indexOf(" in "), colon = plain.indexOf(':');
        if (colon > 0) return ratio(alone(plain.substring(0, colon), text, kind), alone(plain.substring(colon + 1), text, kind), text, kind);
        if (kind != Kind.FALL && in > 0 && startsWithNumber(plain.substring(in + 4).strip()))
            return ratio(alone(plain.substring(0, in), text, kind), alone(plain.substring(in + 4), text, kind), text, kind);
        Scan scan = new Scan(plain);
        double number = scan.number(text, kind);
        String letters = scan.letters();
        scan.blanks();
        if (letters.isEmpty() && kind != Kind.FALL && plain.indexOf('/') > 0 && scan.done()) return new Quantity(number, Unit.RISE_OVER_RUN, text);
        if (letters.isEmpty() && scan.done())
            throw new Refused("", "'{}' does not say what it rises in what run", "write " + kind.example(), text);
        Unit unit = unit(letters, text, kind);
        if (!scan.done()) throw new Refused("", "'{}' has something behind its unit", "write " + kind.example(), text);
        return new Quantity(unit.toOwn(number), unit, text);
    }

    private static Quantity ratio(double rise, double run, String text, Kind kind) {
        if (run == 0) throw new Refused("", "'{}' has no run", "write " + kind.example(), text);
        return new Quantity(rise / run, Unit.RISE_OVER_RUN, text);
    }

    /// A number with nothing behind it.
    private static double alone(String part, String text, Kind kind) {
        Scan scan = new Scan(part);
        double number = scan.number(text, kind);
        scan.blanks();
        if (!scan.done()) throw new Refused("", "'{}' has something behind a number of its ratio", "write " + kind.example(), text);
        return number;
    }

    private static boolean startsWithNumber(String text) { return !text.isEmpty() && (Scan.isDigit(text.charAt(0)) || text.charAt(0) == '.'); }

    /// Typographers' marks made plain: primes, dashes, vulgar fractions, no-break blanks.
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int vulgar = VULGAR.indexOf(c);
            if (vulgar >= 0) {
                if (!plain.isEmpty() && Character.isDigit(plain.charAt(plain.length() - 1))) plain.append('-');
                plain.append(FRACTIONS.get(vulgar));
            } else plain.append(switch (c) {
                case '′', '’', '‘', 'ʹ' -> "'";
                case '″', '”', '“', 'ʺ' -> "\"";
                case '−', '–', '—', '‑' -> "-";
                case '\u00a0', '\u202f', '\u2009', '\u2007', '\t' -> " ";
                case '⁄', '∕' -> "/";
                case 'º', '˚' -> "°";
                case '℉' -> "°F";
                case '℃' -> "°C";
                default -> String.valueOf(c);
            });
        }
        return plain.toString().strip().replace(" / ", "/");
    }

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
    private static final List<String> FRACTIONS = List.of("1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3",
            "1/5", "2/5", "3/5", "4/5", "1/6", "5/6");

    /// Values parted by commas.
    public static List<Quantity> readList(String written, Kind kind) {
        List<Quantity> all = new ArrayList<>();
        for (String part : written.split(",", -1)) all.add(read(part, kind));
        return List.copyOf(all);
    }

    /// Reads a text from left to right.
    private static final class Scan {
        private final String text;
        private int at;

        Scan(String text) { this.text = text; }

        boolean done() { return at >= text.length(); }

        void blanks() { while (!done() && text.charAt(at) == ' ') at++; }

        /// `6`, `-2.5`, `3/8`, `6-1/2`, `6 1/2`, `1e-10`.
        double number(String whole, Kind kind) {
            blanks();
            int from = at;
            boolean minus = !done() && text.charAt(at) == '-';
            if (minus || (!done() && text.charAt(at) == '+')) at++;
            double first = digits();
            if (Double.isNaN(first)) {
                at = from;
                throw new Refused("", "'{}' has no number where one is wanted", "write " + kind.example(), whole);
            }
            double value = first;
            if (here('/') && nextIsDigit(1)) {
                at++;
                value = over(first, digits(), whole, kind);
            } else if ((here('-') || here(' ')) && fractionFollows()) {
                at++;
                double above = digits();
                at++;
                value = first + over(above, digits(), whole, kind);
            }
            return minus ? -value : value;
        }

        private static double over(double above, double below, String whole, Kind kind) {
            if (!(below > 0)) throw new Refused("", "'{}' divides by nothing", "write " + kind.example(), whole);
            return above / below;
        }

        private boolean here(char c) { return !done() && text.charAt(at) == c; }

        private boolean nextIsDigit(int ahead) { return at + ahead < text.length() && isDigit(text.charAt(at + ahead)); }

        private boolean fractionFollows() {
            int i = at + 1;
            int start = i;
            while (i < text.length() && isDigit(text.charAt(i))) i++;
            return i > start && i + 1 < text.length() && text.charAt(i) == '/' && isDigit(text.charAt(i + 1));
        }

        private double digits() {
            int from = at;
            while (!done() && isDigit(text.charAt(at))) at++;
            if (here('.')) {
                at++;
                while (!done() && isDigit(text.charAt(at))) at++;
            }
            if (at == from || (at == from + 1 && text.charAt(from) == '.')) return Double.NaN;
            int mark = at;
            if (!done() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
                at++;
                if (here('-') || here('+')) at++;
                int power = at;
                while (!done() && isDigit(text.charAt(at))) at++;
                if (at == power) at = mark;
            }
            return Double.parseDouble(text.substring(from, at));
        }

        private static boolean isDigit(char c) { return c >= '0' && c <= '9'; }

        /// The unit: all that follows up to a blank before a digit, or the next digit after a mark of feet.
        String letters() {
            blanks();
            int from = at;
            while (!done()) {
                char c = text.charAt(at);
                if (c == ' ' && (nextIsDigit(1) || at + 1 >= text.length() || nextIs('-'))) break;
                if (at > from && isDigit(c) && (text.charAt(at - 1) == '\'' || isFeet(text.substring(from, at).strip()) && followedByInches())) break;
                at++;
            }
            return text.substring(from, at).strip();
        }

        private static boolean isFeet(String letters) { return Unit.FOOT.answersTo(letters); }

        /// `4ft6in` is feet and inches; `12ft2` is square feet.
        private boolean followedByInches() { return text.indexOf("in", at) > 0 || text.indexOf('"', at) > 0; }

        private boolean nextIs(char c) { return at + 1 < text.length() && text.charAt(at + 1) == c; }
    }
}
