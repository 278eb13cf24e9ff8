package sillwright.water.net;

import java.util.ArrayList;
import java.util.List;

import sillwright.measure.Basis;
import sillwright.measure.Refused;

/// Sources that may be at work, findings that they may bring about, and the exact odds once some findings are known.
///
/// A noisy-OR network of two layers: each source is at work or not, apart from the others; a finding is absent when
/// neither its leak nor any source at work brings it about: P(absent) = (1 − leak)·Π(1 − strength). Inference is exact,
/// see [Weighing]. Source: Pearl 1988 for the noisy-OR (from memory); Heckerman 1989 for the two-layer network (read).
public final class Network {
    public static final Basis NOISY_OR = Basis.memory("Pearl, Probabilistic Reasoning in Intelligent Systems (1988)", "noisy-OR");
    public static final Basis TWO_LAYERS = Basis.read("Heckerman 1989, a tractable inference algorithm for diagnosing multiple diseases", "arXiv 1304.1511");

    public static final Basis ELIMINATION = Basis.memory("Zhang and Poole 1994 and 1996, Takikawa and D'Ambrosio 1999, Diez and Galan 2003", "variable elimination with each noisy-OR taken apart");

    private final List<Double> priors;
    private final List<Finding> findings;

    /// What is known of a finding.
    public enum Look { SEEN, NOT_SEEN, NOT_LOOKED }

    /// @param source   its place in the list of priors
    /// @param strength the probability that this source alone brings the finding about
    public record Link(int source, double strength) {}

    /// @param leak  the probability of the finding with no source at work
    /// @param links to the sources that bring it about, each source once
    public record Finding(double leak, List<Link> links) {
        public Finding { links = List.copyOf(links); }
    }

    /// What the findings make of the sources.
    ///
    /// @param evidence probability of exactly these findings
    /// @param sources  probability of each source, in the order of the priors
    public record Posterior(double evidence, List<Double> sources) {
        public Posterior { sources = List.copyOf(sources); }
    }

    private Network(List<Double> priors, List<Finding> findings) {
        this.priors = List.copyOf(priors);
        this.findings = List.copyOf(findings);
    }

    /// @param priors probability of each source before anything is looked at
    /// @throws Refused for a number that is no probability, or a link to a source that is not there
    public static Network of(List<Double> priors, List<Finding> findings) {
        for (int i = 0; i < priors.size(); i++) probability("source " + (i + 1), priors.get(i));
        for (int f = 0; f < findings.size(); f++) {
            String where = "finding " + (f + 1);
            probability(where, findings.get(f).leak());
            boolean[] linked = new boolean[priors.size()];
            for (Link link : findings.get(f).links()) {
                probability(where, link.strength());
                if (link.source() < 0 || link.source() >= priors.size() || linked[link.source()])
                    throw new Refused(where, "links to source {}, which is not there or linked already", "link each source once", link.source() + 1);
                linked[link.source()] = true;
            }
        }
        return new Network(priors, findings);
    }

    private static void probability(String where, double p) {
        if (!(p >= 0 && p <= 1)) throw new Refused(where, "{} is not a probability", "write 0 to 1", p);
    }

    /// The odds of every source, given what was seen, and what was looked for and not seen.
    ///
    /// @param looks one for each finding
    /// @throws Refused when no sources could bring these findings about together
    public Posterior given(List<Look> looks) {
        Weighing weighing = weighing(looks);
        if (weighing.logEvidence() == Double.NEGATIVE_INFINITY) throw new Refused("findings", "nothing in the network can bring them about together", "give findings a leak above 0");
        List<Double> sources = new ArrayList<>();
        for (int i = 0; i < priors.size(); i++) sources.add(weighing.probability(i));
        return new Posterior(Math.exp(weighing.logEvidence()), sources);
    }

    /// What a look at one finding is expected to tell of which sources are at work, bits.
    ///
    /// The mutual information between the finding and all the sources together, given the rest: entropy of the finding
    /// less its expected entropy once the sources were known. A table of all states of the finding's own sources is kept,
    /// so it should have no more than a dozen.
    public double bits(int finding, List<Look> looks) { return bits(finding, weighing(looks)); }

    double bits(int finding, Weighing before) {
        return bits(finding, before.states(findings.get(finding).links().stream().mapToInt(Link::source).toArray()));
    }

    /// The sources that may bring a finding about, in the order of its links.
    public List<Integer> makers(int finding) { return findings.get(finding).links().stream().map(Link::source).toList(); }

    /// @param states probability of each state of the finding's own sources, in the order of its links
    public double bits(int finding, double[] states) {
        List<Link> links = findings.get(finding).links();
        double all = 0, absent = 0, known = 0;
        for (int state = 0; state < states.length; state++) {
            double absentHere = 1 - findings.get(finding).leak();
            for (int b = 0; b < links.size(); b++) if ((state >> b & 1) == 1) absentHere *= 1 - links.get(b).strength();
            all += states[state];
            absent += states[state] * absentHere;
            known += states[state] * entropyBits(absentHere);
        }
        return Math.max(0, entropyBits(absent / all) - known / all);
    }

    /// The chance that a finding is seen, given the states of its own sources.
    public double seen(int finding, double[] states) {
        List<Link> links = findings.get(finding).links();
        double absent = 0;
        for (int state = 0; state < states.length; state++) {
            double absentHere = 1 - findings.get(finding).leak();
            for (int b = 0; b < links.size(); b++) if ((state >> b & 1) == 1) absentHere *= 1 - links.get(b).strength();
            absent += states[state] * absentHere;
        }
        return 1 - absent;
    }

    /// The looks with one of them changed.
    public static List<Look> with(int finding, Look look, List<Look> looks) {
        List<Look> also = new ArrayList<>(looks);
        also.set(finding, look);
        return also;
    }

    public Weighing weighing(List<Look> looks) {
        if (looks.size() != findings.size()) throw new Refused("findings", "there are {} looks for {} findings", "give one look for each finding", looks.size(), findings.size());
        return Weighing.of(priors, findings, looks);
    }

    /// Entropy of a yes or no, bits.
    static double entropyBits(double p) {
        if (!(p > 0 && p < 1)) return 0;
        return -(p * Math.log(p) + (1 - p) * Math.log1p(-p)) / Math.log(2);
    }
}
