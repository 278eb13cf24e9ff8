package sillwright.work;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Words;
import sillwright.wood.Damage;
import sillwright.work.Weighing.Option;

/// Settles damages of one member with each other: new wood for one may take another with it, and splices at both ends that
/// renew most of a member are no splices.
final class Settling {
    private Settling() {}

    /// A damage and what could be done about it.
    record Weighed(Job job, List<Option> options) {
        Decided.Chosen chosen() { return Decided.of(job, options); }

        Option taken() { return chosen().taken(); }

        Reach reach() { return Reach.of(job, taken().treatment()); }
    }

    /// A damage, and those that its new wood takes with it.
    record Settled(Weighed weighed, List<Job> also) {}

    /// @param jobs in the order they are to be done
    static List<Settled> of(List<Job> jobs) {
        List<Weighed> all = new ArrayList<>();
        for (Job job : jobs) all.add(new Weighed(job, Weighing.of(job)));
        for (int i = 0; i < all.size(); i++) all.set(i, withOthers(all.get(i), all));
        List<Settled> settled = new ArrayList<>();
        for (Weighed one : all) {
            if (all.stream().anyMatch(other -> takes(other, one, all))) continue;
            settled.add(new Settled(one, all.stream().filter(other -> takes(one, other, all)).map(Weighed::job).toList()));
        }
        return settled;
    }

    private static Weighed withOthers(Weighed one, List<Weighed> all) {
        Reach own = one.reach();
        double far = 0, length = one.job.member().lengthMm();
        if (own.lengthMm == 0) return one;
        for (Weighed other : all)
            if (sameMember(one, other) && other.reach().fromStart != own.fromStart && !(other.taken().treatment() instanceof Treatment.Replace))
                far = Math.max(far, other.reach().lengthMm);
        double renewed = Math.min(length, own.lengthMm + far);
        double most = Worth.of(one.job.member()).renew();
        if (far == 0 || renewed <= most * length) return one;
        String words = "with its other end it would renew " + Words.length(renewed, one.job.units()) + " of " + Words.length(length, one.job.units());
        List<Option> mended = new ArrayList<>();
        for (Option option : one.options) {
            List<Bar> bars = new ArrayList<>(option.bars());
            boolean end = Reach.of(one.job, option.treatment()).lengthMm > 0 && !(option.treatment() instanceof Treatment.Replace);
            if (end) bars.add(new Bar(Rule.SPLICE_LEAVES_TOO_LITTLE, Gauge.RENEWED, renewed / length, true, most, () -> words));
            mended.add(new Option(option.treatment(), option.lostMl(), bars, option.use()));
        }
        return new Weighed(one.job, List.copyOf(mended));
    }

    /// Whether the new wood of one lies over the whole of another; of two that take each other, the longer, then the first.
    private static boolean takes(Weighed one, Weighed other, List<Weighed> all) {
        if (one == other || !sameMember(one, other) || !one.reach().covers(other.job.damage())) return false;
        if (!other.reach().covers(one.job.damage())) return true;
        int longer = Double.compare(one.reach().lengthMm, other.reach().lengthMm);
        return longer != 0 ? longer > 0 : all.indexOf(one) < all.indexOf(other);
    }

    private static boolean sameMember(Weighed one, Weighed other) { return one.job.member().id().equals(other.job.member().id()); }

    /// How far from an end the new wood of a treatment reaches; 0 where it is let in or there is none.
    private record Reach(boolean fromStart, double lengthMm, double memberMm) {
        static Reach of(Job job, Treatment treatment) {
            double length = switch (treatment) {
                case Treatment.Watch _, Treatment.Recoat _, Treatment.Reseat _, Treatment.Consolidate _, Treatment.Fill _, Treatment.Dutchman _, Treatment.Sister _, Treatment.ReplacePart _ -> 0;
                case Treatment.BuildUp(var height) -> height;
                case Treatment.ButtSplice(var newMm) -> newMm;
                case Treatment.HalfLap(var newMm, _) -> newMm;
                case Treatment.ScarfSplice(var newMm, _, _, _) -> newMm;
                case Treatment.Replace _ -> job.member().lengthMm();
            };
            return new Reach(CutLine.of(job.damage(), job.units()).fromStart(), length, job.member().lengthMm());
        }

        boolean covers(Damage damage) { return lengthMm > 0 && (fromStart ? damage.toMm() <= lengthMm : damage.fromMm() >= memberMm - lengthMm); }
    }
}
