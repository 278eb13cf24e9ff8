package sillwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import sillwright.measure.Units;
import sillwright.measure.Words;
import sillwright.walk.Member;
import sillwright.work.joint.Fixings;
import sillwright.work.joint.Joinery;
import sillwright.work.resin.Mixing;
import sillwright.work.stock.Outline;

/// The tools that what is designed asks for, in the order they come to hand, each in the sizes of the design.
///
/// Which tool does which job, pilot and clearance holes: common practice, no source.
final class Tools {
    private static final int[] CLAMP_INCHES = {4, 6, 12, 18, 24, 36, 50}, CLAMP_MM = {100, 150, 300, 450, 600, 900, 1250};
    private static final double[] CHISEL_INCHES = {1.5, 1, 0.75, 0.5, 0.25}, CHISEL_MM = {38, 25, 18, 12, 6};
    /// Blocks under both jaws of a clamp, mm.
    private static final double BLOCKS_MM = 38;
    /// A scarf as long as this is trued by a long plane, mm.
    private static final double LONG_SCARF_MM = 300;
    /// Repairs that are glued on one day: the clamps of the one with most are what is needed.
    private final Map<String, Held> held = new LinkedHashMap<>();
    private final Units units;

    private static final class Held {
        private final String name, size;
        private final Set<String> repairs = new LinkedHashSet<>(), jobs = new LinkedHashSet<>();
        private int count;
        private double reachMm;

        private Held(String name, String size) {
            this.name = name;
            this.size = size;
        }
    }

    private Tools(Units units) { this.units = units; }

    /// @param jobs by the id of the damage
    static List<Tool> of(List<Repair> repairs, Map<String, Job> jobs, int yearBuilt) {
        if (repairs.isEmpty()) return List.of();
        Tools tools = new Tools(jobs.get(repairs.getFirst().damage().id()).units());
        for (Repair repair : repairs) tools.look(repair);
        for (Repair repair : repairs) tools.shore(repair, jobs.get(repair.damage().id()), yearBuilt);
        for (Repair repair : repairs) if (!(repair.treatment() instanceof Treatment.Watch)) tools.clean(repair);
        for (Repair repair : repairs) tools.cut(repair, jobs.get(repair.damage().id()));
        for (Repair repair : repairs) tools.join(repair);
        for (Repair repair : repairs) tools.mix(repair);
        return tools.all();
    }

    private List<Tool> all() {
        List<Tool> all = new ArrayList<>();
        for (Held one : held.values()) {
            String size = one.reachMm > 0 ? one.size.replace("{}", length(one.reachMm)) : one.size;
            all.add(new Tool(one.name, size, String.join("; ", one.jobs), one.count, List.copyOf(one.repairs)));
        }
        return all;
    }

    private String length(double mm) { return Words.length(CutLine.up(mm, units), units); }

    private String about(double inches, double mm) { return Words.length(units == Units.US ? inches * 25.4 : mm, units); }

    private void need(Repair repair, String name, String size, String job) { need(repair, name, size, job, 1, 0); }

    /// @param count   at once for this repair
    /// @param reachMm the greatest of all repairs stands for `{}` in the size
    private void need(Repair repair, String name, String size, String job, int count, double reachMm) {
        Held one = held.computeIfAbsent(name + size, _ -> new Held(name, size));
        one.jobs.add(job);
        one.repairs.add(repair.id());
        one.count = Math.max(one.count, count);
        one.reachMm = Math.max(one.reachMm, reachMm);
    }

    private void look(Repair repair) {
        need(repair, "awl or probe", "marked every " + about(0.125, 5), "feel how deep it is soft, and prise a splinter at every cut");
        if (!(repair.treatment() instanceof Treatment.Watch)) need(repair, "moisture meter", "pins, corrected for species and temperature", "read " + Words.percent(Limits.DRY_ENOUGH) + " or less before anything is glued, filled or painted");
    }

