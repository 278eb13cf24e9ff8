package sillwright.water.net;

import module java.base;

import sillwright.water.net.Network.Look;

/// The slow twin: every set of sources, one by one.
record Counted(double evidence, double[] with, double entropy, double[] states) {
    static Counted of(List<Double> priors, double[] leaks, double[][] strengths, List<Look> looks) {
        int n = priors.size();
        double[] states = new double[1 << n], with = new double[n];
        double sum = 0;
        for (int state = 0; state < states.length; state++) {
            double p = 1;
            for (int i = 0; i < n; i++) p *= (state >> i & 1) == 1 ? priors.get(i) : 1 - priors.get(i);
            for (int f = 0; f < leaks.length; f++) {
                double absent = absent(state, leaks[f], strengths[f]);
                p *= switch (looks.get(f)) { case SEEN -> 1 - absent; case NOT_SEEN -> absent; case NOT_LOOKED -> 1; };
            }
            states[state] = p;
            sum += p;
            for (int i = 0; i < n; i++) if ((state >> i & 1) == 1) with[i] += p;
        }
        return new Counted(sum, with, entropy(states, sum), states);
    }

    static double absent(int state, double leak, double[] strengths) {
        double absent = 1 - leak;
        for (int i = 0; i < strengths.length; i++) if ((state >> i & 1) == 1) absent *= 1 - strengths[i];
        return absent;
    }

    static double entropy(double[] weights, double sum) {
        double bits = 0;
        for (double w : weights) if (w > 0) bits -= w / sum * Math.log(w / sum) / Math.log(2);
        return bits;
    }

    /// Expected entropy of the sources after one more look.
    double after(int finding, double leak, double[] strengths) {
        double[] no = new double[states.length], yes = new double[states.length];
        double noSum = 0, yesSum = 0;
        for (int state = 0; state < states.length; state++) {
            double absent = absent(state, leak, strengths);
            noSum += no[state] = states[state] * absent;
            yesSum += yes[state] = states[state] * (1 - absent);
        }
        return noSum / evidence * entropy(no, noSum) + yesSum / evidence * entropy(yes, yesSum);
    }
}
