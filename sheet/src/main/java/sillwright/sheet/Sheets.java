package sillwright.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import sillwright.Assessment;
import sillwright.walk.Member;
import sillwright.walk.Profile;
import sillwright.work.Repair;
import sillwright.work.WorkFindings.SafeSide;

/// Writes everything that goes on paper into one folder.
public final class Sheets {
    private Sheets() {}

    /// Writes `dossier.pdf`, an `elevation-<side>` for each side and a `repair-<id>` for each repair as `.svg` and `.dxf`, a `safe-<side>.svg` for each side with work, a `profile-<member>.svg` and `.pdf` for each
    /// outline, `order.csv`,
    /// `cuts.csv`, `tables.xlsx`, `building.geojson`, `work.ics` and `watch.ics`.
    ///
    /// @param dir      is made where it is not there
    /// @param progress told each file as it begins
    /// @return the files written, in that order
    public static List<Path> write(Assessment assessment, Path dir, Consumer<String> progress) throws IOException {
        return write(assessment, List.of(Print.whole(assessment.settings().units())), Optional.empty(), dir, progress);
    }

    /// @param prints a PDF for each
    /// @param at     where the building stands, for the map; left out of it where empty
    public static List<Path> write(Assessment assessment, List<Print> prints, Optional<GroupMap.Position> at, Path dir, Consumer<String> progress) throws IOException {
        Files.createDirectories(dir);
        List<Path> written = new ArrayList<>();
        for (Print print : prints) {
            Path file = dir.resolve(print.reader().file());
            Dossier.write(assessment, print, file, progress);
            written.add(file);
        }
        for (String side : assessment.survey().sides().keySet()) {
            progress.accept("elevation: " + side);
            Drawing drawing = Elevation.draw(assessment, side);
            written.add(text(dir, "elevation-" + fileName(side) + ".svg", drawing.file(), written));
            written.add(text(dir, "elevation-" + fileName(side) + ".dxf", Dxf.of(drawing), written));
        }
        for (Repair repair : assessment.work().repairs()) {
            progress.accept("repair: " + repair.id());
            Drawing drawing = RepairDrawing.draw(repair, assessment.settings().units());
            written.add(text(dir, "repair-" + fileName(repair.id()) + ".svg", drawing.file(), written));
            written.add(text(dir, "repair-" + fileName(repair.id()) + ".dxf", Dxf.of(drawing), written));
        }
        for (SafeSide side : assessment.work().safety()) {
            Optional<Drawing> drawing = SafeDrawing.draw(assessment, side);
            if (drawing.isPresent()) written.add(text(dir, "safe-" + fileName(side.side()) + ".svg", drawing.get().file(), written));
        }
        for (Profile profile : latest(assessment)) {
            Member member = assessment.survey().members().get(profile.member());
            progress.accept("outline: " + member.id());
            Drawing drawing = ProfileDrawing.draw(profile, member, assessment.settings().units());
            written.add(text(dir, ProfileDrawing.file(member) + ".svg", drawing.file(), written));
            Path pdf = dir.resolve(ProfileDrawing.file(member) + ".pdf");
            Dossier.page(drawing, pdf);
            written.add(pdf);
        }
        progress.accept("tables and calendars");
        written.add(text(dir, "order.csv", OrderSheet.csv(assessment), written));
        written.add(text(dir, "cuts.csv", CutSheet.csv(assessment), written));
        Path tables = dir.resolve("tables.xlsx");
        try (OutputStream out = Files.newOutputStream(tables)) {
            Workbook.write(assessment, out);
        }
        written.add(tables);
        written.add(text(dir, "building.geojson", GroupMap.geojson(List.of(new GroupMap.Placed(assessment, at))), written));
        written.add(text(dir, "work.ics", Calendar.work(assessment), written));
        written.add(text(dir, "watch.ics", Calendar.watch(assessment), written));
        return List.copyOf(written);
    }

    /// Of each member the outline that was taken last.
    private static List<Profile> latest(Assessment assessment) {
        return assessment.survey().members().keySet().stream().flatMap(id -> assessment.survey().profileOf(id).stream()).toList();
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
