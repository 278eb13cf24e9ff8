package sillwright.wood;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import sillwright.walk.ProbeReading;

/// The probe readings of one face as flat arrays.
final class Readings {
    /// Wood is weathered and hands differ: a push that goes in no deeper says only that nothing softer lies beneath it, mm. This program's own choice.
    static final double SKIN_MM = 2.5;

    /// Probes from opposite faces no further apart than this met the same wood, mm. This program's own choice.
    private static final double SAME_SPOT_MM = 15;

    /// What one reading says of the latent depth.
    enum Says { EXACTLY, AT_MOST, AT_LEAST }

    final int count;
    final double[] alongMm;
    final double[] acrossMm;
    /// The depth that was read, or the bound that it sets.
    final double[] depthMm;
    final Says[] says;

    private Readings(int count) {
        this.count = count;
        alongMm = new double[count];
        acrossMm = new double[count];
        depthMm = new double[count];
        says = new Says[count];
    }

    /// A reading of the skin says "no softening here"; one that ran out says "at least so deep"; any other, "so deep".
    static Readings of(List<ProbeReading> probes) {
        Readings all = new Readings(probes.size());
        for (int i = 0; i < all.count; i++) {
            ProbeReading probe = probes.get(i);
            all.put(i, probe.spot().alongMm(), probe.spot().acrossMm(), probe.depthMm(), says(probe));
        }
        return all;
    }

    /// The same, with what the face opposite says: where a probe from there stopped in sound wood, decay from here goes no further than that wood; where one went
    /// right through, wood is soft from here too.
    ///
    /// @param throughMm how much wood lies between both faces
    static Readings between(List<ProbeReading> probes, List<ProbeReading> opposite, double throughMm) {
        List<ProbeReading> telling = opposite.stream().filter(probe -> wentThrough(probe, throughMm) || !probe.ranOut()).toList();
        Readings own = of(probes), all = new Readings(own.count + telling.size());
        for (int i = 0; i < own.count; i++)
            all.put(i, own.alongMm[i], own.acrossMm[i], own.depthMm[i], wentThrough(probes.get(i), throughMm) ? Says.AT_LEAST : own.says[i]);
        for (int i = 0; i < telling.size(); i++) {
            ProbeReading probe = telling.get(i);
            boolean through = wentThrough(probe, throughMm);
            all.put(own.count + i, probe.spot().alongMm(), probe.spot().acrossMm(), through ? throughMm : throughMm - probe.depthMm(), through ? Says.AT_LEAST : Says.AT_MOST);
        }
        return all;
    }

    /// Whether a probe met no sound wood all the way to the face opposite.
    static boolean wentThrough(ProbeReading probe, double throughMm) { return probe.depthMm() > throughMm - SKIN_MM; }

    /// Where readings from two opposite faces cannot both be right: two probes that stopped in sound wood near the same spot, and went in further than there is wood. Stations, mm.
    static List<Double> overlaps(List<ProbeReading> probes, List<ProbeReading> opposite, double throughMm) {
        List<Double> all = new ArrayList<>();
        for (ProbeReading one : probes)
            for (ProbeReading other : opposite) {
                if (one.ranOut() || other.ranOut() || wentThrough(one, throughMm) || wentThrough(other, throughMm)) continue;
                boolean near = Math.hypot(one.spot().alongMm() - other.spot().alongMm(), one.spot().acrossMm() - other.spot().acrossMm()) <= SAME_SPOT_MM;
                if (near && one.depthMm() + other.depthMm() > throughMm + SKIN_MM) all.add(one.spot().alongMm());
            }
        return all;
    }

    private static Says says(ProbeReading probe) {
        return probe.ranOut() ? Says.AT_LEAST : probe.depthMm() <= SKIN_MM ? Says.AT_MOST : Says.EXACTLY;
    }

    static Readings of(double[] alongMm, double[] acrossMm, double[] depthMm, Says[] says) {
        Readings all = new Readings(alongMm.length);
        for (int i = 0; i < all.count; i++) all.put(i, alongMm[i], acrossMm[i], depthMm[i], says[i]);
        return all;
    }

    /// As if each had been read to the letter.
    Readings pinned() {
        Says[] exact = new Says[count];
        Arrays.fill(exact, Says.EXACTLY);
        return of(alongMm, acrossMm, depthMm, exact);
    }

    /// Whether a reading found wood softer than a tolerance.
    boolean soft(int i, double toleranceMm) { return says[i] == Says.AT_LEAST || says[i] == Says.EXACTLY && depthMm[i] > toleranceMm; }

    Readings with(double alongMm, double acrossMm, double depthMm, Says says) {
        Readings all = new Readings(count + 1);
        for (int i = 0; i < count; i++) all.put(i, this.alongMm[i], this.acrossMm[i], this.depthMm[i], this.says[i]);
        all.put(count, alongMm, acrossMm, depthMm, says);
        return all;
    }

    /// At most so many of them, each as far as can be from those before it, so that a search for the numbers of a field stays quick.
    Readings thinned(int most, double alongScaleMm, double acrossScaleMm) {
        if (count <= most) return this;
        double[] nearest = new double[count];
        Arrays.fill(nearest, Double.MAX_VALUE);
        List<Integer> kept = new ArrayList<>();
        int next = 0;
        while (kept.size() < most) {
            kept.add(next);
            nearest[next] = -1;
            int farthest = -1;
            for (int i = 0; i < count; i++) {
                if (nearest[i] < 0) continue;
                nearest[i] = Math.min(nearest[i], Math.hypot((alongMm[i] - alongMm[next]) / alongScaleMm, (acrossMm[i] - acrossMm[next]) / acrossScaleMm));
                if (farthest < 0 || nearest[i] > nearest[farthest]) farthest = i;
            }
            next = farthest;
        }
        Readings all = new Readings(most);
        for (int k = 0; k < most; k++) all.put(k, alongMm[kept.get(k)], acrossMm[kept.get(k)], depthMm[kept.get(k)], says[kept.get(k)]);
        return all;
    }

    private void put(int i, double along, double across, double depth, Says says) {
        alongMm[i] = along;
        acrossMm[i] = across;
        depthMm[i] = depth;
        this.says[i] = says;
    }
}
