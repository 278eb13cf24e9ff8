/// Which wood takes the place of the old, how it lies, and how a moulding is matched?
///
/// In: the old member, its species, where it stands; the offsets of a profile gauge. Out: the stock to buy, the way of its rings, an outline in lines
/// and arcs. Units: mm. Read first: [Stock], [Outline].
package sillwright.work.stock;
