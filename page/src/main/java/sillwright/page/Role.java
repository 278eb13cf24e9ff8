package sillwright.page;

import java.util.Locale;

/// What somebody may do with a book, each with all that those before it may.
enum Role {
    /// Look at everything.
    READER,
    /// Add entries and photos.
    SURVEYOR,
    /// Let devices in and shut them out.
    OWNER;

    boolean may(Role needed) { return compareTo(needed) >= 0; }

    String word() { return name().toLowerCase(Locale.ROOT); }
}
