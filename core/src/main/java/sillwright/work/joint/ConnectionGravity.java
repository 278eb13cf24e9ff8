package sillwright.work.joint;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Refused;
import sillwright.measure.Words;
import sillwright.walk.Species;

/// Specific gravity that a connection is figured with: oven-dry mass over oven-dry volume.
///
/// @param assigned whether the table of connections has the wood; else the gravity is of the species table, rounded down
public record ConnectionGravity(double gravity, boolean assigned, Basis basis) {
    private static final Map<String, ConnectionGravity> ALL = read(ConnectionGravityCsv.TEXT);

    /// @throws Refused with the nearest names where neither table has the wood
    public static ConnectionGravity of(String name) {
        ConnectionGravity listed = ALL.get(name);
        if (listed != null) return listed;
        return Species.find(name)
                .map(species -> new ConnectionGravity(Math.floor(species.gravityOvenDry() * 100) / 100, false, species.basis().get(0)))
                .orElseThrow(() -> {
                    Set<String> names = new LinkedHashSet<>(ALL.keySet());
                    names.addAll(Species.all().keySet());
                    List<String> near = Words.near(name, names);
                    return new Refused("", "'{}' is not a wood of the table", near.isEmpty()
                            ? "name it as the Wood Handbook does, or a combination such as douglas-fir-larch" : "did you mean " + String.join(", ", near) + "?", name);
                });
    }

    private static Map<String, ConnectionGravity> read(String csv) {
        Map<String, ConnectionGravity> all = new LinkedHashMap<>();
        for (Csv.Row row : Csv.read(csv).rows())
            all.put(row.get("name"), new ConnectionGravity(row.number("gravity"), true,
                    new Basis("NDS 2018", "Table 12.3.3A: " + row.get("combination") + " " + row.get("gravity"), Known.of(row.get("known")))));
        return all;
    }
}
