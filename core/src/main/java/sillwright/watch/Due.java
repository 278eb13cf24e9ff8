package sillwright.watch;

import java.time.LocalDate;
import java.util.Optional;

import sillwright.work.cost.Range;

/// Something that falls due because repairs, coats and gutters age.
///
/// @param on      the day it falls due; before today where it is overdue
/// @param words   what, with where
/// @param sort    the same with `{}` where the member stands: what many of a sort are told together by
/// @param side    id; empty for the whole building
/// @param member  id, where it is on one
/// @param because what it rests on
/// @param hours   of work at the likeliest, by the table of hours
/// @param money   what it costs; nothing where there is no price book
public record Due(LocalDate on, String words, String sort, String side, Optional<String> member, String because, double hours, Range money) {}
