/// How much resin, mixed how, laid how?
///
/// In: soft and lost wood with their doubt, the day's temperature, what the maker states. Out: parts, batches, lifts, hours, holes to drill. Units: mm, mL, g, °C, s.
/// Read first: [Mix], [Soak], [Mixing].
package sillwright.work.resin;
