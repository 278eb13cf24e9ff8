/// Where does the water come from, and what stops it?
///
/// In: the [sillwright.walk.Survey]. Out: [WaterFindings]: gutters against roof and rain, splash against clearance,
/// sources ranked by probability with the sightings for and against each, the next look worth taking, and remedies.
/// Units: mm, mm², L/s, mm/h, m/s, fractions. Read first: [Source], [WaterFindings], [sillwright.water.net.Network].
package sillwright.water;
