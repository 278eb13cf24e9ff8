/// Where does water in air and in wood come to rest, how much room is there for it, and how would it spread by one coefficient?
///
/// Formulas on plain numbers, each with its source. Units: °C, Pa, mm, s, moisture and humidity as fractions. Read first: [Moisture].
package sillwright.wood.moisture;
