package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.measure.Vapour;
import sillwright.measure.Words;

/// Whether it is weather for paint.
public final class PaintWindow {
    /// 50 °F. Source: *Wood Handbook*, ch. 16, for latex (read).
    public static final double LEAST_C = Unit.FAHRENHEIT.toOwn(50);
    /// 90 °F. Source: *Why House Paint Fails*, Forest Products Laboratory (read).
    public static final double MOST_C = Unit.FAHRENHEIT.toOwn(90);
    /// 5 °F of surface over dew point. Source: ISO 8502-4 and Preservation Brief 10 (from memory).
    public static final double MARGIN_C = Unit.FAHRENHEIT_STEP.toOwn(5);
    /// Source: ISO 8502-4 (from memory); the value quoted in a newspaper (read).
    public static final double MOST_HUMIDITY = 0.85;
    /// Wood at or below about 15 to 16 %. Source: Preservation Brief 10; makers' sheets (from memory).
    public static final double MOST_MOISTURE = 0.16;
    public static final double BETTER_MOISTURE = 0.15;

    private PaintWindow() {}

    /// @param ok       whether nothing speaks against it
    /// @param marginC  surface over dew point
    /// @param reasons  what speaks against it, one each
    /// @param cautions what to watch where it is ok
    public record Verdict(boolean ok, double marginC, List<String> reasons, List<String> cautions) {
        public Verdict {
            reasons = List.copyOf(reasons);
            cautions = List.copyOf(cautions);
        }
    }

    /// @param airC     air
    /// @param surfaceC the wood's face
    /// @param humidity of the air, a fraction
    /// @param moisture of the wood, a fraction
    /// @param leastC   the least temperature the paint allows, [#LEAST_C] where its sheet does not say
    public static Verdict judge(double airC, double surfaceC, double humidity, double moisture, double leastC) {
        double slack = 1e-9, margin = surfaceC - Vapour.dewPointC(airC, humidity);
        List<String> reasons = new ArrayList<>(), cautions = new ArrayList<>();
        if (airC < leastC - slack) reasons.add("the air is below " + both(leastC));
        if (airC > MOST_C + slack) reasons.add("the air is above " + both(MOST_C));
        if (surfaceC < leastC - slack) reasons.add("the surface is below " + both(leastC));
        if (margin < MARGIN_C - slack) reasons.add("the surface is less than 5 °F (3 °C) above the dew point: water will settle on it");
        if (humidity > MOST_HUMIDITY + slack) reasons.add("the air is damper than " + Words.percent(MOST_HUMIDITY));
        if (moisture > MOST_MOISTURE + slack) reasons.add("the wood holds more than " + Words.percent(MOST_MOISTURE) + " moisture");
        else if (moisture > BETTER_MOISTURE + slack) cautions.add("sources part between 15 and 16 % for the wood: drier is better");
        if (surfaceC > MOST_C + slack) cautions.add("the face is hot: follow the sun round and paint in shade");
        return new Verdict(reasons.isEmpty(), margin, reasons, cautions);
    }

    private static String both(double celsius) { return Words.temperature(celsius, Units.US) + " (" + Words.temperature(celsius, Units.SI) + ")"; }
}
