package sillwright.page;

import java.lang.ref.SoftReference;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;

import sillwright.measure.Memo;

/// What the last few rounds of one building's road worked. What none of them asked for again is forgotten, so that it
/// holds about as much as one building needs; a change that is undone soon is still known.
final class Remembered implements Memo {
    private static final int ROUNDS = 6;
    /// A quarter of a megabyte each.
    private static final int MOST_ROOMY = 400;

    private static final class Kept {
        final Object answer;
        int round;

        Kept(Object answer) { this.answer = answer; }
    }

    private final Map<Object, Kept> all = new HashMap<>();
    /// The answers that take much room, those longest not asked for first: the machine may take them back.
    private final LinkedHashMap<Object, SoftReference<Object>> roomy = new LinkedHashMap<>(16, 0.75f, true);
    private int round;

    /// A new round begins.
    synchronized void round() {
        round++;
        for (Iterator<Kept> each = all.values().iterator(); each.hasNext();) if (each.next().round < round - ROUNDS) each.remove();
    }

    synchronized int size() { return all.size(); }

    @Override
    public <T> T of(Object key, Supplier<T> work) {
        Optional<T> known = known(key);
        if (known.isPresent()) return known.get();
        T answer = work.get();
        keep(key, answer);
        return answer;
    }

    private synchronized void keep(Object key, Object answer) {
        Kept kept = new Kept(answer);
        kept.round = round;
        all.put(key, kept);
    }

    @Override
    @SuppressWarnings("unchecked")
    public synchronized <T> Optional<T> known(Object key) {
        Kept kept = all.get(key);
        if (kept == null) return Optional.empty();
        kept.round = round;
        return Optional.of((T) kept.answer);
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T> T roomy(Object key, Supplier<T> work) {
        synchronized (this) {
            SoftReference<Object> kept = roomy.get(key);
            Object answer = kept == null ? null : kept.get();
            if (answer != null) return (T) answer;
        }
        T answer = work.get();
        synchronized (this) {
            roomy.put(key, new SoftReference<>(answer));
            if (roomy.size() > MOST_ROOMY) roomy.pollFirstEntry();
        }
        return answer;
    }

    @Override
    public int hands() { return Runtime.getRuntime().availableProcessors(); }

    @Override
    public <T> List<T> sideBySide(int count, IntFunction<T> work) { return Hands.parted(count, work); }
}
