/// The ground floor: units, numbers as people write them, figures that can be worked alone, and refusals.
///
/// Question: what does `4' 6-1/2"` mean, and how is an answer said back? Comes in: text and plain doubles. Goes out:
/// plain doubles in the program's own units (mm, mm², mL, °C, N, MPa, s, mm/h, fractions) and text in the reader's.
/// Nothing else in the program converts a unit. Read first: [Quantity], [Kind], [Figure], [Refused].
package sillwright.measure;
