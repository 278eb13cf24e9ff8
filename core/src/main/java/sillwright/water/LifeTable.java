package sillwright.water;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.walk.Sign;

/// The tables of what lives in the wood: how likely, what it needs, the signs it leaves.
final class LifeTable {
    private LifeTable() {}

    /// A sign with nothing living there.
    static final double LEAK = 0.01;

    /// @param from moisture from which it can go on, a fraction, and `rest` under which it comes to rest
    record Row(double prior, Optional<Double> from, Optional<Double> rest, Optional<Sign> active, String needs, String call, String water, Basis basis) {}

    private static final Map<Life, Row> ROWS = rows();
    private static final Map<Sign, Map<Life, Double>> SIGNS = signs();

    static Row row(Life life) { return ROWS.get(life); }

    /// The lives that leave a sign; empty for a sign that tells of none.
    static Map<Life, Double> of(Sign sign) { return SIGNS.getOrDefault(sign, Map.of()); }

    private static Map<Life, Row> rows() {
        Map<Life, Row> rows = new EnumMap<>(Life.class);
        for (Csv.Row row : Csv.read(LifeCsv.TEXT).rows()) {
            String document = row.get("document");
            rows.put(Life.valueOf(row.get("life")), new Row(row.number("prior"), share(row, "from"), share(row, "rest"),
                    row.get("active").isEmpty() ? Optional.empty() : Optional.of(Sign.valueOf(row.get("active"))), row.get("needs"), row.get("call"), row.get("water"),
                    new Basis(document.isEmpty() ? "Common practice" : document, row.get("where"), Known.of(row.get("known")))));
        }
        return rows;
    }

    private static Optional<Double> share(Csv.Row row, String column) { return row.get(column).isEmpty() ? Optional.empty() : Optional.of(row.number(column)); }

    private static Map<Sign, Map<Life, Double>> signs() {
        Map<Sign, Map<Life, Double>> signs = new EnumMap<>(Sign.class);
        for (Csv.Row row : Csv.read(LifeSignsCsv.TEXT).rows())
            signs.computeIfAbsent(Sign.valueOf(row.get("sign")), _ -> new EnumMap<>(Life.class)).put(Life.valueOf(row.get("life")), row.number("strength"));
        return signs;
    }

    static List<Basis> basis() { return ROWS.values().stream().map(Row::basis).distinct().toList(); }
}
