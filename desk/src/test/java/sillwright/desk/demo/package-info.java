/// The invented surveys that the examples, the drawings and the tests are made from.
///
/// [DemoHouse] is a whole house, [SmallSurveys] three small pieces. Each side is a set of tables ([SideNotes]): its members,
/// the rot that is truly in them ([Rot]), where they are probed, and what is seen. A [Round] walks a side with a [Walker]
/// and writes the entries. Nothing here is a real place, and every book says so. Read first: [DemoHouse], [SouthSide].
package sillwright.desk.demo;
