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
/// @param said          the name as a yard says it: `eastern white pine`
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
public record Species(String name, String said, String scientific, double gravityGreen, double radial, double tangential, double volumetric,
                      Durability durability, double bendingPsi, String use, String notes, List<Basis> basis) {
    public Species { basis = List.copyOf(basis); }

    /// How well heartwood stands against decay. Sapwood of every species is slight.
    public enum Durability { SLIGHT, MODERATE, RESISTANT, VERY_RESISTANT }

    /// Oven-dry mass over oven-dry volume: the green gravity, of the volume left when all shrinkage is done.
    public double gravityOvenDry() { return gravityGreen / (1 - volumetric); }

    private static final Map<String, Species> ALL = read(SpeciesCsv.TEXT);

    /// Every species of the table, by name.
    public static Map<String, Species> all() { return ALL; }

    /// A name as it is said: `eastern white pine`, `old-growth redwood`, `coast Douglas fir`; what the table lacks, as it was written.
    public static String said(String name) { return find(name).map(Species::said).orElse(name); }

    public static Optional<Species> find(String name) { return Optional.ofNullable(ALL.get(name)); }

    /// @throws Refused with the nearest names when the table has none of that name
    public static Species named(String name) {
        return find(name).orElseThrow(() -> new Refused("", "'{}' is not a species of the table", mend(name), name));
    }

    private static String mend(String name) {
        List<String> near = Words.near(name, ALL.keySet());
        return near.isEmpty() ? "name it as the Wood Handbook does, such as pine-eastern-white or douglas-fir-coast" : "did you mean " + String.join(", ", near) + "?";
    }

    /// The species; or for a name the table lacks the least durable and lightest of those whose first word is a word of
    /// it (`pine-...`, `fir-...`); or where there is none, a softwood of slight durability: on the careful side.
    public static Species orCareful(String name) {
        Species known = ALL.get(name);
        return known != null ? known : kin(name).stream().min(CAREFUL).orElse(ALL.get("pine-sugar"));
    }

    /// A wood that is worked with, and what to say where it is not the one that was named.
    public record Taken(Species species, Optional<String> caution) {}

    /// The species of a name; or where the table lacks it the one that [#orCareful] takes among its kin.
    ///
    /// @throws Refused where no wood of the table shares a word with the name
    public static Taken taken(String name) {
        Species known = ALL.get(name);
        if (known != null) return new Taken(known, Optional.empty());
        List<Species> kin = kin(name);
        if (kin.isEmpty()) throw new Refused("", "'{}' is not a species of the table", mend(name), name);
        Species careful = kin.stream().min(CAREFUL).orElseThrow();
        List<String> near = Words.near(name, ALL.keySet()).stream().filter(one -> !one.equals(careful.name)).toList();
        return new Taken(careful, Optional.of("'" + name + "' is not in the species table: worked as " + careful.name + ", the lightest of the least durable among "
                + (kin.size() == 1 ? "one wood" : kin.size() + " woods") + " there that share its name" + (near.isEmpty() ? "" : " (also " + Words.list(near) + ")")));
    }

    /// The species of a name; or where the table lacks it the one of its kin, or of all woods where it has none, that weighs most nearly as much. Weight tells shrinkage, voids
    /// and strength fairly well and durability not at all: that counts as slight then.
    ///
    /// @param gravity oven-dry mass over green volume
    public static Taken taken(String name, double gravity) {
        Species known = ALL.get(name);
        if (known != null) return new Taken(known, Optional.empty());
        List<Species> kin = kin(name);
        Species near = (kin.isEmpty() ? List.copyOf(ALL.values()) : kin).stream().min(Comparator.comparing((Species one) -> Math.abs(one.gravityGreen - gravity)).thenComparing(one -> one.name)).orElseThrow();
        Species plain = new Species(near.name, near.said, near.scientific, near.gravityGreen, near.radial, near.tangential, near.volumetric, Durability.SLIGHT, near.bendingPsi, near.use, near.notes, near.basis);
        return new Taken(plain, Optional.of("'" + name + "' is not in the species table: worked as " + near.name + ", the nearest in weight" + (kin.isEmpty() ? "" : " of those that share its name")
                + " (its gravity is " + Words.significant(near.gravityGreen, 2) + ", " + Words.significant(gravity, 2) + " was given)"));
    }

    /// Whether a wood of the table shares a name.
    public static boolean hasKin(String name) { return !kin(name).isEmpty(); }

    /// Whose first word is a word of a name.
    private static List<Species> kin(String name) {
        List<String> words = List.of(name.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        return ALL.values().stream().filter(one -> words.contains(one.firstWord())).toList();
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
            all.put(name, new Species(name, row.get("said"), row.get("scientific"), row.number("sg_green"), row.number("radial_pct") / 100,
                    row.number("tangential_pct") / 100, row.number("volumetric_pct") / 100, durability(row.get("durability")),
                    row.number("mor_12pct_psi"), row.get("use"), row.get("notes"), basis));
        }
        return java.util.Collections.unmodifiableMap(all);
    }

    private static Durability durability(String word) {
        return Choice.of(Durability.class, word.replace(' ', '-'));
    }
}
