package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.work.Repair.Need;

/// What one repair uses up, net: waste and whole packs come when all repairs are counted together.
final class Amounts {
    static final Basis BASIS = Basis.practice("350 ft²/gal (8.6 m²/L) of primer, 400 ft²/gal (9.8 m²/L) of paint, 5 m²/L of borate; joints 1 mm thick");

    static final double PRIMER_MM2_PER_ML = 8590;
    static final double PAINT_MM2_PER_ML = 9820;
    static final double BORATE_MM2_PER_ML = 5000;
    static final double JOINT_MM = 1;
    /// Coated past the repair on each side, so that the edge of the new paint does not lie over the joint, mm.
    static final double PAST_MM = 150;
    private static final double ABRASIVE_MM2 = 250_000;

    private Amounts() {}

    static List<Need> of(Job job, Treatment treatment) {
        List<Need> needs = new ArrayList<>();
        if (treatment instanceof Treatment.Watch) return needs;
        if (treatment instanceof Treatment.Consolidate(var consolidant, var fill)) {
            need(needs, Material.CONSOLIDANT, consolidant);
            need(needs, Material.FILLER, fill);
        }
        double glued = gluedMm2(job, treatment);
        need(needs, Material.ADHESIVE, glued * JOINT_MM / 1000);
        double cut = treatment instanceof Treatment.Consolidate ? job.damage().areaMm2() : glued;
        need(needs, Material.BORATE, 2 * cut / BORATE_MM2_PER_ML);
        double coated = coatedMm2(job, treatment);
        need(needs, Material.PRIMER, (coated + endsMm2(job, treatment)) / PRIMER_MM2_PER_ML);
        need(needs, Material.PAINT, 2 * coated / PAINT_MM2_PER_ML);
        need(needs, Material.SCREW, screws(job, treatment));
        need(needs, Material.BOLT, treatment instanceof Treatment.HalfLap ? HalfLapping.BOLTS : 0);
        if (standsOnBreak(job, treatment)) need(needs, Material.CAPILLARY_BREAK, job.member().sectionMm2());
        need(needs, Material.ABRASIVE, Math.ceil(coated / ABRASIVE_MM2));
        return needs;
    }

    private static void need(List<Need> needs, Material material, double amount) {
        if (amount > 0) needs.add(new Need(material, amount));
    }

