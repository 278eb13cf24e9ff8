package sillwright.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Comma-separated values as RFC 4180 has them, with a header row; lines that open with `#` say where the table is from.
///
/// @param notes  the `#` lines, marks dropped
/// @param header the column names
/// @param rows   each row by column name, in order
public record Csv(List<String> notes, List<String> header, List<Row> rows) {
    public Csv {
        notes = List.copyOf(notes);
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /// A row and the line it starts on, so that an error can say where.
    public record Row(int line, Map<String, String> cells) {
        public String get(String column) {
            String cell = cells.get(column);
            if (cell == null) throw new Refused("line " + line, "there is no column '{}'", "add the column", column);
            return cell;
        }

        public double number(String column) {
            String cell = get(column);
            if (!plain(cell)) throw new Refused("line " + line + ", column " + column, "'{}' is not a number", "write a number with a point", cell);
            try {
                return Double.parseDouble(cell);
            } catch (NumberFormatException _) {
                throw new Refused("line " + line + ", column " + column, "'{}' is not a number", "write a number with a point", cell);
            }
        }

        /// Java reads `12d`, `NaN` and `0x1p3` as numbers too; a table does not.
        private static boolean plain(String cell) {
            for (int i = 0; i < cell.length(); i++) if ("0123456789+-.eE".indexOf(cell.charAt(i)) < 0) return false;
            return true;
        }
    }

    /// @throws Refused when a row is longer than the header or a quote never closes
    public static Csv read(String text) {
        List<String> notes = new ArrayList<>();
        List<List<String>> records = new ArrayList<>();
        List<Integer> lines = new ArrayList<>();
        int at = text.startsWith("\uFEFF") ? 1 : 0, line = 1;
        while (at < text.length()) {
            int end = text.indexOf('\n', at);
            String whole = text.substring(at, end < 0 ? text.length() : end).strip();
            if (whole.startsWith("#") || whole.isEmpty()) {
                if (!whole.isEmpty()) notes.add(whole.substring(1).strip());
                at = end < 0 ? text.length() : end + 1;
                line++;
                continue;
            }
            List<String> cells = new ArrayList<>();
            lines.add(line);
            int next = record(text, at, cells, line);
            for (int i = at; i < next; i++) if (text.charAt(i) == '\n') line++;
            at = next;
            records.add(cells);
        }
        if (records.isEmpty()) return new Csv(notes, List.of(), List.of());
        List<String> header = records.getFirst().stream().map(String::strip).toList();
        List<Row> rows = new ArrayList<>();
        for (int i = 1; i < records.size(); i++) {
            List<String> cells = records.get(i);
            if (cells.size() > header.size())
                throw new Refused("line " + lines.get(i), "the row has {} cells where the header has {}", "quote a cell that holds a comma",
                        cells.size(), header.size());
            Map<String, String> row = new LinkedHashMap<>();
            for (int c = 0; c < header.size(); c++) row.put(header.get(c), c < cells.size() ? cells.get(c) : "");
            rows.add(new Row(lines.get(i), row));
        }
        return new Csv(notes, header, rows);
    }

    /// Reads one record; a quoted cell is kept to the letter, a bare one loses its outer blanks.
    private static int record(String text, int from, List<String> cells, int line) {
        StringBuilder cell = new StringBuilder();
        boolean open = false, quoted = false;
        int at = from;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (open) {
                if (c != '"') cell.append(c);
                else if (at + 1 < text.length() && text.charAt(at + 1) == '"') { cell.append('"'); at++; }
                else open = false;
            } else if (c == '"' && !quoted && cell.toString().isBlank()) {
                cell.setLength(0);
                open = quoted = true;
            } else if (c == ',' || c == '\n') {
                cells.add(quoted ? cell.toString() : cell.toString().strip());
                cell.setLength(0);
                quoted = false;
                if (c == '\n') return at + 1;
            } else if (c != '\r' && !(quoted && c == ' ')) cell.append(c);
        }
        if (open) throw new Refused("line " + line, "a quote is opened and never closed", "close it with \"");
        cells.add(quoted ? cell.toString() : cell.toString().strip());
        return at;
    }

    /// One row as RFC 4180 writes it, ended by CR LF.
    public static String line(List<?> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            if (i > 0) line.append(',');
            String text = String.valueOf(cells.get(i));
            boolean quote = text.indexOf(',') >= 0 || text.indexOf('"') >= 0 || text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0
                    || !text.equals(text.strip()) || text.startsWith("#") || text.startsWith("\uFEFF") || text.isEmpty() && cells.size() == 1;
            line.append(quote ? '"' + text.replace("\"", "\"\"") + '"' : text);
        }
        return line.append("\r\n").toString();
    }
}
