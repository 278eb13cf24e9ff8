package sillwright.work.cost;

import java.time.LocalDate;
import java.util.Optional;

/// One line of a price book.
///
/// @param item  as the user calls it
/// @param sold  what the price buys
/// @param money from the least to the most it may come to
/// @param date  when it was asked
/// @param line  of the file, from 1
public record Price(String item, Sold sold, Spread money, Optional<LocalDate> date, int line) {}
