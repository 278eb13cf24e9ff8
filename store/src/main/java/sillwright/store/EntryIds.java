package sillwright.store;

import java.util.UUID;
import java.util.random.RandomGenerator;

/// Ids for entries: UUIDs of version 7, which sort by the time they were made.
final class EntryIds {
    private EntryIds() {}

    /// 48 bits of time, the version, 12 bits of chance, the variant, 62 bits of chance.
    /// Source: RFC 9562, section 5.7 (from memory).
    static String at(long wallMs, RandomGenerator random) { return of(wallMs, random.nextLong(), random.nextLong()); }

    /// @param a its low 12 bits are used
    /// @param b its low 62 bits are used
    static String of(long wallMs, long a, long b) {
        return new UUID(wallMs << 16 | 0x7000 | a & 0xfff, 0x8000_0000_0000_0000L | b & 0x3fff_ffff_ffff_ffffL).toString();
    }

    /// True of a UUID of version 7 as it is written: lower case, with its variant.
    static boolean right(String id) { return id.matches("[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}"); }
}
