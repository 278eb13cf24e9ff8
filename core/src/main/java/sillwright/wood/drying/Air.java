package sillwright.wood.drying;

/// What the air does to wood, hour by hour: all that [Transport] needs to know of the weather, worked once for the whole stack.
///
/// The arrays belong to the caller.
///
/// @see Wood
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

    public int hours() { return atRest.length; }
}
