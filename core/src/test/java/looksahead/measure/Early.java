package looksahead.measure;

import looksahead.walk.Later;

/// Knows what comes after it: [sillwright] forbids it, and its test must notice.
public final class Early {
    public Later later;
}
