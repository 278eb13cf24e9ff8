package sillwright.water;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;

/// What the stage rests on besides its figures: the documents that its tables were read from.
public final class WaterBasis {
    private WaterBasis() {}

    public static List<Basis> all() {
        Set<Basis> all = new LinkedHashSet<>(Water.basis());
        all.addAll(LifeTable.basis());
        for (Csv.Row row : Csv.read(SourcesCsv.TEXT).rows()) documents(all, row, "that " + said(row.get("source")) + " rots wood");
        for (Csv.Row row : Csv.read(LinksCsv.TEXT).rows()) documents(all, row, "that " + said(row.get("source")) + " shows as " + said(row.get("sign")));
        for (Csv.Row row : Csv.read(RemediesCsv.TEXT).rows())
            if (!row.get("document").isEmpty() && !row.get("known").isEmpty()) all.add(new Basis(row.get("document"), row.get("where"), Known.of(row.get("known"))));
        return List.copyOf(new ArrayList<>(all));
    }

    private static void documents(Set<Basis> all, Csv.Row row, String where) {
        for (String document : row.get("basis").split(";")) if (!document.isBlank()) all.add(Basis.read(document.strip(), where));
    }

    private static String said(String name) { return name.toLowerCase(java.util.Locale.ROOT).replace('_', ' '); }
}
