package sillwright.solve;

import module java.base;

import sillwright.work.CutSolver.Stock;

/// The least that a list can cost, by trying every way to part it among bars.
final class Priced {
    private Priced() {}

    static double best(List<Double> pieces, List<Stock> stock, double kerf) { return best(pieces, stock, kerf, new ArrayList<>(), 0); }

    private static double best(List<Double> pieces, List<Stock> stock, double kerf, List<Double> groups, int at) {
        if (at == pieces.size()) return assign(groups, stock, new int[stock.size()], 0);
        double best = Double.POSITIVE_INFINITY;
        for (int g = 0; g <= groups.size(); g++) {
            List<Double> with = new ArrayList<>(groups);
            if (g == groups.size()) with.add(pieces.get(at));
            else with.set(g, with.get(g) + kerf + pieces.get(at));
            double group = with.get(Math.min(g, with.size() - 1));
            if (stock.stream().anyMatch(one -> one.lengthMm() >= group - 1e-6)) best = Math.min(best, best(pieces, stock, kerf, with, at + 1));
        }
        return best;
    }

    private static double assign(List<Double> groups, List<Stock> stock, int[] used, int at) {
        if (at == groups.size()) return 0;
        double best = Double.POSITIVE_INFINITY;
        for (int s = 0; s < stock.size(); s++) {
            if (stock.get(s).lengthMm() < groups.get(at) - 1e-6 || used[s] >= stock.get(s).count()) continue;
            used[s]++;
            best = Math.min(best, stock.get(s).price() + assign(groups, stock, used, at + 1));
            used[s]--;
        }
        return best;
    }
}
