package sillwright.wood.drying;

import sillwright.measure.Vapour;
import sillwright.wood.moisture.Moisture;

/// What the air does to wood, hour by hour: all that [Transport] needs to know of the weather, worked once for the whole stack.
///
/// The wood is taken to be as warm as the air: sun on it, and the hours it lags, are not counted. The arrays belong to the caller.
public final class Air {
    /// Moisture that wood would come to rest at.
    public final double[] atRest;
    /// Diffusion of bound water over that at 20 °C.
    public final double[] quick;
    /// Pressure of saturated vapour over that at 20 °C.
    public final double[] vapour;
    /// 1 where water runs, 0 where it is frozen.
    public final double[] runs;
    /// Rain, mm in the hour.
    public final double[] rainMm;

    public Air(int hours) {
        atRest = new double[hours];
        quick = new double[hours];
        vapour = new double[hours];
        runs = new double[hours];
        rainMm = new double[hours];
    }

    /// Sets one hour.
    ///
    /// Above 98 % humidity the sorption curve is not known, and 98 % is taken; below -30 °C, -30 °C.
    ///
    /// @param rainMm what falls as rain and not as snow
    public void set(int hour, double tempC, double humidity, double rainMm) {
        double t = Math.max(-30, tempC);
        atRest[hour] = Moisture.atRest(t, Math.max(0, Math.min(0.98, humidity)));
        quick[hour] = Timber.quick(t);
        vapour[hour] = Vapour.saturationPa(t) / SATURATED_PA;
        runs[hour] = tempC > 0 ? 1 : 0;
        this.rainMm[hour] = rainMm;
    }

    private static final double SATURATED_PA = Vapour.saturationPa(20);

    public int hours() { return atRest.length; }
}
