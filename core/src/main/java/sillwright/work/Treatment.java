package sillwright.work;

/// What is done about one damage, from the least original wood lost to the most.
public sealed interface Treatment {
    /// Nothing is cut: the water is stopped, the wood watched.
    record Watch(String until) implements Treatment {}

    /// Clean, let dry, prime and coat again.
    record Recoat(double areaMm2) implements Treatment {}

    /// Consolidate what is soft; fill what is lost.
    record Consolidate(double consolidantMl, double fillMl) implements Treatment {}

    /// Inlay a patch of like wood.
    record Dutchman(double lengthMm, double widthMm, double depthMm) implements Treatment {}

    /// Cut off a decayed foot of an upright decorative end and build it up off the ground on a capillary break.
    record BuildUp(double heightMm) implements Treatment {}

    /// New end, square joint.
    record ButtSplice(double newMm) implements Treatment {}

    /// New end, each cut half through and laid over the other for `lapMm`, bolted: for a member that bears load along its length.
    record HalfLap(double newMm, double lapMm) implements Treatment {}

    /// New end, sloped joint: `slope` along for one across.
    record ScarfSplice(double newMm, int slope, double scarfMm) implements Treatment {}

    /// The whole member again, in kind.
    record Replace(String because) implements Treatment {}

    /// As it is said: `butt splice`.
    default String words() {
        return switch (this) {
            case Watch _ -> "leave and watch";
            case Recoat _ -> "clean, dry and recoat";
            case Consolidate(_, var fillMl) -> fillMl > 0 ? "consolidate and fill" : "consolidate";
            case Dutchman _ -> "dutchman";
            case BuildUp _ -> "built-up base";
            case ButtSplice _ -> "butt splice";
            case HalfLap _ -> "half-lap splice";
            case ScarfSplice(_, var slope, _) -> "scarf splice 1:" + slope;
            case Replace _ -> "replace in kind";
        };
    }

    /// Original wood that leaves the building, mL.
    static double woodLostMl(Treatment treatment, double sectionMm2, double memberMm) {
        return switch (treatment) {
            case Watch _, Recoat _, Consolidate _ -> 0;
            case Dutchman(var length, var width, var depth) -> length * width * depth / 1000;
            case BuildUp(var heightMm) -> heightMm * sectionMm2 / 1000;
            case ButtSplice(var newMm) -> newMm * sectionMm2 / 1000;
            case HalfLap(var newMm, var lapMm) -> (newMm - lapMm / 2) * sectionMm2 / 1000;
            case ScarfSplice(var newMm, _, var scarfMm) -> (newMm - scarfMm / 2) * sectionMm2 / 1000;
            case Replace _ -> memberMm * sectionMm2 / 1000;
        };
    }
}
