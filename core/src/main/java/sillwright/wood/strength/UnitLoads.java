package sillwright.wood.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Unit;

/// What lies on each unit of area, MPa (N/mm²). Whoever works a load changes these to what is there and what the place asks for.
///
/// @param roofDeadMPa  the roof itself
/// @param roofLiveMPa  people and tools on it
/// @param snowMPa      snow on it
/// @param floorDeadMPa the floor itself
/// @param floorLiveMPa people on it
/// @param wallDeadMPa  walls, on their face
public record UnitLoads(double roofDeadMPa, double roofLiveMPa, double snowMPa, double floorDeadMPa, double floorLiveMPa, double wallDeadMPa) {
    /// One row of the table.
    public record Listed(double loadMPa, String says, Basis basis) {}

    private static final Map<String, Listed> ALL = read(UnitLoadsCsv.TEXT);

    /// Every load of the table, by name: `snow`, `slate`.
    public static Map<String, Listed> all() { return ALL; }

    /// What this program starts from for a porch: a deck's 60 psf is the safer choice for one that is walked on while it is shored.
    public static UnitLoads usual() { return new UnitLoads(of("roof-dead"), of("roof-live"), of("snow"), of("floor-dead"), of("deck-live"), of("wall-dead")); }

    private static double of(String name) { return ALL.get(name).loadMPa; }

    public static List<Basis> basis() {
        List<Basis> basis = new ArrayList<>();
        for (String name : List.of("roof-dead", "roof-live", "snow", "floor-dead", "deck-live", "wall-dead")) basis.add(ALL.get(name).basis);
        return basis;
    }

    private static Map<String, Listed> read(String csv) {
        Map<String, Listed> all = new LinkedHashMap<>();
        for (Csv.Row row : Csv.read(csv).rows())
            all.put(row.get("name"), new Listed(Unit.PSF.toOwn(row.number("psf")), row.get("says"),
                    new Basis(row.get("source"), row.get("where") + ": " + row.get("name") + " " + row.get("psf") + " psf", Known.of(row.get("known")))));
        return java.util.Collections.unmodifiableMap(all);
    }
}
