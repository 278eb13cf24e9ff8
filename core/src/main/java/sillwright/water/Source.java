package sillwright.water;

/// Where water that rots exterior wood comes from, each with the words it is said in.
public enum Source {
    SPLASH_FROM_GROUND("rain splashing up from the ground"),
    ROOF_DRIP("roof water falling and splashing at the wall"),
    GUTTER_CLOGGED("a clogged gutter"),
    GUTTER_TOO_SMALL("a gutter or downspout too small for its roof"),
    GUTTER_HUNG_BADLY("a gutter that sags or holds water"),
    GUTTER_JOINT_LEAKS("a leaking gutter joint"),
    DOWNSPOUT_AT_WALL("a downspout that empties at the wall"),
    ROOF_EDGE_DRIPS_BEHIND("a roof edge that drips behind the gutter"),
    ICE_DAM("ice at the eave"),
    ROOF_LEAKS_ABOVE("a roof leak above"),
    FLASHING_FAILED("a missing or failed flashing"),
    CAP_MISSING("a missing cap or water table"),
    SILL_HOLDS_WATER("a sill without fall or drip"),
    JOINT_OPEN("an open joint or failed sealant"),
    WIND_DRIVEN_RAIN("wind-driven rain on an exposed side"),
    END_GRAIN_DRINKS("bare end grain drinking water"),
    SOIL_AGAINST_WOOD("ground or mulch against the wood"),
    CAPILLARY_RISE("damp rising from masonry or concrete"),
    PORCH_FLOOR_HOLDS_WATER("water standing on a porch floor"),
    PLANTS_HOLD_DAMP("plants against the wall"),
    SPRINKLER("a sprinkler"),
    INDOOR_VAPOUR("damp from indoors"),
    PLUMBING_LEAK("a leaking pipe or tap"),
    TRAPPED_BEHIND_COAT("water trapped behind a tight coat or a caulked weep");

    private final String words;

    Source(String words) { this.words = words; }

    /// As it is said, without capital or full stop.
    public String words() { return words; }
}
