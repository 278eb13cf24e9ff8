package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillwright.measure.Refused;
import sillwright.walk.Survey;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ReadingsTest {
    private static final String TABLE = """
            # an invented table of readings
            at,member,face,along,across,depth [mm],reach,reading,wood,device
            2026-04-20,sill-1,top,3 in,2 in,12,4 in,19%,52F,meter-1
            2026-04-20 09:30,sill-1,top,4 in,2 in,,,21 %,,meter-1
            2026-04-20T09:31:00+02:00,sill-1,front,4 in,1 in,0,100mm,,,meter-1
            """;

    @TempDir
    Path folder;

    private Import.Taken take(Book book, String table) throws IOException {
        return Import.from(book, Files.writeString(folder.resolve("readings.csv"), table), Optional.of("shed"));
    }

    private Book book() {
        Book book = Book.begin(Store.SQLITE.fresh(folder));
        book.append("shed", BookTest.shed());
        return book;
    }

    @Test
    void readings_of_another_tool_stand_in_the_survey() throws IOException {
        try (Book book = book()) {
            assertEquals(new Import.Taken("shed", new Kept(4, 0, List.of()), 0, List.of()), take(book, TABLE));
            Survey survey = book.read("shed").fold();
            assertEquals(List.of(), survey.faults());
            assertEquals(4, survey.probes().size());
            assertEquals(3, survey.moistures().size());
            var probe = survey.probes().stream().filter(p -> Math.abs(p.what().depthMm() - 12) < 1e-9).findFirst().orElseThrow();
            assertEquals(Instant.parse("2026-04-20T12:00:00Z").toEpochMilli(), probe.wallMs());
            assertEquals("12 mm", probe.what().depth().text());
            assertTrue(survey.moistures().stream().anyMatch(m -> m.wallMs() == Instant.parse("2026-04-20T09:30:00Z").toEpochMilli() && Math.abs(m.what().reading().own() - 0.21) < 1e-12));
            assertTrue(survey.probes().stream().anyMatch(m -> m.wallMs() == Instant.parse("2026-04-20T07:31:00Z").toEpochMilli()));
            assertTrue(Doctor.examine(book).clean());
        }
    }

    @Test
    void the_same_table_with_more_rows_brings_the_new_rows_alone() throws IOException {
        try (Book book = book()) {
            take(book, TABLE);
            String more = TABLE.replace("2026-04-20,sill-1", "2026-04-19,sill-1,top,3 in,2 in,11,4 in,,,meter-1\n2026-04-20,sill-1");
            assertEquals(new Kept(1, 4, List.of()), take(book, more).kept());
            String twice = TABLE + TABLE.lines().toList().getLast() + "\n";
            assertEquals(new Kept(1, 4, List.of()), take(book, twice).kept(), "a row that stands twice was read twice");
        }
    }

    @Test
    void a_logger_s_air_stands_for_the_moisture_that_wood_comes_to_rest_at_in_it() throws IOException {
        try (Book book = book()) {
            String logger = "at,member,face,along,across,temp [C],rh [%],device\n2026-04-20 10:00,sill-1,top,4 in,2 in,21.1,65,logger-1\n2026-04-20 11:00,sill-1,top,4 in,2 in,21.1,80,logger-1\n";
            assertEquals(new Kept(2, 0, List.of()), take(book, logger).kept());
            // Wood Handbook, table 4-2, row 70 F: 12.0 and 16.0 % (from memory).
            List<Double> moistures = book.read("shed").fold().moistures().stream().map(one -> one.what().reading().own()).toList();
            assertTrue(moistures.stream().anyMatch(one -> Math.abs(one - 0.12) < 0.0016) && moistures.stream().anyMatch(one -> Math.abs(one - 0.16) < 0.0016), moistures::toString);
            Import.Taken bad = take(book, "at,member,face,along,across,temp [C],rh [%],device\n2026-04-20 10:00,sill-1,top,4 in,2 in,21.1,130,logger-1\n2026-04-20 10:00,sill-1,top,4 in,2 in,,60,logger-1\n");
            assertEquals(List.of("line 2 rh", "line 3 temp"), bad.faults().stream().map(f -> f.entry() + " " + f.field()).toList());
        }
    }

    @Test
    void every_bad_row_is_told_at_once_and_none_is_taken() throws IOException {
        try (Book book = book()) {
            String bad = TABLE + """
                    yesterday,sill-1,top,3 in,2 in,1,4 in,,,
                    2026-04-20,sill-9,top,3 in,2 in,1,4 in,,,
                    2026-04-20,sill-1,left,3 in,2 in,1,4 in,,,
                    2026-04-20,sill-1,top,9 ft,2 in,1,4 in,,,
                    2026-04-20,sill-1,top,3,2 in,1,4 in,,,
                    2026-04-20,sill-1,top,3 in,2 in,,,,,
                    2026-04-20,sill-1,top,3 in,2 in,200,4 in,190%,,
                    2026-04-20,,side,3 in,,1,,,,
                    """;
            Import.Taken taken = take(book, bad);
            assertEquals(Kept.NOTHING, taken.kept());
            List<String> told = taken.faults().stream().map(f -> f.entry() + " " + f.field()).toList();
            assertEquals(List.of("line 6 at", "line 7 member", "line 8 face", "line 9 along", "line 10 along", "line 11 ", "line 12 depth", "line 12 reading",
                    "line 13 member", "line 13 face", "line 13 across", "line 13 reach"), told);
            assertEquals(10, book.read("shed").entries().size());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"at;member;face|semicolons", "at,member,face,along,across|depth and reach, or reading", "at,member,face,along,reading|across",
        "at,member,face,along,across,reeding|did you mean reading", "at,member,face,along,across,reading,reading [%]|two columns"})
    void a_table_of_another_kind_is_refused(String header, String words) throws IOException {
        try (Book book = book()) {
            Refused refused = assertThrows(Refused.class, () -> take(book, header + "\n1\n"));
            assertTrue(refused.getMessage().contains(words), refused.getMessage());
        }
    }

    @Test
    void a_table_must_say_whose_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("readings.csv"), TABLE);
        try (Book book = book()) {
            assertTrue(assertThrows(Refused.class, () -> Import.from(book, file, Optional.empty())).getMessage().contains("--building"));
        }
    }
}
