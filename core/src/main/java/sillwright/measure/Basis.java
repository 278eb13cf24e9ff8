package sillwright.measure;

/// What a number rests on: a document, the place in it, and whether it was read there.
///
/// @param source the document, or "common practice"
/// @param where  equation, table, section or page
/// @param known  how it is known
public record Basis(String source, String where, Known known) {
    public static Basis read(String source, String where) { return new Basis(source, where, Known.READ); }

    public static Basis memory(String source, String where) { return new Basis(source, where, Known.MEMORY); }

    public static Basis practice(String what) { return new Basis("Common practice", what, Known.COMMON_PRACTICE); }

    public static Basis own(String what) { return new Basis("Sillwright", what, Known.OWN_CHOICE); }

    /// One line: source, place and status.
    public String words() {
        return source + (where.isEmpty() ? "" : ", " + where) + (known == Known.READ ? "" : " (" + known.words() + ")");
    }
}
