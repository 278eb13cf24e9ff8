package sillwright.wood;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertTrue;

/// What following the named spot saves beside a regular grid of twice as many readings, on members of known decay. Eight members with the common tests, against gross errors;
/// `mvn -pl core test -Dtest=ProbingDocTest -Dnext.cases=200 -Dprobing.write=true` works all and writes the table of `docs/probing.md` anew.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ProbingDocTest {
    private static final double THROUGH = 140, REACH = 100, HAND = 1.5;
    private static final String MARK = "<!-- table: made by ProbingDocTest -->", END = "<!-- end of the table -->";
    /// How many rows the readings of a grid may be laid in: the layout with the least error counts. On other members one row (of 24 and of 32) and four (of 48) did far worse.
    private static final int[] ROWS = {2, 3};

    /// Decay of a member that is not the field's own kind: one seat at an end, often another at a joint, each as deep as it is likely to be found.
    private record Truth(double length, double across, List<double[]> seats, double wave, double turn) {
        static Truth draw(Random random) {
            double length = 1200 + 1500 * random.nextDouble(), across = 100 + 60 * random.nextDouble();
            List<double[]> seats = new ArrayList<>();
            seats.add(new double[] {20 + 70 * random.nextDouble(), 80 + 260 * random.nextDouble(), 40 + 80 * random.nextDouble(), random.nextBoolean() ? 0 : length,
                    across * random.nextDouble(), 1.3 + 1.7 * random.nextDouble(), 0.25 * random.nextDouble()});
            if (random.nextDouble() < 0.35) seats.add(new double[] {12 + 42 * random.nextDouble(), 40 + 130 * random.nextDouble(), 40 + 80 * random.nextDouble(),
                    length * (0.2 + 0.6 * random.nextDouble()), across * random.nextDouble(), 1.3 + 1.7 * random.nextDouble(), 0.25 * random.nextDouble()});
            return new Truth(length, across, seats, 60 + 100 * random.nextDouble(), 6 * random.nextDouble());
        }

        double depth(double x, double y) {
            double deepest = 0;
            for (double[] seat : seats) {
                double off = Math.hypot((x - seat[3]) / seat[1], (y - seat[4]) / seat[2]);
                deepest = Math.max(deepest, seat[0] * (1 - Math.pow(off, seat[5]) + seat[6] * Math.sin(2 * Math.PI * x / wave + turn) * Math.cos(3 * y / wave)));
            }
            return Math.min(THROUGH, deepest);
        }

        double volumeMl() {
            int columns = 400, rows = 28;
            double sum = 0;
            for (int c = 0; c < columns; c++) for (int r = 0; r < rows; r++) sum += depth((c + 0.5) * length / columns, (r + 0.5) * across / rows);
            return sum * length / columns * across / rows / 1000;
        }

        Readings push(Readings before, double x, double y, Random random) {
            double off = HAND * random.nextGaussian(), read = depth(x, y) > 0 ? Math.max(0, Math.min(REACH, depth(x, y) + off)) : 0;
            return before.with(x, y, read, read >= REACH ? Readings.Says.AT_LEAST : read <= Readings.SKIN_MM ? Readings.Says.AT_MOST : Readings.Says.EXACTLY);
        }

        Readings grid(int columns, int rows, Random random) {
            Readings all = Readings.of(new double[0], new double[0], new double[0], new Readings.Says[0]);
            for (int c = 0; c < columns; c++) for (int r = 0; r < rows; r++) all = push(all, (c + 0.5) * length / columns, (r + 0.5) * across / rows, random);
            return all;
        }

        /// Where the wood looks worst, which is not quite where it is, and four along the middle.
        Readings first(Random random) {
            double x = 0, y = 0;
            for (int c = 0; c < 60; c++) for (int r = 0; r < 6; r++) if (depth((c + 0.5) * length / 60, (r + 0.5) * across / 6) > depth(x, y)) {
                x = (c + 0.5) * length / 60;
                y = (r + 0.5) * across / 6;
            }
            Readings all = push(Readings.of(new double[0], new double[0], new double[0], new Readings.Says[0]), Math.clamp(x + 40 * random.nextGaussian(), 5, length - 5),
                    Math.clamp(y + 15 * random.nextGaussian(), 8, across - 8), random);
            for (int i = 0; i < 4; i++) all = push(all, (i + 0.5) * length / 4, across * (0.3 + 0.4 * (i % 2)), random);
            return all;
        }

        FaceStudy study(Readings readings, int draws) { return FaceStudy.of(new Slab(length, across, THROUGH), readings, readings, Decay.TOLERANCE_MM, draws, new Random(1)); }
    }

    /// The two volumes that are told of a face: what is soft in the stretches that were found, which damages and repairs rest on, and what may be soft beneath the whole face.
    private enum Volume {
        FOUND, WHOLE;

        double of(FaceStudy study) { return (this == FOUND ? study.foundMl() : study.volumeMl()).median(); }
    }

    /// One way to probe: so many readings where the program says, or a grid of so many in so many rows.
    private record Way(int readings, int rows) {
        boolean led() { return rows == 0; }
    }

    /// Of each way, for each volume, the errors summed over all members as a share of all their soft wood.
    private static Map<Way, double[]> errors(int cases, long base, List<Integer> counts) {
        List<Way> ways = new ArrayList<>();
        for (int count : counts) {
            ways.add(new Way(count, 0));
            for (int rows : ROWS) if (2 * count % rows == 0) ways.add(new Way(2 * count, rows));
        }
        double[][][] error = new double[cases][ways.size()][Volume.values().length];
        double[] volumes = new double[cases];
        IntStream.range(0, cases).parallel().forEach(i -> {
            Random random = new Random(977L * i + base);
            Truth truth = Truth.draw(random);
            while (truth.volumeMl() < 50) truth = Truth.draw(random);
            volumes[i] = truth.volumeMl();
            Readings led = truth.first(random);
            for (int w = 0; w < ways.size(); w++) {
                Way way = ways.get(w);
                while (way.led() && led.count < way.readings) {
                    FaceNext next = FaceNext.of(truth.study(led, FaceStudy.DRAWS), REACH, Decay.LOAD_MARGIN_MM);
                    led = truth.push(led, next.alongMm(), next.acrossMm(), random);
                }
                FaceStudy study = truth.study(way.led() ? led : truth.grid(way.readings / way.rows, way.rows, random), 2 * FaceStudy.DRAWS);
                for (Volume volume : Volume.values()) error[i][w][volume.ordinal()] = Math.abs(volume.of(study) - volumes[i]);
            }
        });
        double whole = Arrays.stream(volumes).sum();
        Map<Way, double[]> all = new LinkedHashMap<>();
        for (int w = 0; w < ways.size(); w++) {
            double[] sums = new double[Volume.values().length];
            for (double[][] one : error) for (int v = 0; v < sums.length; v++) sums[v] += one[w][v] / whole;
            all.put(ways.get(w), sums);
        }
        return all;
    }

    /// The least error of a grid of so many readings, over its layouts; and over both volumes where none is named.
    private static double least(Map<Way, double[]> errors, int readings, Volume... volumes) {
        return errors.entrySet().stream().filter(one -> one.getKey().readings == readings && !one.getKey().led())
                .flatMapToDouble(one -> Stream.of(volumes).mapToDouble(volume -> one.getValue()[volume.ordinal()])).min().orElseThrow();
    }

    @Test
    void following_it_needs_half_the_readings_of_a_grid() throws IOException {
        int cases = Integer.getInteger("next.cases", 8);
        boolean many = cases >= 100;
        List<Integer> counts = many ? List.of(12, 16, 24) : List.of(16);
        Map<Way, double[]> errors = errors(cases, Long.getLong("next.base", 5), counts);
        List<String> rows = new ArrayList<>();
        boolean holds = true;
        for (int count : counts) {
            double[] led = errors.get(new Way(count, 0));
            double found = least(errors, 2 * count, Volume.FOUND), whole = least(errors, 2 * count, Volume.WHOLE);
            holds &= led[0] <= (many ? Math.min(found, whole) : 2 * found);
            rows.add("| " + String.join(" | ", String.valueOf(count), String.valueOf(2 * count), percent(led[0]), percent(found), yes(led[0] <= found), percent(led[1]), percent(whole), yes(led[1] <= whole),
                    yes(led[0] <= Math.min(found, whole))) + " |");
        }
        String said = String.join("\n", rows);
        if (many) {
            System.out.println(said);
            errors.forEach((way, sums) -> System.out.println(way + " " + percent(sums[0]) + " " + percent(sums[1])));
        }
        if (Boolean.getBoolean("probing.write") && cases == 200) write(said);
        assertTrue(holds, said + "\n" + cases + " cases");
    }

    private static void write(String rows) throws IOException {
        Path path = Path.of("..", "docs", "probing.md");
        String text = Files.readString(path), head = text.substring(0, text.indexOf(MARK) + MARK.length());
        Files.writeString(path, head + "\n" + rows + "\n" + text.substring(text.indexOf(END)));
    }

    private static String yes(boolean holds) { return holds ? "yes" : "no"; }

    private static String percent(double share) { return BigDecimal.valueOf(100 * share).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %"; }
}
