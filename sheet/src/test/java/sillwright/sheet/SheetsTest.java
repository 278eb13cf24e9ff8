package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import sillwright.measure.Units;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetsTest {
    @Test
    void every_sheet_is_written_and_named(@TempDir Path dir) throws Exception {
        List<String> said = new ArrayList<>();
        List<Path> written = Sheets.write(Porch.assessment(Units.US), dir.resolve("new/folder"), said::add);
        List<String> names = written.stream().map(path -> path.getFileName().toString()).toList();
        List<String> wanted = new ArrayList<>(List.of("dossier.pdf"));
        for (String side : List.of("south", "west")) wanted.addAll(List.of("elevation-" + side + ".svg", "elevation-" + side + ".dxf"));
        for (int i = 1; i <= 10; i++) wanted.addAll(List.of("repair-R" + i + ".svg", "repair-R" + i + ".dxf"));
        wanted.addAll(List.of("order.csv", "cuts.csv", "tables.xlsx", "building.geojson", "work.ics", "watch.ics"));
        assertEquals(wanted, names);
        for (Path file : written) assertTrue(Files.size(file) > 60, file.toString());
        assertTrue(said.contains("elevation: west") && said.contains("repair: R10"));
    }

    @Test
    void no_id_leads_a_file_out_of_the_folder() {
        assertEquals("etc-passwd", Sheets.fileName("../../etc/passwd"));
        assertEquals("unnamed", Sheets.fileName("../.."));
        assertEquals("s-d", Sheets.fileName("s/d"));
    }
}
