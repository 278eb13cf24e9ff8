/// How is new wood joined to old, and what does the joint bear?
///
/// In: sizes of the members, the fastener, the load. Out: a joint with its dimensions, where its fasteners go, how much of it the load
/// uses up. Units: mm, N, MPa. Read first: [Scarf], [YieldLimit], [Hold], [Joinery].
package sillwright.work.joint;
