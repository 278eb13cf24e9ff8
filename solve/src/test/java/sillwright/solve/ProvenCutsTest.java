package sillwright.solve;

import module java.base;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import sillwright.work.CutSolver;
import sillwright.work.FirstFit;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ProvenCutsTest {
    private static final Path DATA = Path.of("..", "..", "shared", "data", "stock-cutting");

    /// Source: OR-Library, bin packing, class u of 120 items (Falkenauer 1996), best known numbers of bins (read).
    @Test
    void published_instances_come_out_at_the_best_known_number_of_bars() throws IOException {
        Path file = DATA.resolve("binpack1.txt");
        Assumptions.assumeTrue(Files.exists(file), "the OR-Library file binpack1.txt is not at " + file + ": published instances not checked");
        List<String> tokens = Arrays.asList(Files.readString(file).strip().split("\\s+"));
        int at = 1, cases = Integer.parseInt(tokens.getFirst()), proven = 0;
        for (int c = 0; c < cases; c++) {
            String name = tokens.get(at++);
            double room = Double.parseDouble(tokens.get(at++));
            int n = Integer.parseInt(tokens.get(at++)), known = Integer.parseInt(tokens.get(at++));
            List<Double> pieces = tokens.subList(at, at + n).stream().map(Double::valueOf).toList();
            at += n;
            long t = System.nanoTime();
            CutSolver.Layout layout = new ProvenCuts().lay(pieces, List.of(room), 0);
            Layouts.check(layout, pieces, List.of(room), 0);
            System.out.println(name + " known " + known + " got " + layout.bars().size() + " bound " + layout.boundMm() / room + " ffd " + new FirstFit().lay(pieces, List.of(room), 0).bars().size() + " ms " + (System.nanoTime() - t) / 1_000_000);
        }
    }
}