    private void shore(Repair repair, Job job, int yearBuilt) {
        Member member = job.member();
        if (Steps.opened(job, repair.treatment()) && Job.carries(member)) need(repair, "props with screw heads and spread footings", "", "carry the load on both sides of the work; the engineer places them", 2, 0);
        double top = member.above().own() + (job.upright() ? repair.damage().toMm() : 0);
        if (top > Limits.OVERHEAD_MM && !(repair.treatment() instanceof Treatment.Watch)) need(repair, "ladder with stand-off, or scaffold for more than a short job", "work up to {}", "reach it: one out for four up, tied", 1, top);
        if (Lead.mayBe(yearBuilt, member) && repair.treatment().degree() > 0) need(repair, "HEPA vacuum, P100 respirator, mist bottle, disposable suit", "", "old paint is taken for leaded: work damp, clean up the same day");
        if (repair.treatment().cuts()) need(repair, "eye and hearing protection", "", "saw and chisel");
    }

    private void clean(Repair repair) {
        need(repair, "pull scraper", about(2, 50) + " blade", "take loose paint back to a firm edge, damp");
        repair.design().outline().ifPresent(outline -> outline(repair, outline));
        need(repair, "sanding block and brushes for borate, primer and paint", "", "fair the edge of the old paint; coat");
    }

    private void outline(Repair repair, Outline outline) {
        need(repair, "profile gauge", "", "prove the template of the moulding against the old one");
        outline.strokes().stream().filter(Outline.Stroke::arc).map(arc -> (arc.cove() ? "round, radius " : "hollow, radius ") + Words.length(arc.radiusMm(), units)).distinct()
                .forEach(shape -> need(repair, "profile scraper or moulding plane", shape, "work the moulding to its outline"));
        if (outline.strokes().stream().anyMatch(stroke -> !stroke.arc())) need(repair, "cabinet scraper", "flat", "the fillets of the moulding");
    }

    private void cut(Repair repair, Job job) {
        switch (repair.treatment()) {
            case Treatment.Watch _, Treatment.Recoat _, Treatment.Consolidate _ -> { }
            case Treatment.Reseat _, Treatment.Replace _ -> {
                need(repair, "flat bar, nail puller and hacksaw blade", "", "take a board off whole, its fasteners drawn or cut");
                if (repair.treatment() instanceof Treatment.Replace) saw(repair, job.thinMm());
            }
            case Treatment.Fill _ -> need(repair, "rasp and putty knives", "", "press filler in; work it to the old line");
            case Treatment.Dutchman(_, var width, var depth) -> {
                need(repair, "plunge-cut saw on a rail", "cuts {} deep", "saw the sides of an opening in the face", 1, depth);
                chisel(repair, width / 2, "clean the floor and corners of the opening");
                need(repair, "block plane", "", "fit the patch and plane it flush");
            }
            case Treatment.BuildUp _, Treatment.ButtSplice _, Treatment.ReplacePart _ -> {
                saw(repair, job.thinMm());
                need(repair, "try square", "", "carry the line round all faces");
                need(repair, "block plane", "", "fit the end grain");
            }
            case Treatment.HalfLap _ -> {
                saw(repair, job.wideMm());
                chisel(repair, job.wideMm() / 2, "pare the halving and its undercut shoulders");
                need(repair, "sliding bevel", "set 1:6", "undercut the shoulders of the lap");
            }
            case Treatment.ScarfSplice(_, var slope, var scarf, var nib) -> {
                saw(repair, job.board() ? job.thinMm() : job.wideMm());
                need(repair, "sliding bevel", "set 1:" + slope, "mark the slope of the scarf on both edges");
                need(repair, scarf > LONG_SCARF_MM ? "try plane" : "block plane", "", scarf > LONG_SCARF_MM ? "true the long face of the scarf" : "fit the faces of a short scarf");
                if (nib > 0) chisel(repair, nib * 2, "cut the nibs square");
            }
            case Treatment.Sister _ -> saw(repair, job.wideMm());
        }
    }

    private void saw(Repair repair, double deepMm) { need(repair, "crosscut saw, hand or circular", "cuts {} deep", "cut to the line, square or to the bevel", 1, deepMm); }

