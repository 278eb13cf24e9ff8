package sillwright.work.schedule;

import java.util.Arrays;

/// Works one year by an order of precedence, day by day: whoever is free takes the first job on the list that may begin and has its weather.
///
/// Nobody knows the weather to come. A job that its weather stops is laid aside and taken up again by whoever is free. Owns its arrays: nothing is made while it runs.
final class Walk {
    /// How a crew keeps to the list.
    enum Manner {
        /// Stays with a job while its weather lasts.
        STAYS,
        /// Asks the list anew each morning.
        ASKS,
        /// Asks anew each morning, and puts what wants the rarest weather before the list: on a day for paint it paints.
        SEIZES,
        /// Does nothing but the next on the list.
        WAITS
    }

    /// A moment is `day << DAY | minute of work`.
    static final int DAY = 12;
    private static final int EVENING = (1 << DAY) - 1;

    private final Jobs jobs;
    private final Season season;
    private final int n, crews;
    private final int[] left, missing, ready, open, clock, at, heldBy;
    /// First and last day of each, in the year walked last.
    final int[] first, last;
    private int opened, undone, end;
    private int[] rank;
    /// Told of each stretch of work where somebody listens.
    private Log log = (_, _, _, _) -> {};

    interface Log {
        void worked(int day, int crew, int job, int minutes);
    }

    Walk(Jobs jobs, Season season, int crews) {
        this.jobs = jobs;
        this.season = season;
        this.n = jobs.n;
        this.crews = crews;
        left = new int[n];
        missing = new int[n];
        ready = new int[n];
        open = new int[n];
        heldBy = new int[n];
        first = new int[n];
        last = new int[n];
        clock = new int[crews];
        at = new int[crews];
    }

    Walk telling(Log log) {
        this.log = log;
        return this;
    }

    /// @param order the jobs by precedence, and `rank` the place of each in it
    /// @param limit where the work lasts beyond this day, the walk stops and a later day is given back
    /// @return the last day
    int run(int[] order, int[] rank, Manner manner, int year, int limit) {
        this.rank = rank;
        begin();
        int most = Math.min(limit, season.days() - 1), row = year * season.days(), head = 0;
        for (int day = 0; undone > 0; ) {
            if (day > most) return most + 1 + undone;
            int minutes = season.minutes(day);
            boolean worked = false;
            if (minutes > 0) {
                int fit = season.fit[row + day];
                for (int c = 0; c < crews; c++) {
                    clock[c] = 0;
                    if (at[c] >= 0 && (manner == Manner.ASKS || manner == Manner.SEIZES || (fit >> jobs.needs[at[c]] & 1) == 0)) letGo(c);
                }
                for (int c = earliest(minutes); c >= 0; c = earliest(minutes)) {
                    if (manner == Manner.WAITS) while (head < n && (left[order[head]] == 0 || jobs.itself[order[head]])) head++;
                    int job = at[c] >= 0 ? at[c] : manner == Manner.WAITS ? next(order, head, day << DAY | clock[c], fit) : manner == Manner.SEIZES ? seize(day << DAY | clock[c], fit) : pick(day << DAY | clock[c], fit);
                    if (job < 0) clock[c] = later(clock[c], minutes);
                    else {
                        work(c, job, day, minutes);
                        worked = true;
                    }
                }
            }
            day = worked ? day + 1 : idle(year, day + 1);
        }
        return end;
    }

    private void begin() {
        System.arraycopy(jobs.amount, 0, left, 0, n);
        Arrays.fill(first, -1);
        Arrays.fill(ready, 0);
        Arrays.fill(heldBy, -1);
        Arrays.fill(at, -1);
        opened = 0;
        undone = n;
        end = 0;
        for (int i = 0; i < n; i++) missing[i] = jobs.from[i + 1] - jobs.from[i];
        for (int i = 0; i < n; i++) if (jobs.from[i + 1] == jobs.from[i]) free(i);
    }

    /// Nothing more must come before it: a wait runs off by itself, a job is put among the open ones by its rank.
    private void free(int i) {
        if (jobs.itself[i]) {
            first[i] = (ready[i] & EVENING) == 0 ? ready[i] >> DAY : (ready[i] >> DAY) + 1;
            left[i] = 0;
            finish(i, first[i] + jobs.amount[i] - 1, EVENING);
            return;
        }
        int k = opened++;
        for (; k > 0 && rank[open[k - 1]] > rank[i]; k--) open[k] = open[k - 1];
        open[k] = i;
    }

    private void finish(int i, int day, int minute) {
        last[i] = day;
        end = Math.max(end, day);
        undone--;
        for (int k = jobs.to[i]; k < jobs.to[i + 1]; k++) {
            int j = jobs.after[k], nights = jobs.afterNights[k];
            ready[j] = Math.max(ready[j], nights == 0 ? day << DAY | minute : day + nights << DAY);
            if (--missing[j] == 0) free(j);
        }
    }

    /// The crew whose clock stands earliest, -1 where all have done their day.
    private int earliest(int minutes) {
        int best = -1;
        for (int c = 0; c < crews; c++) if (clock[c] < minutes && (best < 0 || clock[c] < clock[best])) best = c;
        return best;
    }

    /// When somebody else next puts a job down today.
    private int later(int now, int minutes) {
        int next = minutes;
        for (int c = 0; c < crews; c++) if (clock[c] > now) next = Math.min(next, clock[c]);
        return next;
    }

    private int pick(int now, int fit) {
        for (int k = 0; k < opened; k++) {
            int i = open[k];
            if (heldBy[i] < 0 && ready[i] <= now && (fit >> jobs.needs[i] & 1) != 0) return i;
        }
        return -1;
    }

    private int seize(int now, int fit) {
        int best = -1;
        for (int k = 0; k < opened; k++) {
            int i = open[k];
            if (heldBy[i] < 0 && ready[i] <= now && (fit >> jobs.needs[i] & 1) != 0 && (best < 0 || jobs.weather[i] > jobs.weather[best])) best = i;
        }
        return best;
    }

    private int next(int[] order, int head, int now, int fit) {
        for (int k = head; k < n; k++) {
            int i = order[k];
            if (left[i] == 0 || jobs.itself[i] || heldBy[i] >= 0) continue;
            return missing[i] == 0 && ready[i] <= now && (fit >> jobs.needs[i] & 1) != 0 ? i : -1;
        }
        return -1;
    }

    private void work(int c, int job, int day, int minutes) {
        int take = Math.min(left[job], minutes - clock[c]);
        if (first[job] < 0) first[job] = day;
        left[job] -= take;
        clock[c] += take;
        log.worked(day, c, job, take);
        if (left[job] > 0) {
            at[c] = job;
            heldBy[job] = c;
            return;
        }
        at[c] = -1;
        heldBy[job] = -1;
        int k = 0;
        while (open[k] != job) k++;
        System.arraycopy(open, k + 1, open, k, --opened - k);
        finish(job, day, clock[c]);
    }

    private void letGo(int c) {
        heldBy[at[c]] = -1;
        at[c] = -1;
    }

    /// The next day on which something may be worked.
    private int idle(int year, int day) {
        int next = season.days();
        for (int k = 0; k < opened; k++) next = Math.min(next, season.next(year, jobs.needs[open[k]], Math.max(day, ready[open[k]] >> DAY)));
        return next;
    }
}
