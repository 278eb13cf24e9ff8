package sillwright.work.schedule;

/// Shows that a year's work cannot be done by a day, whoever plans it and whatever they know of the weather.
///
/// Each job has a first day, from what comes before it with hands without end, and a last day, from what follows it before the end asked for. Where these cross, or where the work that
/// must lie between two days is more than the crews can do on the days there that are fit for it, the end cannot be held.
/// Source: heads and tails, and the energy of an interval, standards of scheduling texts (from memory).
final class Bound {
    private final Jobs jobs;
    private final Season season;
    private final int n, crews, days;
    /// Minutes of days fit for a need before a day, of the year looked at.
    private final int[][] fit = new int[Activity.Fit.values().length][];
    private final int[] headDay, lastStart, lastEnd, byEnd, endMoment;
    private int year = -1;

    Bound(Jobs jobs, Season season, int crews) {
        this.jobs = jobs;
        this.season = season;
        this.n = jobs.n;
        this.crews = crews;
        this.days = season.days();
        for (int f = 0; f < fit.length; f++) fit[f] = new int[days + 1];
        headDay = new int[n];
        lastStart = new int[n];
        lastEnd = new int[n];
        byEnd = new int[n];
        endMoment = new int[n];
    }

    /// The last day of each in the last year asked about, so that the end is held.
    int lastDay(int i) { return lastEnd[i] >> Walk.DAY; }

    int firstDay(int i) { return headDay[i]; }

    /// Whether it is shown that nobody ends this year's work by this day.
    boolean refutes(int y, int end) {
        if (y != year) heads(y);
        for (int i = 0; i < n; i++) if (endMoment[i] >> Walk.DAY > end) return true;
        return !tails(end) || overfull();
    }

    private void heads(int y) {
        year = y;
        for (int f = 0; f < fit.length; f++)
            for (int d = 0; d < days; d++) fit[f][d + 1] = fit[f][d] + ((season.fit[y * days + d] >> f & 1) != 0 ? season.minutes(d) : 0);
        for (int i = 0; i < n; i++) {
            int start = 0;
            for (int k = jobs.from[i]; k < jobs.from[i + 1]; k++) {
                int before = endMoment[jobs.before[k]];
                start = Math.max(start, jobs.nights[k] == 0 ? before : (before >> Walk.DAY) + jobs.nights[k] << Walk.DAY);
            }
            int day = start >> Walk.DAY, minute = start & (1 << Walk.DAY) - 1;
            if (jobs.itself[i]) {
                headDay[i] = minute == 0 ? day : day + 1;
                endMoment[i] = headDay[i] + jobs.amount[i] - 1 << Walk.DAY | (1 << Walk.DAY) - 1;
                continue;
            }
            headDay[i] = day;
            endMoment[i] = forward(jobs.needs[i], day, minute, jobs.amount[i]);
        }
    }

    /// Minutes of fit work that lie before a moment.
    private int before(int needs, int day, int minute) {
        if (day >= days) return fit[needs][days];
        return fit[needs][day] + Math.min(minute, fit[needs][day + 1] - fit[needs][day]);
    }

    private int forward(int needs, int day, int minute, int amount) {
        int target = before(needs, day, minute) + amount;
        int[] sum = fit[needs];
        if (sum[days] < target) return days + 1 << Walk.DAY;
        int low = day, high = days - 1;
        while (low < high) {
            int mid = low + high >>> 1;
            if (sum[mid + 1] >= target) high = mid;
            else low = mid + 1;
        }
        return low << Walk.DAY | target - sum[low];
    }

    /// Latest moments; false where one of them lies before its job can begin.
    private boolean tails(int end) {
        for (int i = n - 1; i >= 0; i--) {
            int latest = end << Walk.DAY | (1 << Walk.DAY) - 1;
            for (int k = jobs.to[i]; k < jobs.to[i + 1]; k++) {
                int start = lastStart[jobs.after[k]];
                latest = Math.min(latest, jobs.afterNights[k] == 0 ? start : (start >> Walk.DAY) - jobs.afterNights[k] + 1 << Walk.DAY);
                if (latest <= 0) return false;
                // What must be done before the first minute of a day is done by the evening before.
                if ((latest & (1 << Walk.DAY) - 1) == 0) latest--;
            }
            lastEnd[i] = latest;
            if (!backward(i)) return false;
        }
        return true;
    }

    private boolean backward(int i) {
        int day = lastEnd[i] >> Walk.DAY;
        if (jobs.itself[i]) {
            lastStart[i] = day - jobs.amount[i] + 1 << Walk.DAY;
            return lastStart[i] >> Walk.DAY >= headDay[i];
        }
        int[] sum = fit[jobs.needs[i]];
        int start = before(jobs.needs[i], day, lastEnd[i] & (1 << Walk.DAY) - 1) - jobs.amount[i];
        if (start < sum[headDay[i]]) return false;
        int low = headDay[i], high = Math.min(day, days - 1);
        while (low < high) {
            int mid = low + high + 1 >>> 1;
            if (sum[mid] <= start) low = mid;
            else high = mid - 1;
        }
        lastStart[i] = low << Walk.DAY | start - sum[low];
        return true;
    }

    private boolean overfull() {
        int m = 0;
        for (int i = 0; i < n; i++) if (!jobs.itself[i]) {
            int k = m++;
            for (; k > 0 && lastEnd[byEnd[k - 1]] > lastEnd[i]; k--) byEnd[k] = byEnd[k - 1];
            byEnd[k] = i;
        }
        for (int f = 0; f < fit.length; f++)
            for (int h = 0; h < m; h++) if (within(byEnd[h], f) && overfull(f, headDay[byEnd[h]], m)) return true;
        return false;
    }

    /// Whether a job is worked on days fit for this need only.
    private boolean within(int i, int needs) { return needs == jobs.needs[i] || needs <= jobs.weather[i] && needs < Activity.Fit.OPENING.ordinal(); }

    private boolean overfull(int needs, int from, int m) {
        int work = 0;
        for (int k = 0; k < m; k++) {
            int i = byEnd[k];
            if (headDay[i] < from || !within(i, needs)) continue;
            work += jobs.amount[i];
            if (work > crews * (before(needs, lastEnd[i] >> Walk.DAY, lastEnd[i] & (1 << Walk.DAY) - 1) - fit[needs][from])) return true;
        }
        return false;
    }
}
