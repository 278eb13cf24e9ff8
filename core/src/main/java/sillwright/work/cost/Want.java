package sillwright.work.cost;

import java.util.List;
import java.util.Map;

/// Something that is bought.
///
/// @param words   as the order has it
/// @param names   under which a price book may have it, the narrowest first
/// @param by      how the amount is measured
/// @param amount  that is used up, waste and all
/// @param also    what one of the amount comes to in other measures it may be sold by: board feet, pieces
/// @param whole   whether it is bought in whole packs
/// @param refs    ids of what it is for
public record Want(String words, List<String> names, Sold.By by, Spread amount, Map<Sold.By, Double> also, boolean whole, List<String> refs) {
    public Want {
        names = List.copyOf(names);
        also = Map.copyOf(also);
        refs = List.copyOf(refs);
    }
}