    /// Faces that are glued, mm², one side of the joint.
    static double gluedMm2(Job job, Treatment treatment) {
        double section = job.member().sectionMm2();
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.Replace _ -> 0;
            case Treatment.Dutchman(var length, var width, var depth) -> length * width + 2 * depth * (length + width);
            case Treatment.BuildUp _, Treatment.ButtSplice _ -> section;
            case Treatment.HalfLap(_, var lap) -> Math.max(job.member().widthMm(), job.member().depthMm()) * lap + section;
            case Treatment.ScarfSplice(_, var slope, _) -> Scarf.glueAreaMm2(job.member().widthMm(), job.member().depthMm(), slope);
        };
    }

    /// Faces that are primed and painted, mm².
    static double coatedMm2(Job job, Treatment treatment) {
        Member member = job.member();
        double round = 2 * (member.widthMm() + member.depthMm()), face = member.acrossMm(job.damage().worst()), length = member.lengthMm();
        return switch (treatment) {
            case Treatment.Watch _ -> 0;
            case Treatment.Recoat _, Treatment.Consolidate _ -> face * Math.min(length, job.damage().lengthMm() + 2 * PAST_MM);
            case Treatment.Dutchman(var patch, _, _) -> face * Math.min(length, patch + 2 * PAST_MM);
            case Treatment.BuildUp(var newMm) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.ButtSplice(var newMm) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.HalfLap(var newMm, _) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.ScarfSplice(var newMm, _, _) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.Replace _ -> round * length;
        };
    }

    /// Paint that the work breaks into, mm²: a part taken off counts whole, else what is scraped or cut.
    /// Source: 40 CFR 745.83 and EPA's answer on counting it (read).
    static double paintBrokenMm2(Job job, Treatment treatment) {
        Member member = job.member();
        if (member.coat() == Member.Coat.NONE || member.coat() == Member.Coat.STAIN) return 0;
        double round = 2 * (member.widthMm() + member.depthMm());
        return switch (treatment) {
            case Treatment.Watch _ -> 0;
            case Treatment.Recoat _, Treatment.Consolidate _, Treatment.Dutchman _ -> coatedMm2(job, treatment);
            case Treatment.BuildUp(var newMm) -> round * newMm;
            case Treatment.ButtSplice(var newMm) -> round * newMm;
            case Treatment.HalfLap(var newMm, _) -> round * newMm;
            case Treatment.ScarfSplice(var newMm, _, _) -> round * newMm;
            case Treatment.Replace _ -> round * member.lengthMm();
        };
    }

    /// End grain of new wood, two coats.
    private static double endsMm2(Job job, Treatment treatment) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.Dutchman _ -> 0;
            case Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _ -> 2 * job.member().sectionMm2();
            case Treatment.Replace _ -> 4 * job.member().sectionMm2();
        };
    }

    /// Screws, in pairs: own choice of spacing, and no design for load, so that a whole loaded member has none.
    static int screws(Job job, Treatment treatment) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.HalfLap _ -> 0;
            case Treatment.Dutchman(var length, _, _) -> pairs(length, 200);
            case Treatment.BuildUp _, Treatment.ButtSplice _ -> 4;
            case Treatment.ScarfSplice(_, _, var scarfMm) -> pairs(scarfMm, 150);
            case Treatment.Replace _ -> job.bearsLoad() ? 0 : pairs(job.member().lengthMm(), 400);
        };
    }

    private static int pairs(double lengthMm, double everyMm) { return 2 * Math.max(2, 1 + (int) Math.floor(lengthMm / everyMm)); }

    /// Whether a new foot is set off what it stands on.
    static boolean standsOnBreak(Job job, Treatment treatment) {
        Member member = job.member();
        boolean foot = job.upright() && member.contact() != Member.Contact.NONE;
        return switch (treatment) {
            case Treatment.BuildUp _ -> true;
            case Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _ -> foot && CutLine.of(job.damage(), job.units()).fromStart();
            case Treatment.Replace _ -> foot;
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.Dutchman _ -> false;
        };
    }

    /// New wood, net.
    static List<Repair.Piece> pieces(String repair, Job job, Treatment treatment) {
        Member member = job.member();
        String end = CutLine.of(job.damage(), job.units()).fromStart() ? Place.start(member) : Place.farEnd(member);
        double w = member.widthMm(), d = member.depthMm(), off = standsOnBreak(job, treatment) ? breakMm(job.units()) : 0;
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _ -> List.of();
            case Treatment.Dutchman(var length, var width, var depth) -> List.of(piece(repair, "dutchman", job, width, depth, length));
            case Treatment.BuildUp(var height) -> List.of(piece(repair, "base", job, w, d, Math.max(height - off, off)));
            case Treatment.ButtSplice(var newMm) -> List.of(piece(repair, "new " + end, job, w, d, Math.max(newMm - off, off)));
            case Treatment.HalfLap(var newMm, _) -> List.of(piece(repair, "new " + end, job, w, d, Math.max(newMm - off, off)));
            case Treatment.ScarfSplice(var newMm, _, _) -> List.of(piece(repair, "new " + end, job, w, d, Math.max(newMm - off, off)));
            case Treatment.Replace _ -> List.of(piece(repair, "new " + sillwright.walk.Choice.said(member.kind()), job, w, d, Math.max(member.lengthMm() - off, off)));
        };
    }

    /// A gap that water does not climb: 1/4 in or 6 mm.
    /// Source: water stands in a gap between wet faces to 2γ/(ρg·gap), 2.5 mm at 6 mm (computed).
    static double breakMm(Units units) { return units == Units.US ? 6.35 : 6; }

    private static Repair.Piece piece(String repair, String what, Job job, double w, double d, double length) {
        return new Repair.Piece(repair + " " + what, repair, job.member().species(), w, d, length);
    }
}
