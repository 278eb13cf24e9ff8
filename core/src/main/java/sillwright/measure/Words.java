package sillwright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/// Numbers said as a person would say them, the same in every locale.
public final class Words {
    private Words() {}

    /// At most `decimals` places, trailing zeros dropped; `-0` is said `0`.
    public static String number(double value, int decimals) {
        if (Double.isNaN(value)) return "unknown";
        if (Double.isInfinite(value)) return value > 0 ? "beyond count" : "below count";
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) return "0";
        String plain = rounded.toPlainString();
        if (plain.indexOf('.') < 0) return plain;
        int end = plain.length();
        while (plain.charAt(end - 1) == '0') end--;
        return plain.substring(0, plain.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /// To a number of significant digits, without exponent between a millionth and a thousand million.
    public static String significant(double value, int digits) {
        if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) return number(value, 0);
        double size = Math.abs(value);
        if (size < 1e-6 || size >= 1e9) return exponent(value, digits);
        int whole = (int) Math.floor(Math.log10(size)) + 1;
        return number(value, Math.max(0, digits - whole));
    }

    private static String exponent(double value, int digits) {
        int power = (int) Math.floor(Math.log10(Math.abs(value)));
        double lead = value / Math.pow(10, power);
        if (Math.abs(lead) >= 10 - 0.5 * Math.pow(10, 1 - digits)) { lead /= 10; power++; }
        return number(lead, digits - 1) + "e" + power;
    }

    /// A length on the tape: `4 ft 6-1/2 in`, `3/8 in`, to the nearest sixteenth; or whole millimetres, with a tenth under five, where a drill or a gap is named.
    public static String length(double mm, Units units) {
        if (units == Units.SI) return number(mm, Math.abs(mm) < 4.95 ? 1 : 0) + " mm";
        long sixteenths = Math.round(Math.abs(mm) / 25.4 * 16);
        String sign = mm < 0 && sixteenths > 0 ? "-" : "";
        long feet = sixteenths >= 36 * 16 ? sixteenths / (12 * 16) : 0;
        long rest = sixteenths - feet * 12 * 16;
        if (feet == 0) return sign + inches(rest) + " in";
        return sign + feet + " ft" + (rest == 0 ? "" : " " + inches(rest) + " in");
    }

    private static String inches(long sixteenths) {
        long whole = sixteenths / 16, part = sixteenths % 16, of = 16;
        while (part > 0 && part % 2 == 0) { part /= 2; of /= 2; }
        if (part == 0) return Long.toString(whole);
        return (whole == 0 ? "" : whole + "-") + part + "/" + of;
    }

    public static String area(double mm2, Units units) {
        return units == Units.US ? significant(mm2 / Unit.SQUARE_FOOT.toOwn(1), 3) + " ft²" : significant(mm2 / 1e6, 3) + " m²";
    }

    public static String volume(double mL, Units units) {
        if (units == Units.US) {
            double ounces = Unit.FLUID_OUNCE.fromOwn(mL);
            return ounces >= 128 ? significant(ounces / 128, 3) + " gal" : significant(ounces, ounces < 10 ? 2 : 3) + " fl oz";
        }
        return mL >= 1000 ? significant(mL / 1000, 3) + " L" : significant(mL, 2) + " mL";
    }

    /// A volume of wood: cubic inches or feet, millilitres or litres.
    public static String wood(double mL, Units units) {
        if (mL <= 0) return "none";
        if (units == Units.SI) return volume(mL, units);
        double inches = Unit.CUBIC_INCH.fromOwn(mL);
        return inches >= 1728 ? significant(inches / 1728, 3) + " ft³" : significant(inches, 3) + " in³";
    }

    /// The same as a bare number, for a column that names its unit: cubic inches or millilitres.
    public static String woodNumber(double mL, Units units) { return significant(units == Units.US ? Unit.CUBIC_INCH.fromOwn(mL) : mL, 3); }

    public static String temperature(double celsius, Units units) {
        return units == Units.US ? number(Unit.FAHRENHEIT.fromOwn(celsius), 0) + " °F" : number(celsius, 0) + " °C";
    }

    public static String rain(double mmPerH, Units units) {
        return units == Units.US ? significant(mmPerH / 25.4, 2) + " in/h" : number(mmPerH, 0) + " mm/h";
    }

    public static String flow(double litresPerS, Units units) {
        return units == Units.US ? significant(Unit.GALLON_PER_MINUTE.fromOwn(litresPerS), 3) + " gpm" : significant(litresPerS, 3) + " L/s";
    }

    public static String force(double newton, Units units) {
        return units == Units.US ? number(Math.round(Unit.POUND.fromOwn(newton) / 10) * 10, 0) + " lb" : significant(newton / 1000, 3) + " kN";
    }

    /// A fraction as percent: 0.125 is `13 %`, 0.004 is `0.4 %`.
    public static String percent(double fraction) {
        double percent = fraction * 100;
        return number(percent, Math.abs(percent) < 1 && percent != 0 ? 1 : 0) + " %";
    }

    /// A chance as percent; one that is not certain is never said to be: `over 99 %`, `under 1 %`.
    public static String chance(double probability) {
        if (probability > 0.995 && probability < 1) return "over 99 %";
        if (probability < 0.005 && probability > 0) return "under 1 %";
        return percent(probability);
    }

    private static final List<String> MONTHS = List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    /// `12 Jun 2026`.
    public static String day(LocalDate day) { return day.getDayOfMonth() + " " + MONTHS.get(day.getMonthValue() - 1) + " " + day.getYear(); }

    /// `one`, `one and two`, `one, two and three`.
    public static String list(List<String> parts) {
        if (parts.size() < 2) return parts.isEmpty() ? "none" : parts.getFirst();
        return String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.getLast();
    }

    /// `1 reading`, `3 readings`: the plural by an added s.
    public static String count(int n, String noun) { return n + " " + noun + (n == 1 ? "" : "s"); }

    /// The first letter made a capital, the rest left.
    public static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /// Names close to what was typed, nearest first, at most four: for an error that helps.
    public static List<String> near(String typed, Iterable<String> names) {
        record Near(String name, int steps) {}
        List<Near> all = new ArrayList<>();
        for (String name : names) {
            int steps = edits(typed.toLowerCase(java.util.Locale.ROOT), name);
            if (name.contains(typed) && !typed.isEmpty()) steps = Math.min(steps, 2);
            if (steps <= Math.max(3, typed.length() / 2)) all.add(new Near(name, steps));
        }
        all.sort((a, b) -> a.steps != b.steps ? Integer.compare(a.steps, b.steps) : a.name.compareTo(b.name));
        return all.stream().limit(4).map(Near::name).toList();
    }

    private static int edits(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) row[j] = j;
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swap, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
