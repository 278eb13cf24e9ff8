/// When is what done, and how sure is the end?
///
/// In: [Activity]s with what comes before them, a [Crew], and what each day of many generated years is fit for ([Season]). Out: a [Timetable]: the order whose end comes earliest at the
/// confidence asked for, with a bound that no order goes under. Days are counted from the first day that work may begin, from 0. Read first: [Activity], [Season], [Planner].
package sillwright.work.schedule;
