/// What goes on paper: drawings to scale, the dossier, tables and calendars.
///
/// In: the [sillwright.Assessment]. Out: text and bytes; only [Sheets] writes files. Lengths on paper are mm, y runs
/// down the page; lengths on the building are mm, upward from grade. Read first: [Drawing], [Elevation], [Dossier], [Sheets].
package sillwright.sheet;
