/// What is there, and what did we see, probe and measure?
///
/// In: entries of a field book, as they were written on the wall, in any order. Out: the [Survey]: building, sides,
/// members, readings, sightings and photos, with every entry that could not be used named as a [Fault].
/// Units: mm, °C, fractions. Read first: [Entry], [Body], [Survey].
package sillwright.walk;
