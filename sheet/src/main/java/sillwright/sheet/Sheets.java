package sillwright.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import sillwright.Assessment;
import sillwright.work.Repair;

/// Writes everything that goes on paper into one folder.
public final class Sheets {
    private Sheets() {}

    /// Writes `dossier.pdf`, an `elevation-<side>.svg` for each side, a `repair-<id>.svg` for each repair, `order.csv`,
    /// `cuts.csv`, `work.ics` and `watch.ics`.
    ///
    /// @param dir      is made where it is not there
    /// @param progress told each file as it begins
    /// @return the files written, in that order
    public static List<Path> write(Assessment assessment, Path dir, Consumer<String> progress) throws IOException {
        Files.createDirectories(dir);
        List<Path> written = new ArrayList<>();
        Path dossier = dir.resolve("dossier.pdf");
        Dossier.write(assessment, dossier, progress);
        written.add(dossier);
        for (String side : assessment.survey().sides().keySet()) {
            progress.accept("elevation: " + side);
            written.add(text(dir, "elevation-" + fileName(side) + ".svg", Elevation.draw(assessment, side).file(), written));
        }
        for (Repair repair : assessment.work().repairs()) {
            progress.accept("repair: " + repair.id());
            written.add(text(dir, "repair-" + fileName(repair.id()) + ".svg", RepairDrawing.draw(repair, assessment.settings().units()).file(),
                    written));
        }
        progress.accept("tables and calendars");
        written.add(text(dir, "order.csv", OrderSheet.csv(assessment), written));
        written.add(text(dir, "cuts.csv", CutSheet.csv(assessment), written));
        written.add(text(dir, "work.ics", Calendar.work(assessment), written));
        written.add(text(dir, "watch.ics", Calendar.watch(assessment), written));
        return List.copyOf(written);
    }

    private static Path text(Path dir, String name, String text, List<Path> taken) throws IOException {
        Path file = dir.resolve(name);
        for (int i = 2; taken(file, taken); i++) file = dir.resolve(name.replaceFirst("(\\.[a-z]+)$", "-" + i + "$1"));
        return Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /// Counts names that differ by capitals alone as one: some file systems do.
    private static boolean taken(Path file, List<Path> taken) { return taken.stream().anyMatch(other ->
            other.toString().equalsIgnoreCase(file.toString())); }

    /// An id as part of a file name: letters, digits and hyphens, so that no id leads out of the folder.
    static String fileName(String id) {
        String plain = id.replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "unnamed" : plain.length() > 80 ? plain.substring(0, 80) : plain;
    }
}
