package sillwright.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Csv;
import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Body;
import sillwright.walk.Choice;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import sillwright.walk.FieldBook;
import sillwright.walk.Member;
import sillwright.walk.MoistureReading;
import sillwright.walk.ProbeReading;
import sillwright.walk.Spot;
import sillwright.wood.moisture.Moisture;

/// Readings that another tool wrote down, as comma-separated values with a header row (RFC 4180), one place to a row:
///
/// | column | what | |
/// | --- | --- | --- |
/// | `at` | when: `2026-04-18`, `2026-04-18 09:30` or `2026-04-18T09:30:00Z`; without a zone it is UTC | needed |
/// | `member` | the member's id in the book | needed |
/// | `face` | front, back, left, right, top or bottom | needed |
/// | `along`, `across` | the place on the face, lengths | needed |
/// | `depth`, `reach` | what a probe told, lengths | both, or `reading` |
/// | `ranOut` | true where the probe went to its limit; left empty, it follows from depth and reach | |
/// | `reading` | what a pin meter showed, a percentage | or `depth` and `reach` |
/// | `temp`, `rh` | the air's temperature and relative humidity beside the wood, as a logger has them: they stand for the moisture that wood comes to rest at in it | or `reading` |
/// | `wood`, `pins` | the wood's temperature, and how deep the pins went | |
/// | `device`, `author` | what wrote it, and who | |
///
/// Every measure has its unit, in the cell (`3/8 in`) or once in the header (`depth [mm]`). A row may hold a probe's and
/// a meter's reading. The same row gets the same id whenever it is read, so a table may be sent again with more rows.
///
/// @param entries of the rows that are right
/// @param faults  of all rows that are not, each with its line
record Readings(List<Entry> entries, List<Fault> faults) {
    private static final List<String> NEEDED = List.of("at", "member", "face", "along", "across");
    private static final List<String> KNOWN = List.of("at", "member", "face", "along", "across", "depth", "reach", "ranOut", "reading", "temp", "rh", "wood", "pins", "device", "author");

    Readings {
        entries = List.copyOf(entries);
        faults = List.copyOf(faults);
    }

