package sillwright.wood;

import java.util.List;

import sillwright.walk.ProbeReading;

/// The probe readings of one face as flat arrays.
final class Readings {
    /// What one reading says of the latent depth.
    enum Says { EXACTLY, AT_MOST, AT_LEAST }

    final int count;
    final double[] alongMm;
    final double[] acrossMm;
    final double[] depthMm;
    final Says[] says;

    private Readings(int count) {
        this.count = count;
        alongMm = new double[count];
        acrossMm = new double[count];
        depthMm = new double[count];
        says = new Says[count];
    }

    /// A reading of nothing says "no softening here"; one that ran out says "at least so deep"; any other, "so deep".
    static Readings of(List<ProbeReading> probes) {
        Readings all = new Readings(probes.size());
        for (int i = 0; i < all.count; i++) {
            ProbeReading probe = probes.get(i);
            all.alongMm[i] = probe.spot().alongMm();
            all.acrossMm[i] = probe.spot().acrossMm();
            all.depthMm[i] = probe.depthMm();
            all.says[i] = probe.ranOut() ? Says.AT_LEAST : probe.depthMm() <= 0 ? Says.AT_MOST : Says.EXACTLY;
        }
        return all;
    }

    static Readings of(double[] alongMm, double[] acrossMm, double[] depthMm, Says[] says) {
        Readings all = new Readings(alongMm.length);
        System.arraycopy(alongMm, 0, all.alongMm, 0, all.count);
        System.arraycopy(acrossMm, 0, all.acrossMm, 0, all.count);
        System.arraycopy(depthMm, 0, all.depthMm, 0, all.count);
        System.arraycopy(says, 0, all.says, 0, all.count);
        return all;
    }
}
