package sillwright.work.stock;

/// How the growth rings of a new piece lie in its section, and why.
public enum Rings {
    /// Rings stand square to the seen face: it shrinks least, wears evenly, and does not shell.
    QUARTER("rings upright to the face (quarter-sawn)", "it moves half as much as flat-sawn wood, and checks and shells least where water lies on it"),
    /// Flat-sawn, the heart side in: the bark side is to the weather.
    BARK_OUT("flat-sawn, bark side out, heart side in", "the heart side shells when it weathers and drops its paint first; fixed near both edges it cannot cup"),
    /// A timber sawn clear of the heart.
    FREE_OF_HEART("sawn clear of the heart", "a boxed heart opens a check to the middle as it dries"),
    /// As in the wood around it.
    AS_OLD("rings as in the old wood around it", "so that patch and wood move together");

    private final String words;
    private final String why;

    Rings(String words, String why) {
        this.words = words;
        this.why = why;
    }

    public String words() { return words; }

    public String why() { return why; }
}
