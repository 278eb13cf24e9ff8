/// How far has the decay gone, how strong is what is left, how fast does it go on?
///
/// In: the survey and what the water stage found. Out: [WoodFindings]: for each member the corrected moisture, a map of
/// decayed depth on each probed face with its uncertainty, the damages with their sound-wood lines, the section left.
/// A part of it, `sillwright.wood.strength`, holds the equations of strength on plain numbers; [Capacity] asks them about a member.
/// Units: mm, mm², mL, °C, moisture as a fraction of oven-dry mass. Read first: [Condition], [Damage], [DepthMap].
package sillwright.wood;
