/// What is the least that will hold, and how is it made?
///
/// In: the survey, the water to stop, the condition of every member. Out: [WorkFindings]: a treatment for each damage
/// with its reasons and the others weighed, joints and mixes dimensioned, what to order, what to cut from what, the order
/// of work, and how to work safely. Units: mm, mL, N, MPa, °C, s. Read first: [Treatment], [Repair], [WorkFindings];
/// then [Weighing], [Rule], [Comparison], [Design], [Repairs]. Joints, resins and stock are packages of their own.
package sillwright.work;
