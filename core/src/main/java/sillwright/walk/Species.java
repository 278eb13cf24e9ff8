package sillwright.walk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Refused;
import sillwright.measure.Words;

/// A wood as the Wood Handbook's tables know it.
///
/// @param name          common name, lower case, hyphens: `pine-eastern-white`
/// @param scientific    the botanical name
/// @param gravityGreen  oven-dry mass over green volume, relative to water
/// @param radial        shrinkage green to oven-dry across the rings, fraction of the green size
/// @param tangential    the same along the rings
/// @param volumetric    the same by volume
/// @param durability    of the heartwood
/// @param bendingPsi    modulus of rupture of small clear pieces at 12 %, psi, a mean and no design value
/// @param use           where it is met on older buildings; common practice
/// @param notes         what matters in working or matching it; common practice
/// @param basis         where gravity, shrinkage, durability and strength are from
public record Species(String name, String scientific, double gravityGreen, double radial, double tangential, double volumetric,
                      Durability durability, double bendingPsi, String use, String notes, List<Basis> basis) {
    public Species { basis = List.copyOf(basis); }

    /// How well heartwood stands against decay. Sapwood of every species is slight.
    public enum Durability { SLIGHT, MODERATE, RESISTANT, VERY_RESISTANT }

    /// Oven-dry mass over oven-dry volume: the green gravity, of the volume left when all shrinkage is done.
    public double gravityOvenDry() { return gravityGreen / (1 - volumetric); }

    private static final Map<String, Species> ALL = read(SpeciesCsv.TEXT);

    /// Every species of the table, by name.
    public static Map<String, Species> all() { return ALL; }

    public static Optional<Species> find(String name) { return Optional.ofNullable(ALL.get(name)); }

    /// @throws Refused with the nearest names when the table has none of that name
    public static Species named(String name) {
        return find(name).orElseThrow(() -> {
            List<String> near = Words.near(name, ALL.keySet());
            return new Refused("", "'{}' is not a species of the table",
                    near.isEmpty() ? "name it as the Wood Handbook does, such as pine-eastern-white or douglas-fir-coast"
                            : "did you mean " + String.join(", ", near) + "?", name);
        });
    }

    /// The species; or for a name the table lacks the least durable and lightest of those whose first word is a word of
    /// it (`pine-...`, `fir-...`); or where there is none, a softwood of slight durability: on the careful side.
    public static Species orCareful(String name) {
        Species known = ALL.get(name);
        if (known != null) return known;
        List<String> words = List.of(name.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        return ALL.values().stream().filter(kin -> words.contains(kin.firstWord())).min(CAREFUL).orElse(ALL.get("pine-sugar"));
    }

    private String firstWord() { return name.substring(0, name.indexOf('-') < 0 ? name.length() : name.indexOf('-')); }

    private static final Comparator<Species> CAREFUL = Comparator.comparing((Species kin) -> kin.durability).thenComparing(kin -> kin.gravityGreen);

    static Map<String, Species> read(String csv) {
        Map<String, Species> all = new LinkedHashMap<>();
        for (Csv.Row row : Csv.read(csv).rows()) {
            String name = row.get("name"), source = row.get("source");
            List<Basis> basis = new ArrayList<>();
            for (String what : List.of("sg", "shrinkage", "durability", "strength"))
                basis.add(new Basis("Species table: " + name, what + ": " + source, Known.of(row.get(what + "_known"))));
            all.put(name, new Species(name, row.get("scientific"), row.number("sg_green"), row.number("radial_pct") / 100,
                    row.number("tangential_pct") / 100, row.number("volumetric_pct") / 100, durability(row.get("durability")),
                    row.number("mor_12pct_psi"), row.get("use"), row.get("notes"), basis));
        }
        return java.util.Collections.unmodifiableMap(all);
    }

    private static Durability durability(String word) {
        return Choice.of(Durability.class, word.replace(' ', '-'));
    }
}
