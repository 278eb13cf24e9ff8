package sillwright.wood.moisture;

/// The room inside wood that is not cell wall.
public final class Porosity {
    /// Density of the cell wall over that of water. Source: *Wood Handbook*, older figure (from memory).
    public static final double CELL_WALL = 1.5;
    /// The same as eq. 4-3 of the *Wood Handbook*, FPL-GTR-282, has it (read in a public copy).
    public static final double CELL_WALL_NEWER = 1.54;

    private Porosity() {}

    /// Voids of oven-dry wood, a fraction of its volume: what is left beside the cell wall.
    ///
    /// Source: form from memory of the *Wood Handbook* and of Siau, *Transport Processes in Wood*.
    ///
    /// @param gravityOvenDry oven-dry mass over oven-dry volume, relative to water, 0.1 to less than `cellWall`
    /// @param cellWall       [#CELL_WALL] or [#CELL_WALL_NEWER]
    public static double voids(double gravityOvenDry, double cellWall) { return 1 - gravityOvenDry / cellWall; }

    /// Room left for a liquid in wood that holds water: voids less the bound and free water.
    ///
    /// Source: Siau, *Transport Processes in Wood*, 1 - G(0.667 + 0.01M) (from memory), with the cell wall at 1.5.
    ///
    /// @param gravityAt oven-dry mass over the volume at this moisture
    /// @param moisture  a fraction
    /// @return a fraction of the volume at this moisture; never less than nothing
    public static double room(double gravityAt, double moisture) { return Math.max(0, 1 - gravityAt * (1 / CELL_WALL + moisture)); }

    /// Gravity by the volume at some moisture from the oven-dry one.
    ///
    /// Whole shrinkage by volume is 26.5 ρ/(1000 + 0.265 ρ) % of the green volume, ρ in kg/m³ oven-dry, and part of it is lost in proportion below
    /// fibre saturation. Source: *Wood Handbook*, FPL-GTR-282, ch. 4, eq. 4-9, 4-11 and 4-16 (read in a public copy).
    ///
    /// @param gravityOvenDry 0.1 to 1.2
    /// @param moisture       a fraction; above fibre saturation the volume is the green one
    public static double gravityAt(double gravityOvenDry, double moisture) {
        double whole = 0.265 * gravityOvenDry / (1 + 0.265 * gravityOvenDry);
        double green = gravityOvenDry * (1 - whole);
        double part = whole * (1 - Math.min(1, moisture / Moisture.FIBRE_SATURATION));
        return green / (1 - part);
    }
}
