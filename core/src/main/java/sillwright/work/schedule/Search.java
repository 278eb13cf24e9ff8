package sillwright.work.schedule;

import java.util.Arrays;
import java.util.random.RandomGenerator;

import sillwright.measure.SplitMix;

import sillwright.work.schedule.Walk.Manner;

/// Looks for the order of precedence whose end comes earliest in a share of the years; among equals the one with the earliest mean end.
///
/// Begins with the order given and with those by the latest days of the [Bound], each worked in every [Manner], then moves one job at a time, within what comes before and after it; where that
/// brings nothing for long it shakes the best a little and goes on from there. Ends where the bound is met.
final class Search {
    /// Orders tried at the most, and how many without gain before the best is shaken.
    private static final int TRIES = 200, PATIENCE = 60, SHAKES = 4;

    private final Jobs jobs;
    private final Season season;
    private final int n, years, allowed;
    private final Walk walk;
    private final Bound bounds;
    private final int[] ends, sorted, years1;
    private final int[] rank;
    final int[] best;
    private final int[] now, next;
    Manner manner = Manner.STAYS;
    int end, least;
    private long sum, nowSum;
    private int nowEnd;

    Search(Jobs jobs, Season season, int crews, double confidence) {
        this.jobs = jobs;
        this.season = season;
        this.n = jobs.n;
        this.years = season.years();
        this.allowed = years - place(years, confidence) - 1;
        this.walk = new Walk(jobs, season, crews);
        this.bounds = new Bound(jobs, season, crews);
        ends = new int[years];
        sorted = new int[years];
        years1 = new int[years];
        rank = new int[n];
        best = new int[n];
        now = new int[n];
        next = new int[n];
    }

    /// The place, in a sorted list of so many, of the value that this share of them does not pass.
    static int place(int all, double share) { return (int) Math.min(all - 1, Math.ceil(share * all - 1e-9) - 1); }

    void run(long seed) {
        for (int i = 0; i < n; i++) best[i] = next[i] = i;
        for (int y = 0; y < years; y++) years1[y] = y;
        end = Integer.MAX_VALUE;
        offer();
        least = least();
        for (int y = 0; y < years && end > least; y++) if (!bounds.refutes(y, least)) {
            byLastDay();
            offer();
        }
        System.arraycopy(best, 0, now, 0, n);
        nowEnd = end;
        nowSum = sum;
        Manner[] manners = Manner.values();
        RandomGenerator random = new SplitMix(seed);
        for (int tries = 0, stale = 0; tries < TRIES && end > least && n > 1; tries++) {
            if (++stale > PATIENCE) {
                stale = 0;
                System.arraycopy(best, 0, next, 0, n);
                for (int k = 0; k < SHAKES; k++) move(random);
                Manner turn = manners[random.nextInt(manners.length)];
                if (!ends(turn, Integer.MAX_VALUE)) continue;
                keep(turn);
                continue;
            }
            System.arraycopy(now, 0, next, 0, n);
            move(random);
            if (ends(nowManner, nowEnd) && better(quantile(), total())) {
                if (quantile() < nowEnd || total() < nowSum) stale = 0;
                keep(nowManner);
            }
        }
    }

    private Manner nowManner = Manner.STAYS;

    private boolean better(int quantile, long total) { return quantile < nowEnd || quantile == nowEnd && total <= nowSum; }

    private void keep(Manner turn) {
        System.arraycopy(next, 0, now, 0, n);
        nowManner = turn;
        nowEnd = quantile();
        nowSum = total();
        if (nowEnd < end || nowEnd == end && nowSum < sum) take(turn);
    }

    private void take(Manner turn) {
        System.arraycopy(next, 0, best, 0, n);
        manner = nowManner = turn;
        end = quantile();
        sum = total();
        hardestFirst();
    }

    /// Works the order in `next` in every manner.
    private void offer() {
        for (Manner turn : Manner.values()) if (ends(turn, end) && (quantile() < end || quantile() == end && total() < sum)) take(turn);
    }

    /// Whether it ends by a day in enough years; the ends of all of them are then known.
    private boolean ends(Manner turn, int limit) {
        for (int k = 0; k < n; k++) rank[next[k]] = k;
        int over = 0;
        for (int year : years1) {
            ends[year] = walk.run(next, rank, turn, year, over < allowed || limit == Integer.MAX_VALUE ? season.days() : limit);
            if (ends[year] > limit && ++over > allowed) return false;
        }
        return true;
    }

    private int quantile() {
        System.arraycopy(ends, 0, sorted, 0, years);
        Arrays.sort(sorted);
        return sorted[years - 1 - allowed];
    }

    private long total() {
        long total = 0;
        for (int one : ends) total += one;
        return total;
    }

    private void hardestFirst() {
        for (int k = 1; k < years; k++) {
            int year = years1[k], at = k;
            for (; at > 0 && ends[years1[at - 1]] < ends[year]; at--) years1[at] = years1[at - 1];
            years1[at] = year;
        }
    }

    /// One job of `next` goes to another place between the last that comes before it and the first that comes after.
    private void move(RandomGenerator random) {
        for (int k = 0; k < n; k++) rank[next[k]] = k;
        int job = next[random.nextInt(n)], low = 0, high = n - 1, at = rank[job];
        for (int k = jobs.from[job]; k < jobs.from[job + 1]; k++) low = Math.max(low, rank[jobs.before[k]] + 1);
        for (int k = jobs.to[job]; k < jobs.to[job + 1]; k++) high = Math.min(high, rank[jobs.after[k]] - 1);
        if (high <= low) return;
        int to = low + random.nextInt(high - low + 1);
        if (at < to) System.arraycopy(next, at + 1, next, at, to - at);
        else System.arraycopy(next, to, next, to + 1, at - to);
        next[to] = job;
    }

    /// The order by latest days, in the year and for the end asked about last.
    private void byLastDay() {
        for (int i = 0; i < n; i++) {
            int k = i;
            for (; k > 0 && later(next[k - 1], i); k--) next[k] = next[k - 1];
            next[k] = i;
        }
    }

    private boolean later(int a, int b) {
        int order = Integer.compare(bounds.lastDay(a), bounds.lastDay(b));
        return order > 0 || order == 0 && bounds.firstDay(a) > bounds.firstDay(b);
    }

    /// The first day by which enough years are not shown to be too short.
    private int least() {
        int low = 0, high = end;
        if (!holds(end - 1)) return end;
        while (low < high) {
            int mid = low + high >>> 1;
            if (holds(mid)) high = mid;
            else low = mid + 1;
        }
        return low;
    }

    private boolean holds(int day) {
        int over = 0;
        for (int year : years1) if (bounds.refutes(year, day) && ++over > allowed) return false;
        return true;
    }
}
