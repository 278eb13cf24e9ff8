package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Basis;
import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.work.Repair.Need;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;
import sillwright.work.joint.Scarf;
import sillwright.work.stock.Quality;

/// What one repair uses up, net: waste and whole packs come when all repairs are counted together.
final class Amounts {
    static final Basis BASIS = Basis.practice("350 ft²/gal (8.6 m²/L) of primer, 400 ft²/gal (9.8 m²/L) of paint, 5 m²/L of borate; joints 1 mm thick");

    static final double PRIMER_MM2_PER_ML = 8590;
    static final double PAINT_MM2_PER_ML = 9820;
    static final double BORATE_MM2_PER_ML = 5000;
    static final double JOINT_MM = 1;
    /// Coated past the repair on each side, so that the edge of the new paint does not lie over the joint, mm.
    static final double PAST_MM = 150;
    static final double ABRASIVE_MM2 = 250_000;
    /// One waste bag holds so much: wood cut out, mL; paint scraped off, mm²; sheeting folded inward, mm². Own choice, for a bag that one person carries.
    private static final double BAG_WOOD_ML = 20_000, BAG_SCRAPED_MM2 = 10e6;
    static final double BAG_SHEETING_MM2 = 15e6;

    private Amounts() {}

    static List<Need> of(Job job, Treatment treatment) {
        List<Need> needs = new ArrayList<>();
        if (treatment instanceof Treatment.Watch) return needs;
        if (treatment instanceof Treatment.Consolidate(var consolidant)) need(needs, Material.CONSOLIDANT, consolidant);
        if (treatment instanceof Treatment.Fill(var consolidant, var fill)) {
            need(needs, Material.CONSOLIDANT, consolidant);
            double skim = Math.min(fill, Designing.checks(job).stream().mapToDouble(check -> check.skimMl().median()).sum());
            need(needs, Material.SKIM_FILLER, skim);
            need(needs, Material.FILLER, fill - skim);
        }
        double glued = gluedMm2(job, treatment);
        need(needs, Material.ADHESIVE, glued * JOINT_MM / 1000);
        double cut = resin(treatment) ? job.damage().areaMm2() : glued;
        need(needs, Material.BORATE, 2 * cut / BORATE_MM2_PER_ML);
        double coated = coatedMm2(job, treatment);
        need(needs, Material.PRIMER, (coated + endsMm2(job, treatment)) / PRIMER_MM2_PER_ML);
        need(needs, Material.PAINT, 2 * coated / PAINT_MM2_PER_ML);
        Optional<Fixings> fixings = Joints.of(job, treatment, Strengths.none(job)).flatMap(Joinery::fixings);
        int screws = screws(job, treatment, fixings);
        if (screws > 0) needs.add(new Need(Material.SCREW, screws, Screws.words(job, treatment, fixings)));
        int hung = treatment instanceof Treatment.ButtSplice(var newMm) ? hung(job, newMm) : treatment instanceof Treatment.ScarfSplice(var newMm, _, _, _) ? hung(job, newMm) : 0;
        if (hung > 0) needs.add(new Need(Material.SCREW, hung, Screws.words(job, treatment, Optional.empty())));
        fixings.filter(one -> one.sort() != Fixings.Sort.SCREW).ifPresent(one -> needs.add(new Need(one.sort() == Fixings.Sort.BOLT ? Material.BOLT : Material.DOWEL, one.count(), one.name() + " × " + Words.length(CutLine.up(one.lengthMm(), job.units()), job.units()))));
        if (standsOnBreak(job, treatment)) need(needs, Material.CAPILLARY_BREAK, job.member().sectionMm2());
        need(needs, Material.ABRASIVE, Math.ceil(coated / ABRASIVE_MM2));
        need(needs, Material.WASTE_BAG, Treatment.woodLostMl(treatment, job.member().sectionMm2(), job.member().lengthMm()) / BAG_WOOD_ML + coated / BAG_SCRAPED_MM2);
        return needs;
    }

    /// Whether it is resin alone.
    static boolean resin(Treatment treatment) { return treatment instanceof Treatment.Consolidate || treatment instanceof Treatment.Fill; }

