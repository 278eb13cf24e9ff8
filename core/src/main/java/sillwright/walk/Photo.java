package sillwright.walk;

import java.util.Optional;

import sillwright.measure.Refused;

/// A picture, by the name of its file beside the survey.
///
/// @param file    `photos/s-post-3.jpg`
/// @param side    what side it shows
/// @param pin     the point it shows, if one
/// @param caption in free words
public record Photo(String file, String side, Optional<Spot> pin, String caption) implements Body {
    public Photo {
        if (file.isEmpty() || file.startsWith("/") || file.contains("..") || file.contains("\\"))
            throw new Refused("file", "'{}' is not the name of a file beside the survey", "write a path below it, such as photos/post-3.jpg", file);
    }
}
