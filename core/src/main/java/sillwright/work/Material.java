package sillwright.work;

/// What is bought beside wood: a material, the measure it is counted in, and the least that is sold.
public enum Material {
    CONSOLIDANT("liquid wood consolidant, two parts", Measure.VOLUME, 946),
    FILLER("shaping filler, two parts", Measure.VOLUME, 946),
    ADHESIVE("structural gap-filling adhesive, two parts", Measure.VOLUME, 473),
    PRIMER("exterior wood primer", Measure.VOLUME, 946),
    PAINT("exterior finish paint", Measure.VOLUME, 946),
    BORATE("borate preservative", Measure.VOLUME, 946),
    SCREW("stainless screw, sized on the repair's sheet", Measure.COUNT, 25),
    BOLT("stainless bolt with washers and nut, through the piece, as the engineer sizes it", Measure.COUNT, 1),
    CAPILLARY_BREAK("sheet lead, copper or dense plastic pad for a capillary break", Measure.AREA, 92903),
    SHEETING("ground sheeting, heavy plastic", Measure.AREA, 18580608),
    ABRASIVE("abrasive sheet, 120 grit", Measure.COUNT, 5);

    /// How a material is counted.
    public enum Measure { VOLUME, AREA, COUNT }

    private final String words;
    private final Measure measure;
    private final double pack;

    Material(String words, Measure measure, double pack) {
        this.words = words;
        this.measure = measure;
        this.pack = pack;
    }

    public String words() { return words; }

    public Measure measure() { return measure; }

    /// The least that is sold, in the measure: mL, mm², or a count.
    public double pack() { return pack; }
}
