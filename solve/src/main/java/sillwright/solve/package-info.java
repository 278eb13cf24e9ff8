/// Answers that are proven best, or come with the most that a better one could save.
///
/// In: what a stage of the core asks of a solver, such as [sillwright.work.CutSolver]. Out: the same answer the core's
/// plain way gives, never worse, with a bound. Lengths are whole thousandths of a millimetre inside. Read first:
/// [ProvenCuts].
package sillwright.solve;
