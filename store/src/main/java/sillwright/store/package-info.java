/// The field book on disk: in a database, and in the exchange file `*.survey.json`; every fault named and nothing lost.
/// And the findings of the whole road as `findings.json`.
///
/// **Where a book is.** One SQLite file, say `house.book`, or a PostgreSQL database by URL, the same in both. While a
/// file is open, `-wal` and `-shm` stand beside it and belong to it; once every program has closed it, the one file is
/// the whole book, photos and all, and may be copied. A copy of a book in use is made by [Backup]. A book lies on a
/// local disk: SQLite's locks do not hold over most network drives.
///
/// **What is promised.** A write that has returned is durable: it waited for the disk (SQLite `synchronous` FULL,
/// PostgreSQL `synchronous_commit`). Whether a disk keeps its own promise in a power cut cannot be seen from here.
/// Lines are only ever added: the database refuses any other change. The same entry sent again is kept once; two
/// entries that share an id and differ are both kept, and the fold names them.
///
/// **How two come together.** [Book#since] and [Book#append] for a phone, [Merge] for two books: union, in any order.
///
/// Read first: [Book], then [Pen], [Photos], [Import], [Export], [Backup], [Merge], [Doctor]; for files alone [SurveyFile].
package sillwright.store;
