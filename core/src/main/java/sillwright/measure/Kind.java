package sillwright.measure;

import java.util.ArrayList;
import java.util.List;

/// What sort of number a figure takes or gives, and the unit it is said in under each system.
public enum Kind {
    LENGTH(Unit.INCH, Unit.MILLIMETRE),
    SPAN(Unit.FOOT, Unit.METRE),
    SECTION_AREA(Unit.SQUARE_INCH, Unit.SQUARE_MILLIMETRE),
    AREA(Unit.SQUARE_FOOT, Unit.SQUARE_METRE),
    MODULUS(Unit.INCH_MODULUS, Unit.MILLIMETRE_MODULUS),
    INERTIA(Unit.INCH_INERTIA, Unit.MILLIMETRE_INERTIA),
    VOLUME(Unit.FLUID_OUNCE, Unit.LITRE),
    TEMPERATURE(Unit.FAHRENHEIT, Unit.CELSIUS),
    DIFFERENCE(Unit.FAHRENHEIT_STEP, Unit.CELSIUS_STEP),
    PERCENT(Unit.PERCENT, Unit.PERCENT),
    FRACTION(Unit.PART, Unit.PART),
    NUMBER(Unit.NUMBER, Unit.NUMBER),
    FORCE(Unit.POUND, Unit.NEWTON),
    LINE_LOAD(Unit.POUND_PER_FOOT, Unit.NEWTON_PER_MILLIMETRE),
    /// Force to draw a fastener out, for each length of it in the wood.
    WITHDRAWAL(Unit.POUND_PER_INCH, Unit.NEWTON_PER_MILLIMETRE),
    MOMENT(Unit.FOOT_POUND, Unit.NEWTON_METRE),
    STRESS(Unit.PSI, Unit.MEGAPASCAL),
    MINUTES(Unit.MINUTE, Unit.MINUTE),
    HOURS(Unit.HOUR, Unit.HOUR),
    DAYS(Unit.DAY, Unit.DAY),
    MASS(Unit.POUND_MASS, Unit.KILOGRAM),
    FLOW(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_SECOND),
    RAIN(Unit.INCH_PER_HOUR, Unit.MILLIMETRE_PER_HOUR),
    WIND(Unit.MILE_PER_HOUR, Unit.METRE_PER_SECOND),
    ANGLE(Unit.DEGREE, Unit.DEGREE),
    FALL(Unit.INCH_PER_FOOT, Unit.MILLIMETRE_PER_METRE),
    /// Rise over run of a roof, or any other slope said as a ratio.
    PITCH(Unit.RISE_OVER_RUN, Unit.RISE_OVER_RUN),
    /// Two parts of a whole, or a slope said as one in so many: `1:1`, `2:1`, `1:10`.
    RATIO(Unit.RISE_OVER_RUN, Unit.RISE_OVER_RUN),
    DIFFUSIVITY(Unit.SQUARE_METRE_PER_SECOND, Unit.SQUARE_METRE_PER_SECOND),
    FLUX(Unit.GALLON_PER_SQUARE_FOOT_HOUR, Unit.LITRE_PER_SQUARE_METRE_HOUR);

    private final Unit us;
    private final Unit si;

    Kind(Unit us, Unit si) {
        this.us = us;
        this.si = si;
    }

    public Dimension dimension() { return us.dimension(); }

    /// The unit an answer of this kind is said in.
    public Unit in(Units units) { return units == Units.US ? us : si; }

    /// The units that a value of this kind may be written in, shortest names, for an error that helps.
    public List<String> accepted() {
        List<String> symbols = new ArrayList<>();
        for (Unit unit : Unit.values())
            if (unit.dimension() == dimension() && !unit.symbol().isEmpty()) symbols.add(unit.symbol());
        return List.copyOf(symbols);
    }

    /// An example that would be taken, for an error that helps.
    public String example() {
        return switch (dimension()) {
            case LENGTH -> "3/8in, 4ft 6-1/2in or 114mm";
            case AREA -> "12ft2 or 1.1m2";
            case MODULUS, INERTIA -> "72" + us.symbol();
            case VOLUME -> "12floz or 0.35L";
            case TEMPERATURE -> "70F or 21C";
            case DIFFERENCE -> "5F or 3C";
            case FRACTION -> "65%";
            case NUMBER -> "0.45";
            case FORCE -> "1200lb or 5.3kN";
            case LINE_LOAD -> "120lb/ft or 1.8N/mm";
            case MOMENT -> "150ft-lb or 200Nm";
            case STRESS -> "900psi or 6.2MPa";
            case TIME -> "45min or 2h";
            case MASS -> "2lb or 500g";
            case FLOW -> "12gpm or 0.8L/s";
            case RAIN -> "6in/h or 150mm/h";
            case SPEED -> "15mph or 7m/s";
            case ANGLE -> "30deg";
            case SLOPE -> this == RATIO ? "1:1 or 1:10" : this == PITCH ? "5/12" : "1/16in/ft, 1/2in per 10ft or 2%";
            case DIFFUSIVITY -> "1e-10m2/s";
            case FLUX -> "2L/m2h";
        };
    }
}
