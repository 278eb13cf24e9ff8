package sillwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import sillwright.measure.Words;
import sillwright.walk.OpenChecks;
import sillwright.wood.Interval;
import sillwright.wood.moisture.Porosity;
import sillwright.work.joint.Joinery;
import sillwright.work.resin.Checks;
import sillwright.work.resin.Mixing;
import sillwright.work.resin.Resin;
import sillwright.work.resin.Soak;
import sillwright.work.stock.Outline;
import sillwright.work.stock.Stock;

/// Designs what was chosen.
final class Designing {
    private Designing() {}

    static Design of(Job job, Treatment treatment) {
        Optional<Joinery> joint = Joints.of(job, treatment, new Strengths(job));
        Optional<Stock> stock = Stocking.of(job, treatment);
        Season season = Season.of(job.site().months(), job.site().start(), DryingTime.days(job, treatment));
        List<Checks> checks = checks(job);
        return new Design(joint, mixings(job, treatment, season, checks), checks, stock, stock.map(_ -> Stocking.rings(job, treatment)),
                treatment.cuts() ? job.site().profile().map(Outline::of) : Optional.empty(), season.month(), bridging(job, treatment));
    }

    static List<Checks> checks(Job job) {
        List<Checks> all = new ArrayList<>();
        for (OpenChecks group : job.site().checks())
            all.add(Checks.of(new Checks.Group(group.count(), group.lengthMm(), group.widthMm(), group.depthMm()), group.spot().face() == sillwright.walk.Member.Face.TOP,
                    Porosity.voids(job.species().gravityOvenDry(), Porosity.CELL_WALL), Soak.USUAL_FILL));
        return all;
    }

    private static List<Mixing> mixings(Job job, Treatment treatment, Season season, List<Checks> checks) {
        List<Mixing> all = new ArrayList<>();
        if (!Amounts.resin(treatment)) return all;
        double fillMl = treatment instanceof Treatment.Fill(_, var fill) ? fill : 0, deep = job.damage().deepestMm();
        Interval soft = job.damage().volumeMl();
        double walls = checks.stream().mapToDouble(Checks::consolidantMl).sum();
        if (soft.median() > 0) {
            Interval soak = Soak.volumeMl(job.species(), job.damage().areaMm2(), 1000 * soft.median() / Math.max(1, job.damage().areaMm2()), Soak.USUAL_FILL);
            double share = 1 / soft.median();
            Mixing alone = Mixing.of(Resin.CONSOLIDANT, soft, new Interval(soak.low() * share, soak.median() * share, soak.high() * share), deep, season.tempC(), Mixing.holes(job.damage().areaMm2(), deep, job.throughMm()));
            if (alone.likelyMl() > 0) all.add(alone);
        } else if (walls > 0) all.add(Mixing.of(Resin.CONSOLIDANT, Interval.exactly(walls), new Interval(0.5, 1, 1.5), 0, season.tempC(), Optional.empty()));
        double skim = checks.stream().mapToDouble(check -> check.skimMl().median()).sum();
        if (skim > 0) {
            Interval held = checks.stream().map(Checks::skimMl).reduce(Interval.exactly(0), Interval::plus);
            all.add(Mixing.of(Resin.SKIM, held, Interval.exactly(1), job.site().checks().stream().mapToDouble(OpenChecks::depthMm).max().orElse(0), season.tempC(), Optional.empty()));
        }
        double shaping = fillMl - skim;
        if (shaping > 1e-9 && soft.median() > 0) {
            double share = shaping / soft.median();
            all.add(Mixing.of(Resin.SHAPING, soft, new Interval(share / 2, share, Math.max(share, Math.min(1, 1.5 * share))), deep, season.tempC(), Optional.empty()));
        }
        return all;
    }

    /// Where a foot is closed by resin or set on a pad, water no longer climbs into it; and what comes down from above stands on it.
    private static List<String> bridging(Job job, Treatment treatment) {
        List<String> notes = new ArrayList<>();
        boolean foot = job.standsOnIt() || job.inTheGround();
        if (foot && Amounts.resin(treatment)) {
            notes.add("The filled foot takes up no water from what it stands on: wicking is broken there.");
            notes.add("It lets none out below either: what runs in from above stands on the resin. Leave its lowest " + Words.length(Amounts.breakMm(job.units()), job.units())
                    + " clear of the floor, slope it outward, and keep the joint above it painted.");
        } else if (foot && treatment.cuts() && Amounts.standsOnBreak(job, treatment))
            notes.add("The pad breaks wicking; it must stay " + Words.length(2 * Amounts.breakMm(job.units()), job.units()) + " inside the wood all round and open to drain, or it holds water against the end grain.");
        return notes;
    }
}