    /// @param book what is kept of the building already: the members must be in it
    /// @throws Refused when this is no such table at all
    static Readings read(String name, String text, String building, SurveyFile.Held book) {
        // Where semicolons part the columns, commas stand in the numbers, and no row would fit its header.
        if (text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).findFirst().filter(line -> line.contains(";") && !line.contains(",")).isPresent())
            throw new Refused(name, "the columns are parted by semicolons", "save the table with commas between its columns, and points in its numbers");
        Csv csv;
        try {
            csv = Csv.read(text);
        } catch (Refused refused) {
            throw refused.at(name);
        }
        Map<String, Column> columns = columns(name, csv.header());
        if (csv.rows().isEmpty()) throw new Refused(name, "the table holds no row", "write one row for each place that was read");
        List<Entry> entries = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        Map<String, Integer> lineOf = new HashMap<>();
        Map<String, Integer> times = new HashMap<>();
        for (Csv.Row row : csv.rows()) {
            Cells cells = new Cells(name, row, columns, faults);
            for (Entry entry : cells.entries(building, times)) {
                entries.add(entry);
                lineOf.put("entry " + entry.id(), row.line());
            }
        }
        onTheBuilding(name, entries, lineOf, book, faults);
        faults.sort(java.util.Comparator.comparingInt(fault -> Integer.parseInt(fault.entry().substring("line ".length()))));
        return new Readings(entries, faults);
    }

    /// The fold knows which members there are, and how large: a reading it would set aside is a fault of its row.
    private static void onTheBuilding(String name, List<Entry> entries, Map<String, Integer> lineOf, SurveyFile.Held book, List<Fault> faults) {
        List<Entry> all = new ArrayList<>(book.entries());
        all.addAll(entries);
        for (Fault fault : FieldBook.fold(name, all).faults()) {
            Integer line = lineOf.get(fault.entry());
            if (line != null && fault.grave()) faults.add(new Fault(name, "line " + line, fault.field(), fault.what(), fault.mend(), true));
        }
    }

    /// Where a column stands, and the unit its header gives.
    private record Column(String header, String unit) {}

    private static Map<String, Column> columns(String name, List<String> header) {
        Map<String, Column> columns = new LinkedHashMap<>();
        for (String cell : header) {
            int open = Math.max(cell.indexOf('['), cell.indexOf('('));
            boolean unit = open > 0 && (cell.endsWith("]") || cell.endsWith(")"));
            String column = unit ? cell.substring(0, open).strip() : cell;
            if (!KNOWN.contains(column)) {
                List<String> near = Words.near(column, KNOWN);
                throw new Refused(name, "there is a column '{}', which is not known here", near.isEmpty() ? "take it out, or use one of " + String.join(", ", KNOWN) : "did you mean " + String.join(", ", near) + "?", cell);
            }
            if (columns.put(column, new Column(cell, unit ? cell.substring(open + 1, cell.length() - 1).strip() : "")) != null)
                throw new Refused(name, "there are two columns '{}'", "take one out", column);
        }
        Set<String> missing = new java.util.LinkedHashSet<>(NEEDED);
        missing.removeAll(columns.keySet());
        if (!columns.containsKey("reading") && !(columns.containsKey("temp") && columns.containsKey("rh")) && !(columns.containsKey("depth") && columns.containsKey("reach"))) missing.add("depth and reach, or reading, or temp and rh");
        if (!missing.isEmpty()) throw new Refused(name, "there is no column {}", "the first row names the columns: at,member,face,along,across,depth,reach", String.join(", ", missing));
        return columns;
    }

    /// One row on its way to entries; every fault of it is told.
    private static final class Cells {
        private static final Quantity STAND_IN = new Quantity(1, sillwright.measure.Unit.MILLIMETRE, "1 mm");
        private final String name;
        private final Csv.Row row;
        private final Map<String, Column> columns;
        private final List<Fault> faults;
        private boolean wrong;

        Cells(String name, Csv.Row row, Map<String, Column> columns, List<Fault> faults) {
            this.name = name;
            this.row = row;
            this.columns = columns;
            this.faults = faults;
        }

        private void fault(String column, String what, String mend) {
            faults.add(new Fault(name, "line " + row.line(), column, what, mend, true));
            wrong = true;
        }

        private String cell(String column) { return columns.containsKey(column) ? row.get(columns.get(column).header()) : ""; }

        private Optional<Quantity> maybe(String column, Kind kind) {
            if (cell(column).isEmpty()) return Optional.empty();
            String unit = columns.get(column).unit();
            try {
                return Optional.of(Quantity.read(unit.isEmpty() ? cell(column) : cell(column) + " " + unit, kind));
            } catch (Refused refused) {
                fault(column, refused.what(Units.US), refused.mend());
                return Optional.of(STAND_IN);
            }
        }

        private Quantity measure(String column, Kind kind) {
            return maybe(column, kind).orElseGet(() -> {
                fault(column, "is empty", "write a measure with its unit, such as 3/8 in");
                return STAND_IN;
            });
        }

        /// The id of a row follows from what it says: read again, it is the same entry.
        List<Entry> entries(String building, Map<String, Integer> times) {
            Optional<Long> at = at();
            Spot spot = spot();
            List<Body> bodies = new ArrayList<>();
            if (!cell("depth").isEmpty() || !cell("reach").isEmpty()) body("depth", () -> probe(spot)).ifPresent(bodies::add);
            if (!cell("reading").isEmpty())
                body("reading", () -> new MoistureReading(spot, measure("reading", Kind.PERCENT), maybe("wood", Kind.TEMPERATURE), maybe("pins", Kind.LENGTH))).ifPresent(bodies::add);
            else if (!cell("temp").isEmpty() || !cell("rh").isEmpty()) body("rh", () -> ofAir(spot)).ifPresent(bodies::add);
            if (bodies.isEmpty() && !wrong) fault("", "holds no reading", "write depth and reach, or reading");
            if (wrong || at.isEmpty()) return List.of();
            List<Entry> entries = new ArrayList<>();
            for (Body body : bodies) {
                String said = building + "\n" + at.get() + "\n" + cell("device") + "\n" + cell("author") + "\n" + body;
                int time = times.merge(said, 1, Integer::sum) - 1;
                ByteBuffer digest = ByteBuffer.wrap(HexFormat.of().parseHex(Line.digest((said + "\n" + time).getBytes(StandardCharsets.UTF_8))));
                String id = EntryIds.of(at.get(), digest.getLong(), digest.getLong());
                // Rows of one day share its time; the tick tells them apart, the same way each time they are read.
                entries.add(new Entry(id, new Entry.Stamp(at.get(), digest.getInt() >>> 1), cell("device"), cell("author"), body));
            }
            return entries;
        }

        /// The moisture that wood comes to rest at in the air beside it, to a tenth of a percent.
        private MoistureReading ofAir(Spot spot) {
            Quantity temp = measure("temp", Kind.TEMPERATURE), humidity = measure("rh", Kind.PERCENT);
            if (!(humidity.own() >= 0.01 && humidity.own() <= 1)) throw new Refused("rh", "{} is no relative humidity", "write percent, 1 to 100; a sensor that shows more is wet or broken", humidity);
            if (!(temp.own() >= -40 && temp.own() <= 60)) throw new Refused("temp", "{} is no temperature of air", "check the unit: F or C", temp);
            double moisture = Moisture.atRest(Math.max(-1, temp.own()), Math.min(0.98, humidity.own()));
            return new MoistureReading(spot, Quantity.read(Math.round(1000 * moisture) / 10.0 + "%", Kind.PERCENT), Optional.empty(), Optional.empty());
        }

        private ProbeReading probe(Spot spot) {
            Quantity depth = measure("depth", Kind.LENGTH), reach = measure("reach", Kind.LENGTH);
            String ranOut = cell("ranOut");
            if (!Set.of("", "true", "false").contains(ranOut)) fault("ranOut", "'" + ranOut + "' is not true or false", "write true or false, or leave it empty");
            return new ProbeReading(spot, depth, reach, ranOut.isEmpty() ? depth.own() >= reach.own() - 1e-6 : ranOut.equals("true"));
        }

        /// A record checks what stand-ins would make nonsense of: its refusal counts only where the cells were right.
        private Optional<Body> body(String column, java.util.function.Supplier<Body> make) {
            boolean before = wrong;
            wrong = false;
            try {
                return Optional.of(make.get());
            } catch (Refused refused) {
                if (!wrong) fault(refused.where().isEmpty() ? column : refused.where(), refused.what(Units.US), refused.mend());
                return Optional.empty();
            } finally {
                wrong |= before;
            }
        }

        private Spot spot() {
            String member = cell("member");
            if (member.isEmpty()) fault("member", "is empty", "write the member's id in the book, such as s-post-3");
            Member.Face face = Member.Face.FRONT;
            try {
                face = Choice.of(Member.Face.class, cell("face"));
            } catch (Refused refused) {
                fault("face", refused.what(Units.US), refused.mend());
            }
            Quantity along = measure("along", Kind.LENGTH), across = measure("across", Kind.LENGTH);
            try {
                return new Spot(member, face, along, across);
            } catch (Refused refused) {
                fault(refused.where(), refused.what(Units.US), refused.mend());
                return new Spot(member, face, STAND_IN, STAND_IN);
            }
        }

        private Optional<Long> at() {
            String text = cell("at").replace(' ', 'T');
            for (java.util.function.Function<String, Instant> way : List.<java.util.function.Function<String, Instant>>of(Instant::parse, t -> OffsetDateTime.parse(t).toInstant(),
                    t -> LocalDateTime.parse(t).toInstant(ZoneOffset.UTC), t -> LocalDate.parse(t).atTime(12, 0).toInstant(ZoneOffset.UTC))) {
                try {
                    long ms = way.apply(text).toEpochMilli();
                    if (ms >= 0) return Optional.of(ms);
                    break;
                } catch (DateTimeException _) {
                    // The next way of writing a time may do; where none does, it is said below.
                }
            }
            fault("at", "'" + cell("at") + "' is not a time", "write it as 2026-04-18 or 2026-04-18T09:30:00Z");
            return Optional.empty();
        }
    }
}
