package sillwright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/// What the caller lends to the work: what was worked before, so that it is not worked again, and hands to work side by side.
///
/// What is remembered are results of pure functions, each under all that it depends on.
/// A key is a record of the question and of everything the answer rests on, so that equal keys have equal answers; what a
/// function is not given in its key it must not look at.
public interface Memo {
    /// Remembers nothing.
    Memo NONE = new Memo() {
        @Override
        public <T> T of(Object key, Supplier<T> work) { return work.get(); }

        @Override
        public <T> java.util.Optional<T> known(Object key) { return java.util.Optional.empty(); }
    };

    /// The answer under this key, worked now where it is not known.
    <T> T of(Object key, Supplier<T> work);

    /// The answer under this key, where it is known.
    <T> java.util.Optional<T> known(Object key);

    /// The same for an answer that takes much room: whoever remembers may forget it at any time.
    default <T> T roomy(Object key, Supplier<T> work) { return work.get(); }

    /// How many answers the caller can have worked at once.
    default int hands() { return 1; }

    /// So many answers, none of which hangs on another, in their order: one after the other, or side by side where the caller has hands for it. Remembers nothing.
    default <T> List<T> sideBySide(int count, IntFunction<T> work) {
        List<T> all = new ArrayList<>();
        for (int i = 0; i < count; i++) all.add(work.apply(i));
        return all;
    }
}
