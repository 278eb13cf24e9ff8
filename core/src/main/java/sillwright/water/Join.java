package sillwright.water;

import java.util.Arrays;
import java.util.stream.IntStream;

/// Two tables put together: a source in both is in one state, a finding marked in either is marked.
///
/// For a finding that both may mark, unmarked takes both unmarked, and marked comes about in two ways that share nothing:
/// the first marks it and the second does either, or the second alone. So each such finding has three cases, and no
/// difference is taken.
final class Join {
    final int[] nodes;
    final double[] weights;

    private final double[] first;
    private final double[] second;
    private final int cases;
    private final int twice;
    private final int[] rest;
    private final int[] both;
    private final int[] ofRest;
    private final int[] firstOfRest;
    private final int[] ofCase;
    private final int[] firstOfCase;
    private final int[] ofOwn;
    private final int[] firstOfOwn;
    private final double[] threefold;

    /// @param sources how many nodes are sources; the rest are marks
    Join(int[] firstNodes, double[] first, int[] secondNodes, double[] second, int sources) {
        this.first = first;
        this.second = second;
        nodes = IntStream.concat(IntStream.of(firstNodes), IntStream.of(secondNodes)).sorted().distinct().toArray();
        int[] marks = IntStream.of(firstNodes).filter(node -> node >= sources && holds(secondNodes, node)).toArray();
        int[] others = IntStream.of(secondNodes).filter(node -> !holds(marks, node)).toArray();
        int[] own = IntStream.of(firstNodes).filter(node -> !holds(secondNodes, node)).toArray();
        rest = places(others, secondNodes);
        both = places(marks, secondNodes);
        ofRest = places(others, nodes);
        firstOfRest = places(others, firstNodes);
        ofOwn = places(own, nodes);
        firstOfOwn = places(own, firstNodes);
        twice = marks.length;
        cases = (int) Math.pow(3, twice);
        ofCase = new int[cases];
        firstOfCase = new int[cases];
        for (int c = 0; c < cases; c++) {
            for (int m = 0, digits = c; m < twice; m++, digits /= 3) {
                if (digits % 3 > 0) ofCase[c] |= 1 << Arrays.binarySearch(nodes, marks[m]);
                if (digits % 3 == 1) firstOfCase[c] |= 1 << Arrays.binarySearch(firstNodes, marks[m]);
            }
        }
        threefold = unfold();
        weights = new double[1 << nodes.length];
        for (int r = 0; r < rest.length; r++)
            for (int c = 0; c < cases; c++) {
                double weight = threefold[r * cases + c];
                int to = ofRest[r] | ofCase[c], from = firstOfRest[r] | firstOfCase[c];
                for (int o = 0; o < ofOwn.length; o++) weights[to | ofOwn[o]] += weight * first[from | firstOfOwn[o]];
            }
    }

    /// Carries slopes back to both tables.
    void back(double[] slopes, double[] firstSlopes, double[] secondSlopes) {
        double[] folded = new double[threefold.length];
        for (int r = 0; r < rest.length; r++)
            for (int c = 0; c < cases; c++) {
                double weight = threefold[r * cases + c], sum = 0;
                int to = ofRest[r] | ofCase[c], from = firstOfRest[r] | firstOfCase[c];
                for (int o = 0; o < ofOwn.length; o++) {
                    double slope = slopes[to | ofOwn[o]];
                    firstSlopes[from | firstOfOwn[o]] += slope * weight;
                    sum += slope * first[from | firstOfOwn[o]];
                }
                folded[r * cases + c] = sum;
            }
        fold(folded, secondSlopes);
    }

    /// The second table by the case of each mark that both know: unmarked, either, marked.
    private double[] unfold() {
        double[] now = new double[rest.length * both.length];
        for (int r = 0; r < rest.length; r++) for (int m = 0; m < both.length; m++) now[r * both.length + m] = second[rest[r] | both[m]];
        for (int digit = 0, low = 1; digit < twice; digit++, low *= 3) {
            double[] then = new double[now.length / 2 * 3];
            for (int h = 0; h < now.length / (2 * low); h++)
                for (int l = 0; l < low; l++) {
                    double not = now[2 * h * low + l], marked = now[(2 * h + 1) * low + l];
                    then[3 * h * low + l] = not;
                    then[(3 * h + 1) * low + l] = not + marked;
                    then[(3 * h + 2) * low + l] = marked;
                }
            now = then;
        }
        return now;
    }

    private void fold(double[] slopes, double[] secondSlopes) {
        double[] now = slopes;
        for (int digit = twice - 1, low = cases / 3; digit >= 0; digit--, low /= 3) {
            double[] then = new double[now.length / 3 * 2];
            for (int h = 0; h < then.length / (2 * low); h++)
                for (int l = 0; l < low; l++) {
                    double either = now[(3 * h + 1) * low + l];
                    then[2 * h * low + l] = now[3 * h * low + l] + either;
                    then[(2 * h + 1) * low + l] = now[(3 * h + 2) * low + l] + either;
                }
            now = then;
        }
        for (int r = 0; r < rest.length; r++) for (int m = 0; m < both.length; m++) secondSlopes[rest[r] | both[m]] += now[r * both.length + m];
    }

    private static boolean holds(int[] nodes, int node) { return Arrays.binarySearch(nodes, node) >= 0; }

    /// For each index over `from` the index over `to` with the bits that both know.
    static int[] places(int[] from, int[] to) {
        int[] places = new int[1 << from.length];
        for (int b = 0; b < from.length; b++) {
            int at = Arrays.binarySearch(to, from[b]);
            if (at < 0) continue;
            for (int index = 0; index < places.length; index++) if ((index >> b & 1) == 1) places[index] |= 1 << at;
        }
        return places;
    }
}
