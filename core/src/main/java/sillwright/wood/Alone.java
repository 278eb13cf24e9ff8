package sillwright.wood;

import java.util.Optional;

/// What a member is left with when one source alone is stopped and the other likely ones run on.
///
/// @param source   id, `W1`
/// @param member   id
/// @param hours    with liquid water on it in a mean year
/// @param moisture mean, a fraction
/// @param years    to the next decay rating, middle value; empty where it is not reached in [Forecast#LONGEST_YEARS]
public record Alone(String source, String member, double hours, double moisture, Optional<Double> years) {}
