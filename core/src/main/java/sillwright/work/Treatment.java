package sillwright.work;

import java.util.List;

/// What is done about one damage, in the order the trade prefers: from what asks the building for least to what asks for most.
public sealed interface Treatment {
    /// Nothing is cut: the water is stopped, the wood watched.
    record Watch(String until) implements Treatment {}

    /// Clean, let dry, prime and coat again.
    record Recoat(double areaMm2) implements Treatment {}

    /// A board that is only weathered is taken off whole, primed on its back and its ends, and fixed again where it was.
    record Reseat(double backMm2) implements Treatment {}

    /// Harden what is soft; nothing is lost that must be built up.
    record Consolidate(double consolidantMl) implements Treatment {}

    /// Harden what is soft; fill what is lost.
    record Fill(double consolidantMl, double fillMl) implements Treatment {}

    /// Inlay a patch of like wood.
    record Dutchman(double lengthMm, double widthMm, double depthMm) implements Treatment {}

    /// New end, square joint.
    record ButtSplice(double newMm) implements Treatment {}

    /// New end, sloped joint: `slope` along for one across, over `scarfMm`; each tip cut square at `nibMm`, or to nothing where that is 0.
    record ScarfSplice(double newMm, int slope, double scarfMm, double nibMm) implements Treatment {}

    /// New end, each cut half through and laid over the other for `lapMm`, bolted: for a member that bears load along its length.
    record HalfLap(double newMm, double lapMm) implements Treatment {}

    /// Cut off a decayed foot of an upright decorative end and build it up off the ground on a capillary break.
    record BuildUp(double heightMm) implements Treatment {}

    /// A new piece of the same depth is bolted beside the old one and carries its load; the old one stays.
    ///
    /// @param fromMm  where the new piece starts, from the member's start
    /// @param toMm    where it ends
    /// @param thickMm of the new piece
    record Sister(double fromMm, double toMm, double thickMm) implements Treatment {}

    /// A stretch is cut out between two joints and made new.
    record ReplacePart(double fromMm, double toMm) implements Treatment {}

    /// The whole member again, in kind.
    record Replace(String because) implements Treatment {}

    /// The words of all treatments, in the order the trade prefers them; a scarf's may have its slope behind it: `scarf-splice-8`.
    List<String> WORDS = List.of("watch", "recoat", "reseat", "consolidate", "consolidate-and-fill", "dutchman", "butt-splice", "scarf-splice", "nibbed-scarf-splice", "half-lap-splice", "build-up", "sister",
            "replace-part", "replace");

    /// As it is said: `butt splice`.
    default String words() {
        return switch (this) {
            case Watch _ -> "leave and watch";
            case Recoat _ -> "clean, dry and recoat";
            case Reseat _ -> "back-prime and reseat";
            case Consolidate _ -> "consolidate";
            case Fill _ -> "consolidate and fill";
            case Dutchman _ -> "dutchman";
            case ButtSplice _ -> "butt splice";
            case ScarfSplice(_, var slope, _, var nibMm) -> (nibMm > 0 ? "nibbed scarf splice 1:" : "scarf splice 1:") + slope;
            case HalfLap _ -> "half-lap splice";
            case BuildUp _ -> "built-up base";
            case Sister _ -> "sister beside it";
            case ReplacePart _ -> "replace a part in kind";
            case Replace _ -> "replace in kind";
        };
    }

    /// Its word in the findings: `butt-splice`.
    default String word() {
        return switch (this) {
            case Watch _ -> "watch";
            case Recoat _ -> "recoat";
            case Reseat _ -> "reseat";
            case Consolidate _ -> "consolidate";
            case Fill _ -> "consolidate-and-fill";
            case Sister _ -> "sister";
            case ReplacePart _ -> "replace-part";
            case Dutchman _ -> "dutchman";
            case BuildUp _ -> "build-up";
            case ButtSplice _ -> "butt-splice";
            case HalfLap _ -> "half-lap-splice";
            case ScarfSplice _ -> "scarf-splice";
            case Replace _ -> "replace";
        };
    }

    /// The same, with what tells it from others of its sort: `scarf-splice-8`, `nibbed-scarf-splice-8`.
    default String ownWord() { return this instanceof ScarfSplice(_, var slope, _, var nibMm) ? (nibMm > 0 ? "nibbed-" : "") + word() + "-" + slope : word(); }

    /// How much is asked of the building: 0 for nothing, more for more. Those that let new wood in at a cut are alike, and lie apart by the wood they take.
    default int degree() {
        return switch (this) {
            case Watch _ -> 0;
            case Recoat _ -> 1;
            case Reseat _ -> 2;
            case Consolidate _ -> 3;
            case Fill _ -> 4;
            case Dutchman _ -> 5;
            case ButtSplice _, ScarfSplice _, HalfLap _, BuildUp _, ReplacePart _ -> 6;
            case Sister _ -> 7;
            case Replace _ -> 8;
        };
    }

    /// Whether wood is sawn or chiselled away.
    default boolean cuts() { return degree() >= 5 && !(this instanceof Sister); }

    /// Original wood that leaves the building, mL.
    static double woodLostMl(Treatment treatment, double sectionMm2, double memberMm) {
        return switch (treatment) {
            case Watch _, Recoat _, Reseat _, Consolidate _, Fill _, Sister _ -> 0;
            case Dutchman(var length, var width, var depth) -> length * width * depth / 1000;
            case BuildUp(var heightMm) -> heightMm * sectionMm2 / 1000;
            case ButtSplice(var newMm) -> newMm * sectionMm2 / 1000;
            case HalfLap(var newMm, var lapMm) -> (newMm - lapMm / 2) * sectionMm2 / 1000;
            case ScarfSplice(var newMm, _, var scarfMm, _) -> (newMm - scarfMm / 2) * sectionMm2 / 1000;
            case ReplacePart(var fromMm, var toMm) -> (toMm - fromMm) * sectionMm2 / 1000;
            case Replace _ -> memberMm * sectionMm2 / 1000;
        };
    }
}
