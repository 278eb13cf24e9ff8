package sillwright.water;

import java.time.LocalDate;

/// What a remedy showed of a place: that wood is still wet after a source was seen to, or that it dried.
///
/// Still wet speaks for every other source that reaches the place, and for the same one not being stopped; dry speaks against them.
///
/// @param side   id
/// @param member id of the member that was metered
/// @param since  the day the source was seen to
/// @param wet    whether water still comes
/// @param words  as evidence is said
public record Tested(String side, String member, LocalDate since, boolean wet, String words) {}
