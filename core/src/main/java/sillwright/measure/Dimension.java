package sillwright.measure;

/// What a unit measures. The program keeps each in one unit of its own, named here.
public enum Dimension {
    /// mm
    LENGTH,
    /// mm²
    AREA,
    /// mm³, section modulus
    MODULUS,
    /// mm⁴, second moment of area
    INERTIA,
    /// mL
    VOLUME,
    /// °C on the thermometer
    TEMPERATURE,
    /// °C between two temperatures
    DIFFERENCE,
    /// a fraction of one
    FRACTION,
    /// a bare number
    NUMBER,
    /// N
    FORCE,
    /// N/mm
    LINE_LOAD,
    /// N·mm
    MOMENT,
    /// MPa
    STRESS,
    /// s
    TIME,
    /// g
    MASS,
    /// L/s
    FLOW,
    /// mm/h
    RAIN,
    /// m/s
    SPEED,
    /// degrees
    ANGLE,
    /// rise over run, a fraction
    SLOPE,
    /// m²/s
    DIFFUSIVITY,
    /// L/(m²·h)
    FLUX
}
