package sillwright.work;

/// What is bought beside wood: a material, the measure it is counted in, and the least that is sold.
public enum Material {
    CONSOLIDANT("liquid wood consolidant, two parts", Measure.VOLUME, 946, "kit"),
    SKIM_FILLER("skim filler for checks, two parts", Measure.VOLUME, 473, "kit"),
    FILLER("shaping filler, two parts", Measure.VOLUME, 946, "kit"),
    ADHESIVE("structural gap-filling adhesive, two parts", Measure.VOLUME, 473, "kit"),
    PRIMER("exterior wood primer", Measure.VOLUME, 946, "can"),
    PAINT("exterior finish paint", Measure.VOLUME, 946, "can"),
    BORATE("borate preservative", Measure.VOLUME, 946, "can"),
    SCREW("stainless screw", Measure.COUNT, 25, "box"),
    BOLT("stainless bolt with washers and nut, as the engineer sizes it,", Measure.COUNT, 1, "piece"),
    DOWEL("hardwood dowel, fluted,", Measure.COUNT, 10, "bag"),
    CAPILLARY_BREAK("sheet lead, copper or dense plastic pad for a capillary break", Measure.AREA, 92903, "sheet"),
    SHEETING("ground sheeting, heavy plastic", Measure.AREA, 18580608, "roll"),
    ABRASIVE("abrasive sheet, 120 grit", Measure.COUNT, 5, "pack"),
    WASTE_BAG("heavy plastic waste bag, to be tied", Measure.COUNT, 10, "box");

    /// How a material is counted.
    public enum Measure { VOLUME, AREA, COUNT }

    private final String words;
    private final Measure measure;
    private final double pack;
    private final String packed;

    Material(String words, Measure measure, double pack, String packed) {
        this.words = words;
        this.measure = measure;
        this.pack = pack;
        this.packed = packed;
    }

    public String words() { return words; }

    public Measure measure() { return measure; }

    /// The least that is sold, in the measure: mL, mm², or a count.
    public double pack() { return pack; }

    /// What it is sold in: kit, can, box, roll.
    public String packed() { return packed; }
}
