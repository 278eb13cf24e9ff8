package sillwright.work;

import sillwright.work.resin.Soak;

/// Amounts that hang on how much is soft: worked by the stage's figures.
final class Softness {
    private Softness() {}

    /// Consolidant for the soft wood, mL.
    static double consolidantMl(Job job) {
        if (job.onlyChecked()) return Designing.checks(job).stream().mapToDouble(checks -> checks.consolidantMl()).sum();
        double area = job.damage().areaMm2();
        return area > 0 ? Soak.volume(job.species(), area, 1000 * job.damage().volumeMl().median() / area) : 0;
    }

    /// Filler for what crumbles and is dug out, mL: a fifth of softened wood, half of decayed, all where it is hollow; none
    /// where it is too shallow to see. This program's own choice.
    static double fillMl(Job job) {
        double skim = Designing.checks(job).stream().mapToDouble(checks -> checks.skimMl().median()).sum();
        return job.onlyChecked() ? skim : skim + shapingMl(job);
    }

    private static double shapingMl(Job job) {
        if (job.damage().deepestMm() <= Limits.FILL_FROM_MM || holdsTogether(job)) return 0;
        return job.damage().volumeMl().median() * switch (job.condition().state()) {
            case HOLLOW -> 1;
            case DECAYED -> 0.5;
            case SOFTENED, SOUND, NOT_PROBED -> 0.2;
        };
    }

    /// Softened and no more, and not deep: it is hardened as it is.
    static boolean holdsTogether(Job job) { return job.condition().state() == sillwright.wood.Condition.State.SOFTENED && job.damage().deepestMm() <= Limits.HOLDS_TOGETHER_MM; }
}
