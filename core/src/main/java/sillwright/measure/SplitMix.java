package sillwright.measure;

import java.util.random.RandomGenerator;

/// A small generator of its own, for a browser lacks the one of the library. Its bits are the same everywhere; the normal curve over them is the library's, and a browser's library has another.
///
/// Source: Steele, Lea and Flood, Fast splittable pseudorandom number generators (2014) (from memory).
public final class SplitMix implements RandomGenerator {
    private long state;

    public SplitMix(long seed) { state = seed; }

    @Override
    public long nextLong() {
        long z = state += 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
