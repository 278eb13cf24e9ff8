package sillwright.water.net;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.measure.Refused;
import sillwright.water.net.Network.Look;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class NetFigureTest {
    static Answer answer(String json) { return Figures.named("net").answer(Map.of("file", "given.json"), Map.of("given.json", json)); }

    static String corner() throws IOException { return Files.readString(Path.of("..", "examples", "porch-corner.net.json")); }

    /// The example, every state of its three sources written out: prior, dirt band seen, peeling soffit absent, peeling base
    /// seen, and their product (worked by hand and machine apart from this program).
    private static final String STATES = """
            G,F,S, prior, dirt,   soffit,  base,    product
            0,0,0, 0.476, 0.0500, 0.98000, 0.05000, 0.001166200000
            0,0,1, 0.119, 0.8100, 0.98000, 0.62000, 0.058566564000
            0,1,0, 0.084, 0.0500, 0.58800, 0.14500, 0.000358092000
            0,1,1, 0.021, 0.8100, 0.58800, 0.65800, 0.006581237040
            1,0,0, 0.204, 0.3350, 0.39200, 0.28750, 0.007701918000
            1,0,1, 0.051, 0.8670, 0.39200, 0.71500, 0.012393140760
            1,1,0, 0.036, 0.3350, 0.23520, 0.35875, 0.001017598680
            1,1,1, 0.009, 0.8670, 0.23520, 0.74350, 0.001364519974
            """;

    @Test
    void the_example_gives_what_all_eight_states_written_out_give() throws IOException {
        double all = 0;
        double[] with = new double[3];
        for (String line : STATES.lines().skip(1).toList()) {
            double[] cells = Stream.of(line.split(",")).mapToDouble(Double::parseDouble).toArray();
            assertEquals(cells[7], cells[3] * cells[4] * cells[5] * cells[6], 6e-13, line);
            all += cells[7];
            for (int i = 0; i < 3; i++) with[i] += cells[i] * cells[7];
        }
        Answer answer = answer(corner());
        assertEquals(List.of("clogged-gutter", "failed-flashing", "ground-splash", "evidence"), List.copyOf(answer.results().keySet()));
        assertEquals(all, answer.own("evidence"), 1e-11);
        assertEquals(with[0] / all, answer.own("clogged-gutter"), 1e-10);
        assertEquals(with[1] / all, answer.own("failed-flashing"), 1e-10);
        assertEquals(with[2] / all, answer.own("ground-splash"), 1e-10);
    }

    /// Fever by cold, flu and malaria, as a public set of lecture slides on a textbook's noisy-OR prints it (Russell and Norvig's
    /// example, read in the slides): each fails with 0.6, 0.2, 0.1.
    @ParameterizedTest(name = "cold {0}, flu {1}, malaria {2}: fever {3}")
    @CsvSource({"0,0,1,0.9", "0,1,0,0.8", "0,1,1,0.98", "1,0,0,0.4", "1,0,1,0.94", "1,1,0,0.88", "1,1,1,0.988"})
    void the_published_fever_table_comes_out(int cold, int flu, int malaria, double fever) {
        String json = """
                {"sources": [{"id": "cold", "prior": %d}, {"id": "flu", "prior": %d}, {"id": "malaria", "prior": %d}],
                 "sightings": [{"id": "fever", "strengths": {"cold": 0.4, "flu": 0.8, "malaria": 0.9}, "seen": %s}]}""";
        assertEquals(fever, answer(json.formatted(cold, flu, malaria, true)).own("evidence"), 1e-12);
        assertEquals(1 - fever, answer(json.formatted(cold, flu, malaria, false)).own("evidence"), 1e-12);
        assertEquals(cold, answer(json.formatted(cold, flu, malaria, true)).own("cold"), 1e-12);
    }

    @Test
    void drawn_networks_give_what_counting_every_case_gives() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(8), m = random.nextInt(10);
            List<Double> priors = random.doubles(n).boxed().toList();
            double[] leaks = random.doubles(m, 0.001, 0.4).toArray();
            double[][] strengths = new double[m][n];
            List<Look> looks = new ArrayList<>();
            StringBuilder json = new StringBuilder("{\"sources\":[");
            for (int i = 0; i < n; i++) json.append(i > 0 ? "," : "").append("{\"id\":\"s").append(i).append("\",\"prior\":").append(priors.get(i)).append('}');
            json.append("],\"sightings\":[");
            for (int f = 0; f < m; f++) {
                looks.add(Look.values()[random.nextInt(3)]);
                json.append(f > 0 ? "," : "").append("{\"id\":\"f").append(f).append("\",\"leak\":").append(leaks[f]).append(",\"strengths\":{");
                String comma = "";
                for (int i = 0; i < n; i++) {
                    if (random.nextInt(3) == 0) continue;
                    strengths[f][i] = random.nextDouble();
                    json.append(comma).append("\"s").append(i).append("\":").append(strengths[f][i]);
                    comma = ",";
                }
                json.append('}').append(switch (looks.get(f)) { case SEEN -> ",\"seen\":true"; case NOT_SEEN -> ",\"seen\":false"; case NOT_LOOKED -> random.nextBoolean() ? ",\"seen\":null" : ""; }).append('}');
            }
            Answer answer = answer(json.append("]}").toString());
            Counted counted = Counted.of(priors, leaks, strengths, looks);
            assertEquals(counted.evidence(), answer.own("evidence"), 1e-12 * counted.evidence(), "seed " + seed);
            for (int i = 0; i < n; i++) assertEquals(counted.with()[i] / counted.evidence(), answer.own("s" + i), 1e-11, "seed " + seed);
        }
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "{\"sources\": [{\"id\": \"a\", \"prior\": 1.2}], \"sightings\": []}|sources 1, prior: 1.2 is not a probability; write 0 to 1",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}, {\"id\": \"a\", \"prior\": 0.3}], \"sightings\": []}|sources 2: the id 'a' is taken",
        "{\"sources\": [{\"id\": \"a\"}], \"sightings\": []}|sources 1: 'prior' is missing",
        "{\"sources\": [], \"sightings\": []}|sources: there is none",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}]}|'sightings' is missing",
        "{\"sources\": [{\"id\": \"gutter\", \"prior\": 0.2}], \"sightings\": [{\"id\": \"s\", \"strengths\": {\"guter\": 0.5}}]}|sightings 1, strengths, guter: there is no source 'guter'; did you mean gutter?",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}], \"sightings\": [{\"id\": \"s\", \"strengths\": {\"a\": -0.5}}]}|sightings 1, strengths, a: -0.5 is not a probability",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}], \"sightings\": [{\"id\": \"s\", \"strengths\": {}, \"seen\": \"yes\"}]}|sightings 1, seen: is the text \"yes\"; write true or false",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}], \"sightings\": [{\"id\": \"s\", \"strength\": {\"a\": 0.5}}]}|sightings 1, strength: there is no field 'strength' here; did you mean strengths",
        "{\"sources\": [{\"id\": \"evidence\", \"prior\": 0.2}], \"sightings\": []}|sources 1: the id 'evidence' is kept",
        "{\"sources\": [{\"id\": \"a\", \"prior\": 0.2}], \"sightings\": [{\"id\": \"s\", \"strengths\": {\"a\": 0}, \"seen\": true}]}|nothing in the network can bring them about together",
        "[]|the whole text: is a list", "{\"sources\": [|line 1, column 14"})
    void what_is_wrong_in_the_file_is_named_with_its_place(String json, String said) {
        String message = assertThrows(Refused.class, () -> answer(json)).getMessage();
        assertTrue(message.startsWith("figure net, file") && message.contains(said), message);
    }
}
