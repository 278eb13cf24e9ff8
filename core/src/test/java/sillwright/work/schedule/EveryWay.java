package sillwright.work.schedule;

import module java.base;

/// The earliest last day of a drawn list in its first year, by trying every way to work: in each half day each crew takes any job that may be worked, or none. The plain slow twin of the planner.
final class EveryWay {
    private final Drawn drawn;
    private final int n;
    private final Set<List<Integer>> seen = new HashSet<>();
    private int best = Drawn.DAYS;

    EveryWay(Drawn drawn) {
        this.drawn = drawn;
        this.n = drawn.all().size();
    }

    /// @return days
    int best() {
        int[] left = new int[n], end = new int[n];
        for (int i = 0; i < n; i++) left[i] = drawn.all().get(i).itself() ? -1 : drawn.all().get(i).amount() / Drawn.HALF;
        Arrays.fill(end, -1);
        go(0, left, end);
        return best;
    }

    /// @param slot half days gone
    /// @param end  the half day after which each is done; -1 where it is not
    private void go(int slot, int[] left, int[] end) {
        waits(end);
        int last = 0, open = 0;
        for (int i = 0; i < n; i++) {
            if (end[i] < 0) open++;
            last = Math.max(last, (end[i] + 1) / 2);
        }
        if (open == 0) {
            best = Math.min(best, last);
            return;
        }
        if (slot / 2 + 1 >= best) return;
        List<Integer> state = new ArrayList<>(List.of(slot));
        for (int i = 0; i < n; i++) state.addAll(List.of(left[i], end[i]));
        if (!seen.add(state)) return;
        List<Integer> may = new ArrayList<>();
        for (int i = 0; i < n; i++)
            if (left[i] > 0 && drawn.season().fits(0, slot / 2, drawn.all().get(i).needs()) && ready(i, slot, end)) may.add(i);
        for (int pick = (1 << may.size()) - 1; pick >= 0; pick--) {
            if (Integer.bitCount(pick) > drawn.crew().crews()) continue;
            int[] l = left.clone(), e = end.clone();
            for (int k = 0; k < may.size(); k++) if ((pick >> k & 1) == 1 && --l[may.get(k)] == 0) e[may.get(k)] = slot + 1;
            go(slot + 1, l, e);
        }
    }

    private boolean ready(int i, int slot, int[] end) {
        for (Activity.Before before : drawn.all().get(i).after()) {
            int done = end[before.activity()];
            if (done < 0 || (before.nights() == 0 ? done > slot : (done - 1) / 2 + before.nights() > slot / 2)) return false;
        }
        return true;
    }

    /// Waits begin by themselves, on the first morning after all that comes before them and its nights.
    private void waits(int[] end) {
        for (int i = 0; i < n; i++) {
            if (!drawn.all().get(i).itself() || end[i] >= 0) continue;
            int day = 0;
            boolean known = true;
            for (Activity.Before before : drawn.all().get(i).after()) {
                int done = end[before.activity()];
                known &= done >= 0;
                day = Math.max(day, before.nights() == 0 ? (done + 1) / 2 : (done - 1) / 2 + before.nights());
            }
            if (known) end[i] = 2 * (day + drawn.all().get(i).amount());
        }
    }
}
