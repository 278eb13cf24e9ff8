package sillwright.store;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillwright.measure.Refused;
import sillwright.walk.Entry;
import sillwright.walk.Photo;

@DisplayNameGeneration(ReplaceUnderscores.class)
class ImportTest {
    private static final String SHED = SurveyFileTest.SHED;

    @TempDir
    Path folder;
    private Book book;

    @BeforeEach
    void begin() { book = Book.begin(Store.SQLITE.fresh(folder)); }

    @org.junit.jupiter.api.AfterEach
    void close() { book.close(); }

    private Path zip(String name, Map<String, byte[]> files) throws IOException {
        Path path = folder.resolve(name);
        try (var zip = new ZipOutputStream(Files.newOutputStream(path))) {
            for (var file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return path;
    }

    private static byte[] bytes(String text) { return text.getBytes(java.nio.charset.StandardCharsets.UTF_8); }

    private static Entry photo(String id, String file) { return new Entry(id, new Entry.Stamp(1_776_502_900_000L, 0), "", "", new Photo(file, "south", Optional.empty(), "")); }

    @ParameterizedTest
    @EnumSource
    void what_is_exported_with_its_photos_is_imported_the_same(Store store) throws IOException {
        for (long seed = 1; seed <= 10; seed++) {
            List<Entry> history = new ArrayList<>(Histories.of(new Random(seed), 40));
            try (Book from = Book.begin(store.fresh(folder)); Book into = Book.begin(store.fresh(folder))) {
                history.add(photo("p", from.photos().keep(PictureTest.jpeg(12, 5))));
                from.append("shed", history);
                from.take("shed", new SurveyFile.Held("x", List.of(), List.of(), List.of("not\u0000 an entry", "{\"id\":3}")));
                for (int i = 0; i < 4; i++) from.photos().keep("shed", "photos/" + i / 2 + ".jpg", PictureTest.jpeg(10 + i, 7));
                Path file = folder.resolve(store + "-" + seed + ".survey.zip");
                Export.Written written = Export.write(from, "shed", file);
                assertEquals(5, written.photos());
                assertEquals(0, written.left());
                Import.Taken taken = Import.from(into, file, Optional.empty());
                assertEquals("shed", taken.building());
                assertEquals(List.of(), taken.faults());
                assertEquals(new HashSet<>(from.read("shed").entries()), new HashSet<>(into.read("shed").entries()), "seed " + seed);
                assertEquals(from.read("shed").setAside(), into.read("shed").setAside());
                assertEquals(from.read(Ledger::everyPhoto).toString(), into.read(Ledger::everyPhoto).toString());
                assertEquals(from.photos().missing("shed"), into.photos().missing("shed"));
                Kept again = Import.from(into, file, Optional.empty()).kept();
                assertEquals(0, again.fresh());
                Path second = folder.resolve(store + "-again-" + seed + ".survey.zip");
                Export.write(from, "shed", second);
                assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(second), "the same book gives the same bytes");
            }
        }
    }

    @Test
    void a_survey_brings_the_photos_beside_it() throws IOException {
        Path home = Files.createDirectories(folder.resolve("home/photos")).getParent();
        List<Entry> entries = new ArrayList<>(BookTest.shed());
        entries.add(photo("a", "photos/there.jpg"));
        entries.add(photo("b", "photos/not-there.jpg"));
        entries.add(photo("c", "photos/text.jpg"));
        entries.add(photo("d", "photos/link.jpg"));
        Path file = home.resolve("any name.survey.json");
        SurveyFile.write(file, "n", entries);
        Files.write(home.resolve("photos/there.jpg"), PictureTest.jpeg(8, 8));
        Files.writeString(home.resolve("photos/text.jpg"), "no picture");
        Path outside = Files.write(folder.resolve("outside.jpg"), PictureTest.jpeg(9, 8));
        Files.createSymbolicLink(home.resolve("photos/link.jpg"), outside);
        Import.Taken taken = Import.from(book, file, Optional.empty());
        assertEquals("shed", taken.building());
        assertEquals(14, taken.kept().fresh());
        assertEquals(1, taken.photos());
        assertEquals(List.of("photos/link.jpg", "photos/not-there.jpg", "photos/text.jpg"), taken.faults().stream().map(f -> f.entry()).toList());
        assertEquals(List.of("photos/link.jpg", "photos/not-there.jpg", "photos/text.jpg"), book.photos().missing("shed"));
        assertArrayEquals(PictureTest.jpeg(8, 8), book.photos().get("shed", "photos/there.jpg").orElseThrow().bytes());
    }

    @Test
    void one_bad_entry_costs_no_other_and_is_kept_to_be_mended() throws IOException {
        Path file = Files.writeString(folder.resolve("shed.survey.json"), SHED.replace("icicles", "icecles"));
        Import.Taken taken = Import.from(book, file, Optional.of("my-shed"));
        assertEquals(9, taken.kept().fresh());
        assertTrue(taken.faults().getFirst().line().contains("icecles"));
        assertEquals(1, book.read("my-shed").setAside().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../evil.jpg", "photos/../../evil.jpg", "/etc/evil.jpg", "photos\\evil.jpg", "C:/evil.jpg", "a/./b.jpg", "x\u0007.jpg"})
    void a_name_that_leads_out_of_the_zip_refuses_the_whole(String name) throws IOException {
        Path file = zip("evil.zip", Map.of("shed.survey.json", bytes(SHED), name, PictureTest.jpeg(5, 5)));
        Refused refused = assertThrows(Refused.class, () -> Import.from(book, file, Optional.empty()));
        assertTrue(refused.getMessage().contains("leads out of the zip"), refused.getMessage());
        nothingWasKept();
    }

    private void nothingWasKept() {
        assertEquals(List.of(), book.buildings());
        assertEquals("[]", book.read(Ledger::everyPhoto).toString());
    }

    @Test
    void a_file_that_unpacks_to_far_more_than_it_is_refuses_the_whole() throws IOException {
        Path ratio = zip("ratio.zip", Map.of("shed.survey.json", bytes(SHED), "photos/a.jpg", PictureTest.jpeg(5, 5), "photos/z.jpg", new byte[20 << 20]));
        assertTrue(assertThrows(Refused.class, () -> Import.from(book, ratio, Optional.empty())).getMessage().contains("100 times"));
        Path large = folder.resolve("large.zip");
        try (var zip = new ZipOutputStream(Files.newOutputStream(large))) {
            zip.setLevel(Deflater.NO_COMPRESSION);
            zip.putNextEntry(new ZipEntry("shed.survey.json"));
            zip.write(bytes(SHED));
            zip.putNextEntry(new ZipEntry("photos/a.jpg"));
            zip.write(new byte[Picture.LARGEST + 1]);
        }
        assertTrue(assertThrows(Refused.class, () -> Import.from(book, large, Optional.empty())).getMessage().contains("more than 32 MB"));
        Path json = zip("json.zip", Map.of("shed.survey.json", bytes(" ".repeat(70 << 20))));
        assertThrows(Refused.class, () -> Import.from(book, json, Optional.empty()));
        nothingWasKept();
    }

    @Test
    void a_size_that_the_zip_lies_about_is_not_believed() throws IOException {
        Path file = zip("lies.zip", new TreeMap<>(Map.of("shed.survey.json", bytes(SHED), "photos/z.jpg", new byte[20 << 20])));
        byte[] all = Files.readAllBytes(file);
        // The list at the zip's end is told that every file unpacks to 10 bytes.
        var buffer = java.nio.ByteBuffer.wrap(all).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        int changed = 0;
        for (int i = 0; i + 46 < all.length; i++) {
            if (buffer.getInt(i) != 0x02014b50) continue;
            buffer.putInt(i + 24, 10);
            changed++;
        }
        assertEquals(2, changed);
        Files.write(file, all);
        assertThrows(Refused.class, () -> Import.from(book, file, Optional.empty()));
        nothingWasKept();
    }

    @Test
    void too_many_files_no_survey_two_surveys_or_a_broken_zip_are_refused() throws IOException {
        Map<String, byte[]> many = new HashMap<>(Map.of("shed.survey.json", bytes(SHED)));
        for (int i = 0; i < Zip.MOST_FILES; i++) many.put("f" + i, new byte[0]);
        Path none = zip("none.zip", Map.of("photos/a.jpg", PictureTest.jpeg(5, 5)));
        Path two = zip("two.zip", Map.of("a.survey.json", bytes(SHED), "b.survey.json", bytes(SHED)));
        Path broken = zip("broken.zip", Map.of("shed.survey.json", bytes(SHED)));
        byte[] all = Files.readAllBytes(broken);
        Files.write(broken, Arrays.copyOf(all, all.length / 2));
        for (Path file : List.of(zip("many.zip", many), none, two, broken)) assertThrows(Refused.class, () -> Import.from(book, file, Optional.empty()), file.toString());
        for (int at = 40; at < all.length; at += 3) {
            byte[] changed = all.clone();
            changed[at] ^= 0x55;
            Path file = Files.write(folder.resolve("changed.zip"), changed);
            try {
                Import.from(book, file, Optional.of("changed"));
            } catch (Refused refused) {
                assertTrue(!refused.mend().isEmpty());
            }
        }
    }

    @Test
    void what_is_no_picture_is_left_out_and_named() throws IOException {
        Path file = zip("shed.zip", Map.of("shed.survey.json", bytes(SHED), "photos/a.jpg", PictureTest.jpeg(5, 5), "photos/page.html", bytes("<script>"), "notes.txt", bytes("x")));
        Import.Taken taken = Import.from(book, file, Optional.empty());
        assertEquals(1, taken.photos());
        assertEquals(Set.of("photos/page.html", "notes.txt"), taken.faults().stream().map(f -> f.entry()).collect(Collectors.toSet()));
        assertEquals(10, taken.kept().fresh());
    }

    @Test
    void a_plain_export_says_what_did_not_go_along() throws IOException {
        book.append("shed", BookTest.shed());
        book.append("shed", photo("p", "photos/none.jpg"));
        book.photos().keep("shed", "photos/1.jpg", PictureTest.jpeg(5, 5));
        Path file = folder.resolve("out/shed.survey.json");
        assertEquals(new Export.Written(file, 11, 0, List.of("photos/none.jpg"), 1), Export.write(book, "shed", file));
        assertEquals(11, SurveyFile.read(file).entries().size());
        assertThrows(Refused.class, () -> Export.write(book, "barn", file));
        try (ZipFile zip = new ZipFile(Export.write(book, "shed", folder.resolve("shed.zip")).file().toFile())) {
            assertEquals(List.of("shed.survey.json", "photos/1.jpg"), zip.stream().map(ZipEntry::getName).toList());
        }
    }
}
