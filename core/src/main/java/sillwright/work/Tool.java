package sillwright.work;

import java.util.List;

/// One tool to have at hand.
///
/// @param name    as the trade has it
/// @param size    that what is designed asks for; empty where any will do
/// @param job     what it is for
/// @param count   how many at once
/// @param repairs ids of the repairs that need it
public record Tool(String name, String size, String job, int count, List<String> repairs) {
    public Tool { repairs = List.copyOf(repairs); }

    /// `clamp, opening to 12 in`
    public String words() { return size.isEmpty() ? name : name + ", " + size; }
}
