package sillwright.measure;

import java.util.List;

import static sillwright.measure.Dimension.*;

/// A unit that people write, and how much of the program's own unit one of it is.
public enum Unit {
    INCH(LENGTH, 25.4, "in", "inch", "inches", "\"", "''", "in."),
    FOOT(LENGTH, 304.8, "ft", "foot", "feet", "'", "ft."),
    YARD(LENGTH, 914.4, "yd", "yard", "yards"),
    MILLIMETRE(LENGTH, 1, "mm"),
    CENTIMETRE(LENGTH, 10, "cm"),
    METRE(LENGTH, 1000, "m", "metre", "metres", "meter", "meters"),

    SQUARE_INCH(AREA, 25.4 * 25.4, "in2", "in²", "sqin"),
    SQUARE_FOOT(AREA, 304.8 * 304.8, "ft2", "ft²", "sqft"),
    SQUARE_MILLIMETRE(AREA, 1, "mm2", "mm²"),
    SQUARE_CENTIMETRE(AREA, 100, "cm2", "cm²"),
    SQUARE_METRE(AREA, 1e6, "m2", "m²"),

    INCH_MODULUS(MODULUS, 25.4 * 25.4 * 25.4, "in3", "in³"),
    MILLIMETRE_MODULUS(MODULUS, 1, "mm3", "mm³"),
    INCH_INERTIA(INERTIA, 25.4 * 25.4 * 25.4 * 25.4, "in4", "in⁴"),
    MILLIMETRE_INERTIA(INERTIA, 1, "mm4", "mm⁴"),

    FLUID_OUNCE(VOLUME, 29.5735295625, "floz", "fl oz", "oz"),
    PINT(VOLUME, 473.176473, "pt", "pint", "pints"),
    QUART(VOLUME, 946.352946, "qt", "quart", "quarts"),
    GALLON(VOLUME, 3785.411784, "gal", "gallon", "gallons"),
    CUBIC_INCH(VOLUME, 16.387064, "in3", "in³", "cuin"),
    MILLILITRE(VOLUME, 1, "mL", "ml", "cm3", "cm³"),
    LITRE(VOLUME, 1000, "L", "l", "litre", "litres", "liter", "liters"),

    FAHRENHEIT(TEMPERATURE, 5.0 / 9, -32 * 5.0 / 9, "F", "°F", "degF", "deg F", "f"),
    CELSIUS(TEMPERATURE, 1, "C", "°C", "degC", "deg C", "c"),
    KELVIN(TEMPERATURE, 1, -273.15, "K"),
    FAHRENHEIT_STEP(DIFFERENCE, 5.0 / 9, "F", "°F", "degF", "deg F", "f"),
    CELSIUS_STEP(DIFFERENCE, 1, "C", "°C", "degC", "deg C", "c", "K"),

    PERCENT(FRACTION, 0.01, "%", "pct", "percent"),
    PART(FRACTION, 1, ""),
    NUMBER(Dimension.NUMBER, 1, ""),

    POUND(FORCE, 4.4482216152605, "lb", "lbf", "lbs", "pound", "pounds"),
    KIP(FORCE, 4448.2216152605, "kip", "kips"),
    NEWTON(FORCE, 1, "N"),
    KILONEWTON(FORCE, 1000, "kN"),
    POUND_PER_FOOT(LINE_LOAD, 4.4482216152605 / 304.8, "lb/ft", "plf", "lbf/ft"),
    POUND_PER_INCH(LINE_LOAD, 4.4482216152605 / 25.4, "lb/in", "pli", "lbf/in"),
    NEWTON_PER_MILLIMETRE(LINE_LOAD, 1, "N/mm", "kN/m"),
    FOOT_POUND(MOMENT, 4.4482216152605 * 304.8, "ft-lb", "ftlb", "lb-ft", "lbft", "ft lb"),
    INCH_POUND(MOMENT, 4.4482216152605 * 25.4, "in-lb", "inlb", "lb-in", "lbin", "in lb"),
    NEWTON_METRE(MOMENT, 1000, "Nm", "N-m", "N·m"),
    KILONEWTON_METRE(MOMENT, 1e6, "kNm", "kN-m", "kN·m"),
    PSI(STRESS, 0.006894757293168361, "psi", "lb/in2"),
    PSF(STRESS, 0.006894757293168361 / 144, "psf", "lb/ft2"),
    MEGAPASCAL(STRESS, 1, "MPa", "N/mm2"),
    KILOPASCAL(STRESS, 1e-3, "kPa", "kN/m2"),
    PASCAL(STRESS, 1e-6, "Pa"),

