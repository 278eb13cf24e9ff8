/// How far has the decay gone, how strong is what is left, how fast does it go on?
///
/// In: the survey and what the water stage found. Out: [WoodFindings]: for each member the corrected moisture, a map of
/// decayed depth on each probed face with its uncertainty, the damages with their sound-wood lines, the section left. Beside it [Outlooks]: how wet each
/// member is in its weather, how soon it dries once the water is stopped, how decay would go on.
/// Its parts work on plain numbers: `sillwright.wood.strength` holds the equations of strength, and [Capacity] asks them about a member;
/// `sillwright.wood.moisture` those of water in air and wood, `sillwright.wood.weather` makes hours of weather, and `sillwright.wood.drying` moves moisture through wood by them.
/// Units: mm, mm², mL, °C, moisture as a fraction of oven-dry mass. Read first: [Condition], [Damage], [DepthMap].
package sillwright.wood;
