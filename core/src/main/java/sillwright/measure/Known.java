package sillwright.measure;

/// How a fact is known, said beside it wherever it is used.
public enum Known {
    /// Seen in the named document, or in a public copy or quotation of it.
    READ("read"),
    /// The writer's recollection of the named document; not seen again.
    MEMORY("from memory"),
    /// Worked from the stated equation by an independent program.
    COMPUTED("computed"),
    /// A fact of the trade that no document was found for.
    COMMON_PRACTICE("common practice, no source"),
    /// A number this program had to choose; no published value was found.
    OWN_CHOICE("this program's own choice");

    private final String words;

    Known(String words) { this.words = words; }

    public String words() { return words; }

    /// @throws Refused when nothing is called so
    public static Known of(String words) {
        for (Known known : values()) if (known.words.equals(words)) return known;
        throw new Refused("", "'{}' is not a way to know a fact", "use one of read, from memory, computed, common practice, no source", words);
    }
}
