package sillwright.page;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

import sillwright.measure.Memo;

/// All processors of this machine for one road, and nothing remembered.
public final class Hands implements Memo {
    @Override
    public <T> T of(Object key, Supplier<T> work) { return work.get(); }

    @Override
    public <T> Optional<T> known(Object key) { return Optional.empty(); }

    @Override
    public int hands() { return Runtime.getRuntime().availableProcessors(); }

    /// By index over the common pool, joined by index.
    @Override
    public <T> List<T> sideBySide(int count, IntFunction<T> work) { return parted(count, work); }

    static <T> List<T> parted(int count, IntFunction<T> work) { return IntStream.range(0, count).parallel().mapToObj(work).toList(); }
}
