package sillwright.sheet;

import java.util.List;

import sillwright.measure.Units;
import sillwright.measure.Words;

/// How many millimetres of the building one millimetre of paper stands for, from the scales on a carpenter's rule.
///
/// @param ratio 24 where 1 mm of paper is 24 mm of wood
record Scale(double ratio, Units units) {
    private static final List<Double> US = List.of(1.0, 2.0, 4.0, 8.0, 12.0, 16.0, 24.0, 32.0, 48.0, 64.0, 96.0, 128.0, 192.0, 384.0, 768.0);
    private static final List<Double> SI = List.of(1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 25.0, 50.0, 75.0, 100.0, 200.0, 500.0, 1000.0);

    /// The largest scale at which so much of the building fits on so much paper.
    static Scale fitting(double widthMm, double heightMm, double paperWidthMm, double paperHeightMm, Units units) {
        double least = Math.max(widthMm / paperWidthMm, heightMm / paperHeightMm);
        List<Double> rule = units == Units.US ? US : SI;
        for (double ratio : rule) if (ratio >= least - 1e-9) return new Scale(ratio, units);
        return new Scale(Math.ceil(least / rule.getLast()) * rule.getLast(), units);
    }

    double paper(double mm) { return mm / ratio; }

    /// `1:48`, `full size`: where there is no room for more.
    String plain() { return ratio == 1 ? "full size" : "1:" + Words.number(ratio, 0); }

    /// `1/4 in = 1 ft (1:48)`, `1:50`, `full size`.
    String words() {
        String plain = "1:" + Words.number(ratio, 0);
        if (ratio == 1) return "full size";
        if (units == Units.SI || ratio > 192) return plain;
        if (ratio == 2) return "half size";
        return Words.length(12 * 25.4 / ratio, Units.US) + " = 1 ft (" + plain + ")";
    }

    /// A round length of the building that makes a scale bar of 20 to 60 mm on paper.
    double barMm() {
        double unit = units == Units.US ? ratio >= 8 ? 304.8 : 25.4 : ratio >= 8 ? 1000 : 10;
        for (double count : new double[] {1, 2, 4, 5, 10, 20, 50, 100}) if (paper(unit * count) >= 20) return unit * count;
        return unit * 200;
    }
}
