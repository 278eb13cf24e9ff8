package sillwright.desk;

import java.nio.file.Files;
import java.nio.file.Path;

import sillwright.measure.Refused;

/// Where the program's own files are: the folder that the launcher stands in.
final class Home {
    private Home() {}

    /// @throws Refused when the launcher did not say, and the folder above does not hold the examples either
    static Path folder() {
        String told = System.getProperty("sillwright.home");
        Path folder = told != null ? Path.of(told) : Path.of("").toAbsolutePath();
        for (Path at = folder; at != null; at = at.getParent()) if (Files.isDirectory(at.resolve("examples"))) return at;
        throw new Refused(folder.toString(), "the program's examples are not here", "run it by ./sillwright in its own folder");
    }
}
