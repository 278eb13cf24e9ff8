package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.walk.Member;
import sillwright.work.cost.Toil;

/// What is done by hand in one treatment, in the units of the table of hours.
final class Hours {
    private static final double MM2_PER_M2 = 1e6, ML_PER_L = 1000;

    private final List<Toil> toils = new ArrayList<>();
    private final String ref;

    private Hours(String ref) { this.ref = ref; }

    static List<Toil> of(Job job, Treatment treatment, String ref) {
        Hours hours = new Hours(ref);
        Member member = job.member();
        if (treatment instanceof Treatment.Watch) {
            hours.add("probe-again", 1);
            return List.copyOf(hours.toils);
        }
        boolean cut = treatment.degree() > 2 && !Amounts.resin(treatment);
        if (cut && Job.carries(member)) hours.add("prop", 1);
        if (member.above().own() + job.damage().toMm() > Limits.OVERHEAD_MM) hours.add("move-ladder", 1);
        double coated = Amounts.coatedMm2(job, treatment) / MM2_PER_M2;
        if (member.coat() != Member.Coat.NONE && !(treatment instanceof Treatment.Replace)) hours.add("strip-paint", Math.min(coated, Amounts.paintBrokenMm2(job, treatment) / MM2_PER_M2));
        hours.made(job, treatment);
        double borate = Amounts.of(job, treatment).stream().filter(need -> need.material() == Material.BORATE).mapToDouble(Repair.Need::amount).sum() * Amounts.BORATE_MM2_PER_ML / 2 / MM2_PER_M2;
        hours.add("borate", borate);
        hours.add("sand", coated);
        hours.add("prime", coated);
        hours.add("coat", 2 * coated);
        return List.copyOf(hours.toils);
    }

    private void made(Job job, Treatment treatment) {
        if (!(treatment instanceof Treatment.Recoat || treatment instanceof Treatment.Replace)) add("open-up", 1);
        switch (treatment) {
            case Treatment.Watch _, Treatment.Recoat _ -> {}
            case Treatment.Reseat _ -> add("reseat", job.member().lengthMm() / 1000);
            case Treatment.Sister(var from, var to, _) -> add("sister", (to - from) / 1000);
            case Treatment.ReplacePart(var from, var to) -> {
                add("replace", (to - from) / 1000);
                add("butt-splice", 1);
            }
            case Treatment.Consolidate(var consolidant) -> add("consolidate", consolidant / ML_PER_L);
            case Treatment.Fill(var consolidant, var fill) -> {
                add("consolidate", consolidant / ML_PER_L);
                add("fill", fill / ML_PER_L);
            }
            case Treatment.Dutchman _ -> add("dutchman", 1);
            case Treatment.BuildUp _ -> add("build-up", 1);
            case Treatment.ButtSplice _ -> add("butt-splice", 1);
            case Treatment.HalfLap _ -> add("half-lap", 1);
            case Treatment.ScarfSplice _ -> add("scarf", 1);
            case Treatment.Replace _ -> add("replace", job.member().lengthMm() / 1000);
        }
    }

    private void add(String task, double amount) { if (amount > 0) toils.add(Toil.of(task, amount, ref)); }
}
