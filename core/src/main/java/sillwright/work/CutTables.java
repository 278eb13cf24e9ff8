package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Csv;
import sillwright.measure.Inputs;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.work.CutSolver.Stock;

/// The two tables of the figure `cut-list`: pieces, and the lengths there are.
final class CutTables {
    /// A list longer than this is split by the user: the search is meant for a job, not for a mill.
    static final int MOST_PIECES = 5000;

    private static final Group ANY = new Group("", "", "");

    private CutTables() {}

    /// What must be alike for pieces to come from one board; empty where the table does not say.
    record Group(String species, String grade, String section) {
        static Group of(Csv.Row row) { return new Group(cell(row, "species"), cell(row, "grade"), cell(row, "section")); }

        /// Whether a length of stock so named may serve pieces so named: where the stock says nothing, it serves all.
        boolean serves(Group pieces) { return serves(species, pieces.species) && serves(grade, pieces.grade) && serves(section, pieces.section); }

        private static boolean serves(String stock, String piece) { return stock.isEmpty() || stock.equalsIgnoreCase(piece); }

        /// `pine, No. 1, 2×6`; empty where nothing is said.
        String words() { return String.join(", ", java.util.stream.Stream.of(species, grade, section).filter(one -> !one.isEmpty()).toList()); }
    }

    record Wanted(double lengthMm, String label, Group group, String set) {}

    record Sold(Stock stock, Group group) {}

    private static String cell(Csv.Row row, String column) { return row.cells().getOrDefault(column, "").strip(); }

    static List<Wanted> pieces(Inputs in) {
        List<Wanted> all = new ArrayList<>();
        Faults faults = new Faults("write each piece as length,count,label, such as 4ft 6in,2,rail");
        Csv csv = table(in, "file", in.contents("file"));
        Column length = column(in, "file", csv);
        for (Csv.Row row : csv.rows()) faults.of(row, () -> {
            double mm = length.read(row);
            int count = whole(row, "count", 1);
            if ((long) all.size() + count > MOST_PIECES) throw new Refused("count", "the list has more than {} pieces", "part the list", MOST_PIECES);
            String label = cell(row, "label"), set = cell(row, "set");
            for (int n = 0; n < count; n++) all.add(new Wanted(mm, label.isEmpty() ? "line " + row.line() : label, Group.of(row), set));
        });
        if (csv.rows().isEmpty()) throw in.refuse("file", "there is no piece in it", "write a header length,count,label and a row for each piece");
        faults.done(in, "file");
        return all;
    }

    static List<Sold> stock(Inputs in, boolean[] priced) {
        String written = in.word("stock");
        if (!in.holds("stock")) {
            try {
                return Quantity.readList(written, Kind.LENGTH).stream().map(one -> new Sold(Stock.sold(one.own()), ANY)).toList();
            } catch (Refused refused) {
                throw in.refuse("stock", refused.what(Units.US), refused.mend() + ", or name a table (CSV) with columns length and price that can be read");
            }
        }
        List<Sold> all = new ArrayList<>();
        Faults faults = new Faults("write each length as length,price, such as 8ft,14.50");
        Csv csv = table(in, "stock", in.contents("stock"));
        Column length = column(in, "stock", csv);
        priced[0] = csv.header().contains("price");
        for (Csv.Row row : csv.rows()) faults.of(row, () -> {
            double mm = length.read(row), price = mm;
            if (priced[0]) {
                String cell = row.get("price").strip();
                if (cell.isEmpty()) throw new Refused("price", "is empty", "write the price of one");
                price = row.number("price");
                if (!(price > 0 && price < 1e7) && !(price == 0 && !cell(row, "count").isEmpty())) throw new Refused("price", "{} is no price", "write a number above 0, or 0 with a count for boards in the rack", cell);
            }
            all.add(new Sold(new Stock(mm, price, cell(row, "count").isEmpty() ? Stock.ANY : whole(row, "count", 1), Rack.flaws(cell(row, "defects"))), Group.of(row)));
        });
        faults.done(in, "stock");
        if (all.stream().noneMatch(one -> one.stock().any())) throw in.refuse("stock", "no length in it is there in any number", "leave the count of at least one length empty: what is short must be bought");
        return all;
    }

    private static Csv table(Inputs in, String key, String text) {
        try {
            return Csv.read(text);
        } catch (Refused refused) {
            throw in.refuse(key, refused.at(in.word(key)));
        }
    }

    /// The column that lengths stand in: with their units, or bare in the unit of its name.
    private record Column(String name, String unit) {
        double read(Csv.Row row) {
            String cell = row.get(name).strip();
            if (cell.isEmpty()) throw new Refused(name, "is empty", "write a length with its unit, such as 4ft 6in or 1372mm");
            double mm;
            try {
                mm = Quantity.read(unit.isEmpty() ? cell : cell + unit, Kind.LENGTH).own();
            } catch (Refused refused) {
                throw refused.at(name);
            }
            if (!(mm > 0.0005)) throw new Refused(name, "'{}' is no length", "write a length above 0", cell);
            return mm;
        }
    }

    private static Column column(Inputs in, String key, Csv csv) {
        for (String name : csv.header()) {
            if (name.equals("length")) return new Column(name, "");
            if (name.startsWith("length_") && List.of("mm", "cm", "m", "in", "ft").contains(name.substring(7))) return new Column(name, name.substring(7));
        }
        throw in.refuse(key, "{} has no column length", "write a header " + (key.equals("file") ? "length,count,label" : "length,price"), in.word(key));
    }

    private static int whole(Csv.Row row, String column, int otherwise) {
        String cell = cell(row, column);
        if (cell.isEmpty()) return otherwise;
        double number;
        try {
            number = row.number(column);
        } catch (Refused refused) {
            throw new Refused(column, refused.what(Units.US), "write a whole number from 1 up");
        }
        if (number != Math.rint(number) || number < 1 || number > 1e6) throw new Refused(column, "'{}' is not a whole number from 1 up", "count the pieces, such as 4", cell);
        return (int) number;
    }

    /// Every bad row, told at once.
    private static final class Faults {
        private final List<String> all = new ArrayList<>();
        private final String mend;

        Faults(String mend) { this.mend = mend; }

        void of(Csv.Row row, Runnable read) {
            try {
                read.run();
            } catch (Refused refused) {
                String line = refused.line(Units.US);
                all.add(line.startsWith("line ") ? line : "line " + row.line() + ", " + line);
            }
        }

        void done(Inputs in, String key) {
            if (!all.isEmpty()) throw in.refuse(key, in.word(key).replace("{}", "") + ": " + String.join("; and ", all), mend);
        }
    }
}
