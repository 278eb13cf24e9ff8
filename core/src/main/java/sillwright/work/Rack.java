package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.walk.Species;
import sillwright.work.CutSolver.Flaw;
import sillwright.work.cost.Whole;

/// Boards that lie in the rack already, with the defects that were measured on them.
///
/// @param boards in the order of the table
public record Rack(List<Board> boards) {
    public static final Rack EMPTY = new Rack(List.of());

    public Rack { boards = List.copyOf(boards); }

    /// Like boards.
    ///
    /// @param widthMm as it measures, not by name
    /// @param count   how many of them
    /// @param flaws   from the marked end
    public record Board(String species, double widthMm, double depthMm, double lengthMm, int count, List<Flaw> flaws) {
        public Board { flaws = List.copyOf(flaws); }

        boolean carries(Repair.Piece piece) {
            double wide = Math.max(widthMm, depthMm), thin = Math.min(widthMm, depthMm);
            return species.equals(piece.species()) && wide >= Math.max(piece.widthMm(), piece.depthMm()) - ALIKE_MM && thin >= Math.min(piece.widthMm(), piece.depthMm()) - ALIKE_MM;
        }
    }

    private static final double ALIKE_MM = 0.8;

    /// A table of species, width, depth, length, count and defects, each measure with its unit.
    ///
    /// @param file for what is refused
    /// @throws Refused with every bad row
    public static Rack read(String file, String text) {
        Whole whole = new Whole(file, "table of boards");
        Csv csv = whole.csv(text, List.of("species", "width", "depth", "length"));
        List<Board> boards = new ArrayList<>();
        for (Csv.Row row : csv.rows()) whole.row(row, () -> {
            double length = length(row, "length");
            int count = count(row);
            List<Flaw> flaws = flaws(row.cells().getOrDefault("defects", ""));
            new CutSolver.Stock(length, 0, count, flaws);
            boards.add(new Board(Species.named(row.get("species").strip()).name(), length(row, "width"), length(row, "depth"), length, count, flaws));
        });
        if (csv.rows().isEmpty()) whole.fault("no board stands in it; write a header species,width,depth,length,count,defects and a row for each sort of board");
        whole.done();
        return new Rack(boards);
    }

    private static double length(Csv.Row row, String column) {
        double mm;
        try {
            mm = Quantity.read(row.get(column), Kind.LENGTH).own();
        } catch (Refused refused) {
            throw refused.at(column);
        }
        if (!(mm > 0.5)) throw new Refused(column, "'{}' is no size of a board", "write it with its unit, such as 5-1/2 in", row.get(column));
        return mm;
    }

    private static int count(Csv.Row row) {
        String cell = row.cells().getOrDefault("count", "").strip();
        if (cell.isEmpty()) return 1;
        double number = row.number("count");
        if (number != Math.rint(number) || number < 1 || number > 1000) throw new Refused("count", "'{}' is not a whole number from 1 up", "count the boards", cell);
        return (int) number;
    }

    /// Stretches parted by `;` or blanks between them: `14in-17in; 5ft 2in-5ft 4in`.
    static List<Flaw> flaws(String cell) {
        List<Flaw> flaws = new ArrayList<>();
        for (String one : cell.split(";")) {
            if (one.isBlank()) continue;
            int to = middle(one);
            try {
                flaws.add(new Flaw(Quantity.read(one.substring(0, to), Kind.LENGTH).own(), Quantity.read(one.substring(to + 1), Kind.LENGTH).own()));
            } catch (Refused refused) {
                throw new Refused("defects", "'{}' is no stretch of a board", "write from and to with their units, such as 14in-17in, several parted by ;", one.strip());
            }
        }
        return flaws;
    }

    /// Where the hyphen between both measures stands: behind a unit, since `5-1/2in` has one too.
    private static int middle(String one) {
        for (int at = 1; at < one.length(); at++) {
            char before = one.substring(0, at).strip().isEmpty() ? ' ' : one.substring(0, at).strip().charAt(one.substring(0, at).strip().length() - 1);
            if ((one.charAt(at) == '-' || one.charAt(at) == '–') && (Character.isLetter(before) || before == '"' || before == '\'')) return at;
        }
        throw new Refused("defects", "'{}' is no stretch of a board", "write from and to with their units, such as 14in-17in, several parted by ;", one.strip());
    }
}
