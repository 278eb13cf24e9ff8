package sillwright.water;

/// What may live in wet wood, each with the words it is said in.
public enum Life {
    BROWN_ROT("brown rot"),
    WHITE_ROT("white rot"),
    SOFT_ROT("soft rot"),
    STAIN_OR_MOULD("stain or mould only"),
    WATER_CARRYING_ROT("a dry-rot fungus, which carries its own water"),
    POWDERPOST_BEETLES("powderpost beetles"),
    FURNITURE_BEETLES("furniture beetles"),
    OLD_HOUSE_BORER("old-house borers"),
    CARPENTER_ANTS("carpenter ants"),
    SUBTERRANEAN_TERMITES("subterranean termites"),
    DRYWOOD_TERMITES("drywood termites"),
    CARPENTER_BEES("carpenter bees"),
    WOODPECKERS("woodpeckers after insects");

    private final String words;

    Life(String words) { this.words = words; }

    /// As it is said, without capital or full stop.
    public String words() { return words; }

    /// Whether it is a fungus, which stops when the wood is dry.
    public boolean isFungus() { return ordinal() <= WATER_CARRYING_ROT.ordinal(); }
}
