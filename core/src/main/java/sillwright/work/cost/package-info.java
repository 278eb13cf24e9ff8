/// What does it cost, and how sure is that?
///
/// In: a [PriceBook] that the user keeps, a [Labour] table of hours for each task, and a [Bill] of what is wanted and done. Out: a [Range]: what it comes to, from
/// draws and in closed form beside them, and what drives the spread. Amounts are mm, mm², mL, pieces or hours; money is in whatever currency the book is kept in.
/// Read first: [Spread], [PriceBook], [Bill].
package sillwright.work.cost;
