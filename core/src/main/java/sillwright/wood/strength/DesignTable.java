package sillwright.wood.strength;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import sillwright.measure.Basis;
import sillwright.measure.Csv;
import sillwright.measure.Known;
import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Words;
import sillwright.walk.Species;

/// The design tables: which group a wood is graded in, and what the group may be stressed to.
///
/// @param lumber group of its lumber; empty where it has none
/// @param timber group of its timbers; empty where none is known
record DesignTable(String lumber, String timber) {
    private static final List<Row> ROWS = rows(DesignValuesCsv.TEXT);
    private static final Map<String, DesignTable> WOODS = woods(DesignGroupsCsv.TEXT);

    /// @param width nominal inches up to which it holds; 0 for any
    private record Row(String group, Use use, Grade grade, int width, DesignValues values) {}

    static boolean knows(String wood) { return WOODS.containsKey(wood) || Species.find(wood).isPresent(); }

    static Set<String> groups() {
        Set<String> groups = new LinkedHashSet<>();
        for (Row row : ROWS) groups.add(row.group);
        return groups;
    }

    static DesignTable of(String wood) {
        DesignTable found = WOODS.get(wood);
        if (found != null) return found;
        if (Species.find(wood).isPresent()) return new DesignTable("", "");
        Set<String> names = new LinkedHashSet<>(Species.all().keySet());
        names.addAll(WOODS.keySet());
        List<String> near = Words.near(wood, names);
        throw new Refused("", "'{}' is not a wood of the table", near.isEmpty()
                ? "name it as the Wood Handbook does, or a group such as douglas-fir-larch" : "did you mean " + String.join(", ", near) + "?", wood);
    }

    /// Species that share the first word of their name with a word of this one.
    static List<String> kin(String wood) {
        List<String> words = List.of(wood.toLowerCase(Locale.ROOT).split("[^a-z]+"));
        return Species.all().keySet().stream().filter(name -> words.contains(name.substring(0, name.indexOf('-') < 0 ? name.length() : name.indexOf('-')))).toList();
    }

    DesignValues values(String wood, Use use, Grade grade, int named) {
        String group = use == Use.LUMBER ? lumber : timber;
        Optional<DesignValues> own = find(group, use, grade, named);
        if (own.isPresent()) return own.get();
        List<DesignValues> several = new ArrayList<>(listed(use, grade, named));
        Optional<DesignValues> ownLumber = find(lumber, Use.LUMBER, grade, named);
        ownLumber.ifPresent(several::add);
        return DesignValues.least(group, several, "the tables at hand have no " + grade.said() + " of " + Species.said(wood) + " as " + use.said() + ": the least of all wood listed"
                + (ownLumber.isEmpty() ? "" : ", and no more than its own lumber,") + " stands in");
    }

    /// The least of every group, for a use, a grade and a width by name.
    static DesignValues weakest(Use use, Grade grade, int named) { return DesignValues.least("", listed(use, grade, named), "the least of all wood listed stands in"); }

    private static List<DesignValues> listed(Use use, Grade grade, int named) {
        List<DesignValues> all = new ArrayList<>();
        for (String group : groups()) find(group, use, grade, named).filter(one -> one.grade() == grade).ifPresent(all::add);
        return all;
    }

    /// The row, or where the grade is missing that of the next lower grade; empty where the group has neither.
    private static Optional<DesignValues> find(String group, Use use, Grade grade, int named) {
        for (int g = grade.ordinal(); g < Grade.values().length; g++) {
            Row found = null;
            for (Row row : ROWS)
                if (row.group.equals(group) && row.use == use && row.grade.ordinal() == g && (found == null || found.width < named)) found = row;
            if (found == null) continue;
            if (g == grade.ordinal()) return Optional.of(found.values);
            return Optional.of(DesignValues.least(group, List.of(found.values), "the tables at hand have no " + grade.said() + " of " + group.replace('-', ' ') + " as " + use.said() + ": "
                    + found.grade.said() + " stands in"));
        }
        return Optional.empty();
    }

    private static List<Row> rows(String csv) {
        List<Row> rows = new ArrayList<>();
        for (Csv.Row row : Csv.read(csv).rows()) {
            Use use = use(row.get("use"));
            Grade grade = Grade.of(row.get("grade"));
            Known known = Known.of(row.get("known"));
            boolean uncertain = row.get("note").equals("uncertain");
            String group = row.get("group");
            Basis basis = new Basis("NDS Supplement 2018" + (known == Known.READ ? " as a public file quotes it" : ""),
                    row.get("where") + ": " + group + " " + grade.said() + ", " + use.said() + (uncertain ? "; not sure, at its lower end" : ""), known);
            List<String> cautions = uncertain ? List.of("the design values of " + group.replace('-', ' ') + " " + grade.said() + " as " + use.said() + " are not sure: have them looked up") : List.of();
            rows.add(new Row(group, use, grade, row.get("width").isEmpty() ? 0 : (int) row.number("width"), new DesignValues(group, use, grade, psi(row, "fb"), psi(row, "ft"),
                    psi(row, "fv"), psi(row, "fcp"), psi(row, "fc"), 1e6 * psi(row, "e"), 1e6 * psi(row, "emin"), List.of(basis), cautions)));
        }
        return List.copyOf(rows);
    }

    private static double psi(Csv.Row row, String column) { return Unit.PSI.toOwn(row.number(column)); }

    private static Use use(String word) {
        for (Use use : Use.values()) if (use.word().equals(word)) return use;
        throw new Refused("", "'{}' is not a use of the table", "use lumber, post or beam", word);
    }

    /// Species by name, and every group under its own.
    private static Map<String, DesignTable> woods(String csv) {
        Map<String, DesignTable> woods = new LinkedHashMap<>();
        for (String group : groups()) woods.put(group, new DesignTable(group, group));
        for (Csv.Row row : Csv.read(csv).rows()) woods.put(row.get("species"), new DesignTable(row.get("lumber"), row.get("timber")));
        return woods;
    }
}
