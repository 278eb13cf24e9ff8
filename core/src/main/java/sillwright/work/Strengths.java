package sillwright.work;

import java.util.Optional;

import sillwright.walk.Member;
import sillwright.wood.Capacity;
import sillwright.wood.Demand;
import sillwright.wood.Section;
import sillwright.wood.strength.Adjusted;
import sillwright.wood.strength.DesignValues;
import sillwright.wood.strength.Duration;
import sillwright.wood.strength.Grade;
import sillwright.wood.strength.Tributary;
import sillwright.work.joint.Joinery;

/// How much of a loaded member its load uses once it is treated: by screening, and only where its load can be told.
///
/// After a treatment its water is stopped, so that it serves dry; of old wood only what is sound counts, of a patch nothing.
final class Strengths {
    private final Job job;
    private final Member member;
    private final Optional<Demand> demand;
    /// Share of a whole section's capacity; empty where the load cannot be told.
    final Optional<Double> whole;
    final Optional<Double> residual;

    /// Asks nothing of the load: for a joint's sizes alone.
    static Strengths none(Job job) { return new Strengths(job, Optional.empty()); }

    Strengths(Job job) { this(job, job.bearsLoad() ? job.site().demand() : Optional.empty()); }

    private Strengths(Job job, Optional<Demand> demand) {
        this.job = job;
        this.member = job.member();
        this.demand = demand;
        this.whole = use(0, 0, 0, 0);
        this.residual = use(job.damage().section().frontMm(), job.damage().section().backMm(), job.damage().section().leftMm(), job.damage().section().rightMm());
    }

    private Optional<Double> use(Section rest) {
        return demand.flatMap(on -> Capacity.of(member, Optional.of(rest), Optional.of(rest), Optional.of(rest), false, on, Grade.NO2, false)).map(capacity -> capacity.utilisation().median());
    }

    /// Losses that would meet leave a hair between them.
    private Optional<Double> use(double front, double back, double left, double right) {
        if (demand.isEmpty()) return Optional.empty();
        double across = Math.max(1, (left + right) / (0.99 * member.widthMm())), through = Math.max(1, (front + back) / (0.99 * member.depthMm()));
        return use(Section.rectangle(left / across, member.widthMm() - right / across, front / through, member.depthMm() - back / through));
    }

    /// With an opening cut into the worst face: whatever lies at its depth across its width is gone.
    Optional<Double> opened(Patch patch) {
        double even = patch.depthMm() * Math.min(1, patch.widthMm() / member.acrossMm(job.damage().worst()));
        double[] lost = {job.damage().section().frontMm(), job.damage().section().backMm(), job.damage().section().leftMm(), job.damage().section().rightMm()};
        int side = member.sectionSide(job.damage().worst()).ordinal();
        lost[side] = Math.max(lost[side], even);
        return use(lost[0], lost[1], lost[2], lost[3]);
    }

    /// A treated piece may be used up to all it bears. Where by the load assumed even a whole new one would be used beyond that, the load is in doubt before the wood is, and strength settles
    /// nothing: an engineer does.
    double may() { return whole.orElse(1.0) > 1 ? Double.POSITIVE_INFINITY : 1; }

    /// What comes on a joint that starts so far from the end it renews; empty where the load cannot be told.
    Optional<Joinery.Load> at(double fromEndMm) {
        if (whole.isEmpty()) return Optional.empty();
        double heaviest = demand.orElseThrow().loads().stream().mapToDouble(Tributary.Load::load).max().orElse(0), length = member.lengthMm();
        double shear = Adjusted.of(DesignValues.orCareful(member.species(), Grade.NO2, member.widthMm(), member.depthMm()), member.widthMm(), member.depthMm(),
                Adjusted.Service.of(Duration.NORMAL, false)).shearMPa();
        if (!job.bends()) return Optional.of(new Joinery.Load(-heaviest, 0, Joinery.SIDE_SHARE * heaviest, whole.get(), shear));
        double x = Math.min(fromEndMm, length / 2), share = 4 * x * (length - x) / (length * length);
        return Optional.of(new Joinery.Load(0, heaviest * x * (length - x) / 2, 0, whole.get() * share, shear));
    }
}
