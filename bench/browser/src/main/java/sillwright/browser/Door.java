package sillwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.teavm.jso.JSExport;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Csv;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.walk.ProbeReading;
import sillwright.walk.Spot;
import sillwright.wood.NextProbe;

/// What a page without a server could ask of the core: any figure, and where to probe next.
public final class Door {
    private Door() {}

    public static void main(String[] args) {}

    /// Every row of a table of outside values through the figure it is of.
    ///
    /// @param table the text of a table of checks
    /// @return how many rows were worked, then a line for each that does not come out
    @JSExport
    public static String worked(String table) {
        Csv csv = Csv.read(table);
        if (csv.notes().stream().noneMatch(note -> note.startsWith("checks: figure"))) return "0";
        List<String> lines = new ArrayList<>(List.of(String.valueOf(csv.rows().size())));
        for (Csv.Row row : csv.rows()) {
            String got = got(row);
            if (!got.equals(row.get("expected")) && !near(got, row)) lines.add(row.get("figure") + " " + row.get("inputs") + " " + row.get("result") + ": " + got + ", printed " + row.get("expected"));
        }
        return String.join("\n", lines);
    }

    private static boolean near(String got, Csv.Row row) {
        try {
            return Math.abs(Double.parseDouble(got) - Double.parseDouble(row.get("expected"))) <= row.number("tolerance") + 1e-12;
        } catch (NumberFormatException _) {
            return false;
        }
    }

    private static String got(Csv.Row row) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : row.get("inputs").split(" ")) if (!pair.isEmpty()) typed.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1).replace('_', ' '));
        try {
            return switch (Figures.named(row.get("figure")).answer(typed).results().get(row.get("result"))) {
                case null -> "no such result";
                case Answer.Measured measured -> String.valueOf(measured.in("si".equals(row.cells().getOrDefault("units", "us")) ? Units.SI : Units.US));
                case Answer.Said(var word) -> word;
                case Answer.True(var yes) -> String.valueOf(yes);
            };
        } catch (Refused refused) {
            return refused.getMessage();
        }
    }

    private static Quantity mm(double value) { return new Quantity(value, Unit.MILLIMETRE, value + " mm"); }

    /// Where to push next on the front of an upright square post of pine, all in mm.
    @JSExport
    public static String probeNext(double sizeMm, double lengthMm, double[] along, double[] across, double[] depth) {
        Member post = new Member("post", "side", MemberKind.POST, "post", Member.Role.BEARS_LOAD, "pine-eastern-white", Member.Run.UPRIGHT, mm(sizeMm), mm(sizeMm), mm(lengthMm), mm(0), mm(0),
                Optional.empty(), Member.EndGrain.BARE, Member.EndGrain.COVERED, Member.Coat.NONE, Member.Contact.NONE);
        List<ProbeReading> readings = new ArrayList<>();
        for (int i = 0; i < along.length; i++) readings.add(new ProbeReading(new Spot("post", Member.Face.FRONT, mm(along[i]), mm(across[i])), mm(depth[i]), mm(100), false));
        return NextProbe.of(post, readings).map(next -> next.words(Units.SI)).orElse("");
    }
}
