package sillwright.walk;

import sillwright.measure.Units;

/// Something in a book that could not be used: it is kept, set aside, and named.
///
/// @param file  the file it came from; empty for a book in a store
/// @param entry the entry's id, or its place in the file
/// @param field the field that is wrong; empty where the whole entry is
/// @param what  what is wrong
/// @param mend  how to mend it
/// @param grave true where the entry was set aside; false where it was used in spite of the fault
public record Fault(String file, String entry, String field, String what, String mend, boolean grave) {
    /// One line: file, entry, field, what, mend.
    public String line() {
        StringBuilder line = new StringBuilder();
        for (String part : new String[] {file, entry, field}) if (!part.isEmpty()) line.append(line.isEmpty() ? "" : ", ").append(part);
        return line.append(line.isEmpty() ? "" : ": ").append(what).append(mend.isEmpty() ? "" : "; " + mend).toString();
    }

    public static Fault of(String file, String entry, sillwright.measure.Refused refused) {
        return new Fault(file, entry, refused.where(), refused.what(Units.US), refused.mend(), true);
    }
}