    /// Fasteners of one sort that the joint of a treatment has.
    private static int count(Optional<Fixings> fixings, Fixings.Sort sort) { return fixings.filter(one -> one.sort() == sort).map(Fixings::count).orElse(0); }

    static int bolts(Job job, Treatment treatment) { return count(Joints.of(job, treatment, Strengths.none(job)).flatMap(Joinery::fixings), Fixings.Sort.BOLT); }

    private static void need(List<Need> needs, Material material, double amount) {
        if (amount > 0) needs.add(new Need(material, amount));
    }

    /// Faces that are glued, mm², one side of the joint.
    static double gluedMm2(Job job, Treatment treatment) {
        double section = job.member().sectionMm2();
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Sister _, Treatment.Replace _ -> 0;
            case Treatment.Dutchman(var length, var width, var depth) -> length * width + 2 * depth * (length + width);
            case Treatment.BuildUp _, Treatment.ButtSplice _ -> section;
            case Treatment.ReplacePart _ -> 2 * section;
            case Treatment.HalfLap(_, var lap) -> Math.max(job.member().widthMm(), job.member().depthMm()) * lap + section;
            case Treatment.ScarfSplice(_, var slope, _, var nib) -> job.wideMm() * (job.thinMm() - 2 * nib) * Scarf.areaRatio(slope) + 2 * nib * job.wideMm();
        };
    }

    /// Faces that are primed and painted, mm².
    static double coatedMm2(Job job, Treatment treatment) {
        Member member = job.member();
        double round = 2 * (member.widthMm() + member.depthMm()), face = member.acrossMm(job.damage().worst()), length = member.lengthMm();
        return switch (treatment) {
            case Treatment.Watch _ -> 0;
            case Treatment.Recoat _, Treatment.Consolidate _, Treatment.Fill _ -> face * Math.min(length, job.damage().lengthMm() + 2 * PAST_MM);
            case Treatment.Reseat _ -> round * length;
            case Treatment.Sister(var from, var to, var thick) -> 2 * (to - from) * (thick + Math.max(member.widthMm(), member.depthMm()));
            case Treatment.ReplacePart(var from, var to) -> round * Math.min(length, to - from + 2 * PAST_MM);
            case Treatment.Dutchman(var patch, _, _) -> face * Math.min(length, patch + 2 * PAST_MM);
            case Treatment.BuildUp(var newMm) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.ButtSplice(var newMm) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.HalfLap(var newMm, _) -> round * Math.min(length, newMm + PAST_MM);
            case Treatment.ScarfSplice(var newMm, _, _, _) -> round * Math.min(length, newMm + PAST_MM);
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
            case Treatment.Recoat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _ -> coatedMm2(job, treatment);
            case Treatment.Sister _ -> 0;
            case Treatment.ReplacePart(var from, var to) -> round * (to - from);
            case Treatment.BuildUp(var newMm) -> round * newMm;
            case Treatment.ButtSplice(var newMm) -> round * newMm;
            case Treatment.HalfLap(var newMm, _) -> round * newMm;
            case Treatment.ScarfSplice(var newMm, _, _, _) -> round * newMm;
            case Treatment.Reseat _, Treatment.Replace _ -> round * member.lengthMm();
        };
    }

    /// End grain of new wood, two coats.
    private static double endsMm2(Job job, Treatment treatment) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _ -> 0;
            case Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _ -> 2 * job.member().sectionMm2();
            case Treatment.Reseat _, Treatment.Sister _, Treatment.ReplacePart _, Treatment.Replace _ -> 4 * job.member().sectionMm2();
        };
    }

    /// Those of the joint, or of the fixing of a whole board in pairs; no design for load, so that a whole loaded member has none.
    static int screws(Job job, Treatment treatment) { return screws(job, treatment, Joints.of(job, treatment, Strengths.none(job)).flatMap(Joinery::fixings)); }

    private static int screws(Job job, Treatment treatment, Optional<Fixings> fixings) {
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _, Treatment.Fill _ -> 0;
            case Treatment.Reseat _ -> pairs(job.member().lengthMm(), 400);
            case Treatment.Replace _ -> job.bearsLoad() ? 0 : pairs(job.member().lengthMm(), 400);
            case Treatment.ReplacePart(var from, var to) -> pairs(to - from, 400);
            case Treatment.Dutchman _, Treatment.ButtSplice _, Treatment.ScarfSplice _, Treatment.HalfLap _, Treatment.BuildUp _, Treatment.Sister _ -> count(fixings, Fixings.Sort.SCREW);
        };
    }

    /// Those that hold a new length of flat stock to what the old one hung on.
    static int hung(Job job, double newMm) { return job.board() ? pairs(newMm, 400) : 0; }

    private static int pairs(double lengthMm, double everyMm) { return 2 * Math.max(2, 1 + (int) Math.floor(lengthMm / everyMm)); }

    /// Whether a new foot is set off what it stands on.
    static boolean standsOnBreak(Job job, Treatment treatment) {
        Member member = job.member();
        boolean foot = job.upright() && member.contact() != Member.Contact.NONE;
        return switch (treatment) {
            case Treatment.BuildUp _ -> true;
            case Treatment.ButtSplice _, Treatment.HalfLap _, Treatment.ScarfSplice _ -> foot && CutLine.of(job.damage(), job.units()).fromStart();
            case Treatment.Replace _ -> foot;
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _, Treatment.ReplacePart _ -> false;
        };
    }

    /// New wood, net.
    static List<Repair.Piece> pieces(String repair, Job job, Treatment treatment) {
        Member member = job.member();
        String end = CutLine.of(job.damage(), job.units()).fromStart() ? Place.start(member) : Place.farEnd(member);
        String species = Stocking.species(job, treatment);
        double w = member.widthMm(), d = member.depthMm(), off = standsOnBreak(job, treatment) ? breakMm(job.units()) : 0;
        return switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _ -> List.of();
            case Treatment.Sister(var from, var to, var thick) -> List.of(piece(repair, job, treatment, "sister", species, Math.max(w, d), thick, to - from));
            case Treatment.ReplacePart(var from, var to) -> List.of(piece(repair, job, treatment, "new stretch", species, w, d, to - from));
            case Treatment.Dutchman(var length, var width, var depth) -> List.of(piece(repair, job, treatment, "dutchman", species, width, depth, length));
            case Treatment.BuildUp(var height) -> List.of(piece(repair, job, treatment, "base", species, w, d, Math.max(height - off, off)));
            case Treatment.ButtSplice(var newMm) -> List.of(piece(repair, job, treatment, "new " + end, species, w, d, Math.max(newMm - off, off)));
            case Treatment.HalfLap(var newMm, _) -> List.of(piece(repair, job, treatment, "new " + end, species, w, d, Math.max(newMm - off, off)));
            case Treatment.ScarfSplice(var newMm, _, _, _) -> List.of(piece(repair, job, treatment, "new " + end, species, w, d, Math.max(newMm - off, off)));
            case Treatment.Replace _ -> List.of(piece(repair, job, treatment, "new " + sillwright.walk.Choice.said(member.kind()), species, w, d, Math.max(member.lengthMm() - off, off)));
        };
    }

    /// A gap that water does not climb: 1/4 in or 6 mm.
    /// Source: water stands in a gap between wet faces to 2γ/(ρg·gap), 2.5 mm at 6 mm (computed).
    static double breakMm(Units units) { return units == Units.US ? 6.35 : 6; }

    private static Repair.Piece piece(String repair, Job job, Treatment treatment, String what, String species, double w, double d, double length) {
        return new Repair.Piece(repair + " " + what, repair, species, w, d, length, job.bearsLoad() && !(treatment instanceof Treatment.Dutchman) ? Quality.STRUCTURAL : Quality.FINISH, set(job.member()));
    }

    /// Bare or stained wood shows its grain, so what is made new of like members of a side comes from one board; paint hides it.
    private static String set(Member member) {
        boolean shows = member.coat() == Member.Coat.NONE || member.coat() == Member.Coat.STAIN;
        return shows ? member.side() + " " + sillwright.walk.Choice.said(member.kind()) : "";
    }
}