    SECOND(TIME, 1, "s", "sec"),
    MINUTE(TIME, 60, "min", "minute", "minutes"),
    HOUR(TIME, 3600, "h", "hr", "hour", "hours"),
    DAY(TIME, 86400, "d", "day", "days"),
    OUNCE_MASS(MASS, 28.349523125, "oz"),
    POUND_MASS(MASS, 453.59237, "lb", "lbs"),
    GRAM(MASS, 1, "g"),
    KILOGRAM(MASS, 1000, "kg"),

    GALLON_PER_MINUTE(FLOW, 3.785411784 / 60, "gpm", "gal/min"),
    LITRE_PER_SECOND(FLOW, 1, "L/s", "l/s"),
    LITRE_PER_MINUTE(FLOW, 1.0 / 60, "L/min", "l/min"),
    INCH_PER_HOUR(RAIN, 25.4, "in/h", "in/hr", "iph"),
    MILLIMETRE_PER_HOUR(RAIN, 1, "mm/h", "mm/hr"),
    MILE_PER_HOUR(SPEED, 0.44704, "mph", "mi/h"),
    METRE_PER_SECOND(SPEED, 1, "m/s"),
    KILOMETRE_PER_HOUR(SPEED, 1 / 3.6, "km/h", "kph"),
    KNOT(SPEED, 1852.0 / 3600, "kn", "kt", "knots"),
    DEGREE(ANGLE, 1, "deg", "°", "degrees"),

    INCH_PER_FOOT(SLOPE, 1.0 / 12, "in/ft", "in/foot", "\"/ft", "\"/'", "in/12"),
    MILLIMETRE_PER_METRE(SLOPE, 1e-3, "mm/m"),
    GRADE_PERCENT(SLOPE, 0.01, "%"),
    RISE_OVER_RUN(SLOPE, 1, ""),

    SQUARE_METRE_PER_SECOND(DIFFUSIVITY, 1, "m2/s", "m²/s"),
    SQUARE_FOOT_PER_HOUR(DIFFUSIVITY, 0.09290304 / 3600, "ft2/h", "ft²/h"),
    LITRE_PER_SQUARE_METRE_HOUR(FLUX, 1, "L/m2h", "L/(m2*h)", "kg/m2h", "mm/h"),
    GALLON_PER_SQUARE_FOOT_HOUR(FLUX, 3.785411784 / 0.09290304, "gal/ft2h", "gal/(ft2*h)");

    private final Dimension dimension;
    private final double factor;
    private final double offset;
    private final List<String> names;

    Unit(Dimension dimension, double factor, String... names) { this(dimension, factor, 0, names); }

    Unit(Dimension dimension, double factor, double offset, String... names) {
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.names = List.of(names);
    }

    public Dimension dimension() { return dimension; }

    /// The shortest way this unit is written: `in`, `mm`, `%`.
    public String symbol() { return names.getFirst(); }

    /// From a value in this unit to the program's own unit of the dimension.
    public double toOwn(double value) { return value * factor + offset; }

    /// From the program's own unit to this one.
    public double fromOwn(double own) { return (own - offset) / factor; }

    /// Whether people write this unit so; capitals count only where two units differ by them alone.
    boolean answersTo(String written) {
        for (String name : names) if (name.equals(written)) return true;
        for (String name : names) if (name.length() > 1 && name.equalsIgnoreCase(written)) return true;
        return false;
    }
}
