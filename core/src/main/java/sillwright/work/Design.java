package sillwright.work;

import java.util.List;
import java.util.Optional;

import sillwright.work.joint.Joinery;
import sillwright.work.resin.Checks;
import sillwright.work.resin.Mixing;
import sillwright.work.stock.Outline;
import sillwright.work.stock.Rings;
import sillwright.work.stock.Stock;

/// How a repair is made, in numbers.
///
/// @param joint   between old wood and new
/// @param mixings each resin that it takes, in the order they are used
/// @param checks  what is done about the open checks in it, one for each group
/// @param stock   what new wood is made of
/// @param rings   how its rings lie
/// @param outline of the moulding to be matched
/// @param month   of the work with resin, 1 to 12; 0 where no weather is known
/// @param notes   where an end that lets no water through breaks wicking, and where it traps water
public record Design(Optional<Joinery> joint, List<Mixing> mixings, List<Checks> checks, Optional<Stock> stock, Optional<Rings> rings, Optional<Outline> outline, int month, List<String> notes) {
    public static final Design NONE = new Design(Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(), 0, List.of());

    public Design {
        mixings = List.copyOf(mixings);
        checks = List.copyOf(checks);
        notes = List.copyOf(notes);
    }
}
