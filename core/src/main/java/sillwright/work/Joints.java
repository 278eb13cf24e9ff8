package sillwright.work;

import java.util.List;
import java.util.Optional;

import sillwright.measure.Refused;
import sillwright.measure.Unit;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.work.joint.ConnectionGravity;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Hold;
import sillwright.work.joint.Joinery;
import sillwright.work.joint.Scarf;
import sillwright.work.joint.Spacing;

/// The joint of a treatment, dimensioned and held against its load.
final class Joints {
    private static final double SCREWS_EVERY_MM = 150, PATCH_EVERY_MM = 200, LONGEST_SCREW_MM = 101.6, SHORTEST_SCREW_MM = 25.4;
    /// A wood that no table knows is taken as light as the lightest group of the table of connections.
    private static final double LIGHT = 0.31;
    /// Wood over a screw's head in a dutchman: a plug's depth, 3/8 in.
    static final double COVER_MM = 9.525;

    /// A lap as wide as this takes its bolts in two rows, mm: 8 in.
    private static final double WIDE_LAP_MM = 203.2;

    private Joints() {}

    static Optional<Joinery> of(Job job, Treatment treatment, Strengths strengths) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Replace _ -> Optional.empty();
            case Treatment.Dutchman patch -> Optional.of(inlay(job, patch));
            case Treatment.BuildUp(var height) -> Optional.of(butt(job, strengths.at(height)));
            case Treatment.ButtSplice(var newMm) -> Optional.of(butt(job, strengths.at(newMm)));
            case Treatment.ReplacePart(var from, _) -> Optional.of(butt(job, strengths.at(from)));
            case Treatment.HalfLap(var newMm, var lap) -> Optional.of(halfLap(job, lap, strengths.at(newMm)));
            case Treatment.ScarfSplice(var newMm, var slope, _, var nib) -> Optional.of(scarf(job, slope, nib, strengths.at(newMm)));
            case Treatment.Sister sister -> Optional.of(sister(job, sister));
        };
    }

    /// Bent by its load or by nothing that only presses it.
    private static boolean pressed(Job job) { return job.bearsLoad() && !job.bends(); }

    static Joinery scarf(Job job, double slope, double nibMm, Optional<Joinery.Load> load) {
        double through = job.thinMm(), wide = job.wideMm(), length = Joinery.scarfMm(through, slope, nibMm);
        Fixings.Screw screw = Fixings.Screw.forWood(through);
        Spacing least = Spacing.thin(screw.diameterMm(), true, !pressed(job));
        double end = Math.min(length / 3, Math.max(least.endMm(), slope * Math.max(0, 6.35 - nibMm)));
        return Joinery.scarf(through, wide, slope, nibMm, pressed(job), Optional.of(screws(job, screw, sold(0.8 * through, job.units()), through / 2, Fixings.spread(end, length - end, SCREWS_EVERY_MM, wide, least), least)), load);
    }

    private static Fixings screws(Job job, Fixings.Screw screw, double lengthMm, double sideMm, List<Fixings.Place> places, Spacing least) {
        double g = gravity(job.member().species());
        return new Fixings(Fixings.Sort.SCREW, screw.name(), screw.diameterMm(), lengthMm, places, least, Hold.screw(new Hold.Driven(screw.diameterMm(), lengthMm, Math.min(sideMm, 0.5 * lengthMm), g, g), screw.rootMm()));
    }

    /// Bolts of 3/8 in to 4 in of wood and 1/2 in through more, at the quarters of the lap or closer where the lap is long.
    static Joinery halfLap(Job job, double lapMm, Optional<Joinery.Load> load) {
        double through = job.thinMm(), wide = job.wideMm(), d = Unit.INCH.toOwn(through <= 101.6 ? 0.375 : 0.5), g = gravity(job.member().species());
        Spacing least = Spacing.thick(d, false, true);
        double end = Math.max(least.endMm(), lapMm / 4);
        Hold hold = Hold.bolt(new Hold.Driven(d, through, through / 2, g, g), through / 2, 90);
        double first = Math.min(end, lapMm / 2), last = Math.max(lapMm - end, lapMm / 2);
        List<Fixings.Place> places = wide >= WIDE_LAP_MM ? Fixings.spread(first, last, lapMm, wide, least) : List.of(new Fixings.Place(first, wide / 2), new Fixings.Place(last, wide / 2));
        Fixings bolts = new Fixings(Fixings.Sort.BOLT, bolt(through <= 101.6 ? 0.375 : 0.5, job.units()), d, through + 38.1, places, least, hold);
        return Joinery.halfLap(through, wide, lapMm, bolts, load);
    }

    /// Dowels across a square joint in stock that has room for them, else screws through a strip behind it.
    static Joinery butt(Job job, Optional<Joinery.Load> load) {
        double through = job.thinMm(), wide = job.wideMm(), g = gravity(job.member().species());
        if (through >= 38.1) {
            double d = Unit.INCH.toOwn(through >= 88.9 ? 0.75 : 0.5), deep = Math.max(50.8, 4 * d);
            Spacing least = Spacing.thick(d, false, false);
            List<Fixings.Place> places = wide - 2 * Math.max(least.edgeMm(), wide / 4) >= 3 * d ? List.of(new Fixings.Place(0, wide / 4), new Fixings.Place(0, 3 * wide / 4)) : List.of(new Fixings.Place(0, wide / 2));
            Hold hold = Hold.dowel(new Hold.Driven(d, deep, deep, g, g), deep, 90);
            return Joinery.butt(through, wide, pressed(job), Optional.of(new Fixings(Fixings.Sort.DOWEL, job.units() == Units.US ? through >= 88.9 ? "3/4 in" : "1/2 in" : through >= 88.9 ? "20 mm" : "12 mm", d, 2 * deep, places, least, hold)), load);
        }
        Fixings.Screw screw = Fixings.Screw.forWood(through);
        Spacing least = Spacing.thin(screw.diameterMm(), true, true);
        double back = Math.max(least.endMm(), 25.4);
        List<Fixings.Place> rows = Fixings.spread(0, 0, 1, wide, least), both = new java.util.ArrayList<>();
        for (double at : new double[] {-back, back}) for (Fixings.Place place : rows) both.add(new Fixings.Place(at, place.acrossMm()));
        return Joinery.butt(through, wide, pressed(job), Optional.of(screws(job, screw, sold(through + 12.7, job.units()), through, both, least)), load);
    }

    /// Let in, edges undercut; screwed only where a plug's depth stays over the heads.
    static Joinery inlay(Job job, Treatment.Dutchman patch) {
        Fixings.Screw screw = Fixings.Screw.forWood(patch.depthMm());
        Spacing least = Spacing.thin(screw.diameterMm(), true, false);
        boolean covered = patch.depthMm() >= 2 * COVER_MM && job.throughMm() - patch.depthMm() >= Hold.LEAST_THIN * screw.diameterMm();
        double end = Math.min(patch.lengthMm() / 3, Math.max(least.endMm(), 25.4)), longest = job.throughMm() - COVER_MM - 6.35;
        Optional<Fixings> fixings = covered ? Optional.of(screws(job, screw, Math.min(sold(2 * patch.depthMm() - COVER_MM, job.units()), sold(longest, job.units())), patch.depthMm() - COVER_MM,
                Fixings.spread(end, patch.lengthMm() - end, PATCH_EVERY_MM, patch.widthMm(), least), least)) : Optional.empty();
        double glue = patch.lengthMm() * patch.widthMm() + 2 * patch.depthMm() * (patch.lengthMm() + patch.widthMm());
        return new Joinery(Joinery.Sort.INLAY, patch.lengthMm(), 0, 0, patch.depthMm(), patch.widthMm(), glue, patch.depthMm() * patch.widthMm(), Scarf.efficiency(0), fixings,
                (int) Math.max(2, Math.ceil(patch.lengthMm() / 150)), Optional.empty(), Patch.BASIS);
    }

    /// Bolted in pairs; the pairs nearest the ends carry most.
    static Joinery sister(Job job, Treatment.Sister sister) {
        double length = sister.toMm() - sister.fromMm(), d = Unit.INCH.toOwn(0.5), g = gravity(job.member().species());
        Spacing least = Spacing.thick(d, false, true);
        double end = Math.max(least.endMm(), 50.8);
        Hold hold = Hold.bolt(new Hold.Driven(d, sister.thickMm() + job.thinMm(), sister.thickMm(), g, g), job.thinMm(), 90);
        Fixings bolts = new Fixings(Fixings.Sort.BOLT, bolt(0.5, job.units()), d, sister.thickMm() + job.thinMm() + 38.1, Fixings.spread(end, length - end, Limits.SISTER_BOLT_MM, job.wideMm(), least), least, hold);
        return new Joinery(Joinery.Sort.SISTER, length, 0, 0, sister.thickMm(), job.wideMm(), 0, 0, 1, Optional.of(bolts), 2, Optional.empty(), Spacing.BASIS);
    }

    private static String bolt(double inches, Units units) { return units == Units.SI ? inches > 0.4 ? "M12" : "M10" : inches > 0.4 ? "1/2 in" : "3/8 in"; }

    static double gravity(String species) {
        try {
            return ConnectionGravity.of(species).gravity();
        } catch (Refused _) {
            return LIGHT;
        }
    }

    /// In the lengths that are sold: quarters of an inch, or 5 mm.
    private static double sold(double mm, Units units) { return CutLine.down(Math.clamp(mm, SHORTEST_SCREW_MM, LONGEST_SCREW_MM), units); }
}
