package looksahead.walk;

import looksahead.measure.Early;

/// Knows what comes before it, which is allowed, and is known by it, which is not.
public final class Later {
    public Early early;
}
