package sillwright.measure;

/// The system of units that an answer is said in.
public enum Units {
    /// US customary: feet, inches and sixteenths, pounds, degrees Fahrenheit.
    US,
    /// Metric: millimetres, newtons, degrees Celsius.
    SI
}
