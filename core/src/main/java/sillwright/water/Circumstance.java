package sillwright.water;

/// What the survey's measures may say of a source before anything is sighted; weighed in `circumstances.csv`.
enum Circumstance {
    CLEARANCE_BELOW_CODE, CLEARANCE_NONE, CLEARANCE_IN_SPLASH, CLEARANCE_AMPLE, FALLS_TO_WALL, FALLS_AWAY, PAVED, GRAVELLED, MULCHED,
    OVERHANG_NARROW, OVERHANG_WIDE, DRIPS_CLOSE, NO_GUTTER, BIG_ROOF, GUTTER_OVERFLOWS, GUTTER_CARRIES, GUTTER_LEVEL, GUTTER_LONG,
    EMPTIES_AT_FOOT, EMPTIES_NEAR, CARRIED_AWAY, WEATHER_SIDE, DRIVING_RAIN_SEVERE, DRIVING_RAIN_SLIGHT, GABLE, COLD_WINTERS,
    MILD_WINTERS, IN_THE_SOIL, ON_MASONRY, ON_PORCH_FLOOR, END_BARE, END_COVERED;

    /// A circumstance that holds here, with the value its words name.
    record Here(Circumstance what, String value) {}
}
