package sillwright.measure;

import java.util.ArrayList;
import java.util.List;

/// The one exception for the world's mistakes: where it is, what is wrong with it, how to mend it.
///
/// `what` holds `{}` for each of `values` in turn; a [Quantity] or [Answer.Measured] among them is said in the reader's
/// own units. Any other exception that escapes is a fault of the program.
public final class Refused extends RuntimeException {
    private final String where;
    private final String what;
    private final String mend;
    private final transient List<Object> values;

    public Refused(String where, String what, String mend, Object... values) {
        this.where = where;
        this.what = what;
        this.mend = mend;
        this.values = List.of(values);
    }

    /// The place as the reader knows it: a file, an entry, a field; empty where the reader is looking at it.
    public String where() { return where; }

    /// What is wrong there, with the offending value, in the reader's units.
    public String what(Units units) {
        StringBuilder said = new StringBuilder();
        List<Object> left = new ArrayList<>(values);
        int from = 0;
        for (int at = what.indexOf("{}"); at >= 0 && !left.isEmpty(); at = what.indexOf("{}", from)) {
            said.append(what, from, at).append(inUnits(left.removeFirst(), units));
            from = at + 2;
        }
        return said.append(what.substring(from)).toString();
    }

    /// How to mend it, with an example that works.
    public String mend() { return mend; }

    /// The same refusal, seen from further out: `north.survey.json, entry 12` before `depth`.
    public Refused at(String outer) {
        return new Refused(where.isEmpty() ? outer : outer + ", " + where, what, mend, values.toArray());
    }

    /// One line: place, fault, mend.
    public String line(Units units) {
        return (where.isEmpty() ? "" : where + ": ") + what(units) + (mend.isEmpty() ? "" : "; " + mend);
    }

    @Override
    public String getMessage() { return line(Units.US); }

    private static String inUnits(Object value, Units units) {
        return switch (value) {
            case Quantity written -> written.text();
            case Answer.Measured measured -> measured.words(units);
            default -> String.valueOf(value);
        };
    }
}
