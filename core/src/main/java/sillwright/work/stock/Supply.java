package sillwright.work.stock;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.walk.Choice;
import sillwright.walk.Species;

/// One species as it is sold today for exterior work.
///
/// @param sort       softwood or hardwood
/// @param durability of the heartwood of what is sold, which may be less than that of the old wood
/// @param rings      to the inch, asked for at the least; 0 where that tells nothing
public record Supply(Species species, Sort sort, Sold sold, Species.Durability durability, int rings) {
    static final Basis BASIS = Basis.practice("what is sold, and rings to the inch to ask for");

    public enum Sort { SOFTWOOD, HARDWOOD }

    /// From the easiest to come by to the hardest.
    public enum Sold { YARD, ORDER, RECLAIMED }

    private static final Map<String, Supply> ALL = read(StockCsv.TEXT);

    public static Optional<Supply> of(String species) { return Optional.ofNullable(ALL.get(species)); }

    public static Collection<Supply> all() { return ALL.values(); }

    private static Map<String, Supply> read(String csv) {
        Map<String, Supply> all = new LinkedHashMap<>();
        for (Csv.Row row : Csv.read(csv).rows())
            all.put(row.get("name"), new Supply(Species.named(row.get("name")), Choice.of(Sort.class, row.get("sort")), Choice.of(Sold.class, row.get("sold")),
                    Choice.of(Species.Durability.class, row.get("durability").replace(' ', '-')), (int) row.number("rings")));
        return java.util.Collections.unmodifiableMap(all);
    }
}
