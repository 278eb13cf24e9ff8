/// Did it work, and what comes next?
///
/// In: everything before. Out: [WatchFindings]: two rounds a year, each a list to walk in order, made from this
/// building's own sources, repairs and readings. Units: mm, fractions, dates. Read first: [WatchFindings].
package sillwright.watch;
