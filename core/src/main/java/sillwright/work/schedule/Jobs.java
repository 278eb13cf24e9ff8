package sillwright.work.schedule;

import java.util.List;

/// Activities laid out flat, for loops that run many times.
final class Jobs {
    final int n;
    final int[] amount;
    final int[] needs;
    /// The step of weather of each need.
    final int[] weather;
    final boolean[] itself;
    /// Those before `i` are `before[from[i]]` to `before[from[i + 1] - 1]`, with their nights beside them.
    final int[] from, before, nights;
    /// Those after `i`, likewise.
    final int[] to, after, afterNights;

    Jobs(List<Activity> all) {
        n = all.size();
        amount = new int[n];
        needs = new int[n];
        weather = new int[n];
        itself = new boolean[n];
        from = new int[n + 1];
        to = new int[n + 1];
        for (int i = 0; i < n; i++) {
            Activity one = all.get(i);
            amount[i] = one.amount();
            needs[i] = one.needs().ordinal();
            weather[i] = one.needs().weather().ordinal();
            itself[i] = one.itself();
            from[i + 1] = from[i] + one.after().size();
            for (Activity.Before link : one.after()) {
                if (link.activity() >= i) throw new IllegalArgumentException("activity " + i + " comes after " + link.activity() + ", which stands behind it");
                to[link.activity() + 1]++;
            }
        }
        for (int i = 0; i < n; i++) to[i + 1] += to[i];
        before = new int[from[n]];
        nights = new int[from[n]];
        after = new int[from[n]];
        afterNights = new int[from[n]];
        link(all);
    }

    private void link(List<Activity> all) {
        int[] at = to.clone();
        for (int i = 0, k = 0; i < n; i++)
            for (Activity.Before link : all.get(i).after()) {
                before[k] = link.activity();
                nights[k++] = link.nights();
                after[at[link.activity()]] = i;
                afterNights[at[link.activity()]++] = link.nights();
            }
    }
}
