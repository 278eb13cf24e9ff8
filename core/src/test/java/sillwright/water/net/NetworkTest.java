package sillwright.water.net;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.measure.Refused;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.water.net.Network.Look.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NetworkTest {
    /// Half the ninth digit, and a hair: one printed value is a tie.
    static final double HALF_DIGIT = 5.00001e-10;

    /// An invented network, worked by enumeration and by Quickscore elsewhere (computed): a clogged gutter, a failed
    /// flashing, ground splash; a dirt band, a peeling soffit, a peeling base, a stain below a joint.
    static final Network CHECK = network(List.of(0.30, 0.15, 0.20), new double[] {0.05, 0.02, 0.05, 0.01},
            new double[][] {{0.30, 0, 0.80}, {0.60, 0.40, 0}, {0.25, 0.10, 0.60}, {0.70, 0.05, 0}});

    static Network network(List<Double> priors, double[] leaks, double[][] strengths) {
        List<Finding> findings = new ArrayList<>();
        for (int f = 0; f < leaks.length; f++) {
            List<Link> links = new ArrayList<>();
            for (int i = 0; i < priors.size(); i++) if (strengths[f][i] > 0) links.add(new Link(i, strengths[f][i]));
            findings.add(new Finding(leaks[f], links));
        }
        return Network.of(priors, findings);
    }

    static List<Look> looks(String marks) {
        return marks.chars().mapToObj(mark -> mark == '+' ? SEEN : mark == '-' ? NOT_SEEN : NOT_LOOKED).toList();
    }

    @ParameterizedTest(name = "dirt, soffit, base, stain {0}")
    @CsvSource({"+..., 0.273820000, 0.483602367, 0.150000000, 0.604119495", "+.+., 0.134144341, 0.457648532, 0.163477903, 0.807869084",
            "+-.., 0.179051802, 0.272513994, 0.095744681, 0.690484030", ".+.., 0.244616000, 0.774503712, 0.317542597, 0.200000000",
            ".+.+, 0.136391616, 0.980255605, 0.200008596, 0.200000000", ".+.-, 0.108224384, 0.515201400, 0.465666815, 0.200000000",
            "+-+-, 0.072302223, 0.091841537, 0.099561998, 0.943765095", "++++, 0.027772911, 0.989144304, 0.210626992, 0.611549553",
            "----, 0.476127682, 0.026290166, 0.083014186, 0.019607843"})
    void the_invented_network_gives_the_odds_worked_by_enumeration(String marks, double evidence, double gutter, double flashing, double splash) {
        var posterior = CHECK.given(looks(marks));
        assertEquals(evidence, posterior.evidence(), HALF_DIGIT);
        assertEquals(gutter, posterior.sources().get(0), HALF_DIGIT);
        assertEquals(flashing, posterior.sources().get(1), HALF_DIGIT);
        assertEquals(splash, posterior.sources().get(2), HALF_DIGIT);
    }

    @ParameterizedTest(name = "finding {0} tells {1} bit")
    @CsvSource({"0, 0.222191745", "2, 0.118640372", "3, 0.251933786"})
    void a_look_after_a_peeling_soffit_is_worth_what_was_worked(int finding, double bits) {
        assertEquals(bits, CHECK.bits(finding, looks(".+..")), HALF_DIGIT);
    }

    @Test
    void the_two_source_check_of_the_reference_holds() {
        Network small = network(List.of(0.3, 0.1), new double[] {0.05, 0.02}, new double[][] {{0.8, 0.6}, {0, 0.9}});
        assertEquals(List.of(0.7669, 0.2213), small.given(looks("+.")).sources().stream().map(NetworkTest::four).toList());
        assertEquals(List.of(0.8607, 0.0276), small.given(looks("+-")).sources().stream().map(NetworkTest::four).toList());
    }

    private static double four(double p) { return Math.round(p * 1e4) / 1e4; }

    /// The textbook fever: cold, flu and malaria fail to bring it about with 0.6, 0.2 and 0.1 (Russell and Norvig, from memory).
    @ParameterizedTest(name = "cold {0}, flu {1}, malaria {2}")
    @CsvSource({"0, 0, 1, 0.9", "0, 1, 0, 0.8", "0, 1, 1, 0.98", "1, 0, 0, 0.4", "1, 0, 1, 0.94", "1, 1, 0, 0.88", "1, 1, 1, 0.988"})
    void the_textbook_fever_is_as_likely_as_the_textbook_says(double cold, double flu, double malaria, double fever) {
        Network network = network(List.of(cold, flu, malaria), new double[] {0}, new double[][] {{0.4, 0.8, 0.9}});
        assertEquals(fever, network.given(List.of(SEEN)).evidence(), 1e-12);
    }

    @Test
    void odds_and_worth_of_a_look_agree_with_counting_every_case_on_random_networks() {
        for (long seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(9), m = 1 + random.nextInt(9);
            List<Double> priors = random.doubles(n).boxed().toList();
            double[] leaks = random.doubles(m, 0.001, 0.4).toArray();
            double[][] strengths = new double[m][n];
            for (double[] row : strengths) for (int i = 0; i < n; i++) row[i] = random.nextInt(3) == 0 ? 0 : random.nextDouble();
            Network network = network(priors, leaks, strengths);
            List<Look> looks = new ArrayList<>();
            for (int f = 0; f < m; f++) looks.add(Look.values()[random.nextInt(3)]);
            looks.set(m - 1, NOT_LOOKED);
            Counted counted = Counted.of(priors, leaks, strengths, looks);
            var posterior = network.given(looks);
            assertEquals(counted.evidence(), posterior.evidence(), 1e-12 * counted.evidence(), "seed " + seed);
            for (int i = 0; i < n; i++) assertEquals(counted.with()[i] / counted.evidence(), posterior.sources().get(i), 1e-11, "seed " + seed);
            assertEquals(counted.entropy() - counted.after(m - 1, leaks[m - 1], strengths[m - 1]), network.bits(m - 1, looks), 1e-9, "seed " + seed);
        }
    }

    @Test
    void twenty_two_findings_that_hang_closely_together_are_weighed_exactly() {
        for (long seed = 1; seed <= 3; seed++) {
            Random random = new Random(seed);
            int n = 10, m = 22;
            List<Double> priors = random.doubles(n, 0.02, 0.5).boxed().toList();
            double[] leaks = random.doubles(m, 0.01, 0.1).toArray();
            double[][] strengths = new double[m][n];
            for (double[] row : strengths) for (int i = 0; i < n; i++) row[i] = random.nextBoolean() ? 0 : random.nextDouble();
            List<Look> looks = Collections.nCopies(m, SEEN);
            Counted counted = Counted.of(priors, leaks, strengths, looks);
            var posterior = network(priors, leaks, strengths).given(looks);
            assertEquals(1, posterior.evidence() / counted.evidence(), 1e-10, "seed " + seed);
            for (int i = 0; i < n; i++) assertEquals(counted.with()[i] / counted.evidence(), posterior.sources().get(i), 1e-10, "seed " + seed);
        }
    }

    @Test
    void a_side_of_25_sources_and_40_sightings_is_weighed_in_far_less_than_a_second() {
        Random random = new Random(7);
        int n = 25, m = 40;
        double[] leaks = random.doubles(m, 0.01, 0.1).toArray();
        double[][] strengths = new double[m][n];
        for (double[] row : strengths) for (int k = 0; k < 6; k++) row[random.nextInt(n)] = random.nextDouble();
        Network network = network(random.doubles(n, 0.02, 0.3).boxed().toList(), leaks, strengths);
        List<Look> looks = new ArrayList<>();
        for (int f = 0; f < m; f++) looks.add(f < 16 ? SEEN : NOT_SEEN);
        long begun = System.nanoTime();
        for (double p : network.given(looks).sources()) assertTrue(p >= 0 && p <= 1);
        assertTrue(System.nanoTime() - begun < 2_000_000_000L, "weighing took longer than two seconds");
    }

    @Test
    void seeing_a_finding_never_lowers_a_source_that_is_its_only_cause() {
        for (long seed = 1; seed <= 100; seed++) {
            Random random = new Random(seed);
            double prior = random.nextDouble(), leak = random.nextDouble(), strength = random.nextDouble();
            Network network = network(List.of(prior), new double[] {leak}, new double[][] {{strength}});
            assertTrue(network.given(List.of(SEEN)).sources().getFirst() >= prior - 1e-12, "seed " + seed);
            assertTrue(network.given(List.of(NOT_SEEN)).sources().getFirst() <= prior + 1e-12, "seed " + seed);
        }
    }

    @Test
    void findings_that_nothing_can_bring_about_are_refused() {
        Network network = network(List.of(0.5), new double[] {0}, new double[][] {{0}});
        assertThrows(Refused.class, () -> network.given(List.of(SEEN)));
        assertThrows(Refused.class, () -> Network.of(List.of(1.5), List.of()));
        assertThrows(Refused.class, () -> Network.of(List.of(0.5), List.of(new Finding(0.1, List.of(new Link(1, 0.5))))));
    }
}