    private void chisel(Repair repair, double mostMm, String job) {
        double[] sizes = units == Units.US ? CHISEL_INCHES : CHISEL_MM;
        for (double size : sizes) {
            double mm = units == Units.US ? size * 25.4 : size;
            if (mm > mostMm + 1e-6 && size != sizes[sizes.length - 1]) continue;
            need(repair, "bevel-edge chisel", Words.length(mm, units), job);
            return;
        }
    }

    private void join(Repair repair) {
        repair.needs().stream().filter(need -> need.material() == Material.SCREW).forEach(need -> need(repair, "drill bits and driver for " + need.size().split(" × ")[0] + (units == Units.US ? " screws" : " mm screws"),
                pilot(need.size()), "bore pilot and shank holes, drive by hand at the last"));
        repair.design().joint().ifPresent(joint -> {
            joint.fixings().ifPresent(fixings -> bore(repair, joint, fixings));
            double open = Clamped.across(joint) + BLOCKS_MM;
            int[] sizes = units == Units.US ? CLAMP_INCHES : CLAMP_MM;
            int size = java.util.Arrays.stream(sizes).filter(one -> one * (units == Units.US ? 25.4 : 1) >= open).findFirst().orElse(sizes[sizes.length - 1]);
            need(repair, "clamp", "opening " + Words.length(size * (units == Units.US ? 25.4 : 1), units), "hold the joint while the glue cures; as many as the repair with most", joint.clamps(), 0);
        });
    }

    /// Which way a joint is drawn together, and over how much wood.
    private static final class Clamped {
        static double across(Joinery joint) {
            return switch (joint.sort()) {
                case SCARF, HALF_LAP, BUTT -> joint.throughMm();
                case INLAY -> joint.throughMm() * 2;
                case SISTER -> joint.throughMm() * 2;
            };
        }
    }

    private static String pilot(String size) {
        return switch (size.split(" × ")[0]) {
            case "#8" -> "7/64 in pilot, 11/64 in shank";
            case "#10" -> "1/8 in pilot, 3/16 in shank";
            case "4" -> "2.5 mm pilot, 4 mm shank";
            case "5" -> "3 mm pilot, 5 mm shank";
            default -> throw new IllegalStateException("a screw of another size: " + size);
        };
    }

    private void bore(Repair repair, Joinery joint, Fixings fixings) {
        switch (fixings.sort()) {
            case SCREW -> {
                if (joint.sort() == Joinery.Sort.INLAY) need(repair, "countersink and plug cutter", about(0.375, 10), "let heads in and plug them in like wood");
            }
            case BOLT -> {
                need(repair, "auger bit for " + fixings.name() + " bolts", Words.length(fixings.diameterMm() + (units == Units.US ? 25.4 / 16 : 1), units) + ", {} long", "bore the bolt holes " + (units == Units.US ? "a sixteenth" : "1 mm") + " over", 1, fixings.lengthMm());
                need(repair, "wrench for " + fixings.name() + " bolts", "", "draw the joint together");
            }
            case DOWEL -> need(repair, "drill bit and dowel centres", fixings.name(), "bore both ends alike, square to the joint");
        }
    }

    private void mix(Repair repair) {
        int cups = repair.design().mixings().stream().mapToInt(mixing -> mixing.batches().count()).sum();
        boolean glued = repair.needs().stream().anyMatch(need -> need.material() == Material.ADHESIVE);
        if (cups == 0 && !glued) return;
        need(repair, "mixing board, sticks and measured cups", "", "mix parts by measure; a fresh cup for every batch", Math.max(2, cups), 0);
        need(repair, "nitrile gloves and closed goggles", "", "two-part resins: off skin and eyes, air moving");
        for (Mixing mixing : repair.design().mixings()) mixing.holes().ifPresent(holes -> {
            need(repair, "drill bit for consolidant", Words.length(holes.diameterMm(), units) + " × {} deep", "slanting holes that feed the resin in", 1, holes.deepMm());
            need(repair, "squeeze bottle with a spout", "", "feed consolidant into the holes");
        });
    }
}
