package sillwright.desk;

import module java.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// The book commands as they are typed: what they say, what they leave on the disk, and the code they end with.
@DisplayNameGeneration(ReplaceUnderscores.class)
class BookCommandTest {
    private static final String BUILDING = "one-sill";

    @TempDir
    Path folder;
    private Path book;

    @BeforeEach
    void place() { book = folder.resolve("house.book"); }

    private Said book(String... args) {
        List<String> all = new ArrayList<>(List.of("book"));
        all.addAll(List.of(args));
        all.addAll(List.of("--book", book.toString()));
        return Said.by(all.toArray(String[]::new));
    }

    private static Path example(String name) { return ExamplesTest.FOLDER.resolve(name + ".survey.json"); }

    private static long entriesIn(Path survey) throws IOException {
        return Files.readAllLines(survey).stream().filter(line -> line.startsWith("{\"id\":")).count();
    }

    private static Said worked(Said said) {
        assertEquals(0, said.code(), said.out() + said.err());
        assertEquals("", said.err());
        return said;
    }

    /// Nothing done, and one line that says where, what and how to mend it.
    private static void refused(Said said, String... words) {
        assertEquals(Main.BAD_INPUT, said.code(), said.out() + said.err());
        assertEquals(1, said.err().strip().lines().count(), said.err());
        assertTrue(said.err().startsWith("sillwright: ") && said.err().contains("; "), said.err());
        for (String word : words) assertTrue(said.err().contains(word), word + " is not in: " + said.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"one-sill", "fascia-under-gutter", "porch-alone", "fallow-brook-house"})
    void what_is_taken_in_and_written_out_again_gives_the_same_walk(String name) throws IOException {
        Path out = folder.resolve("again/" + name + ".survey.json");
        long entries = entriesIn(example(name));
        Said in = worked(book("import", example(name).toString()));
        assertTrue(in.out().contains("into " + name + ": " + entries + " new, 0 known already"), in.out());
        assertTrue(worked(book("import", example(name).toString())).out().contains("0 new, " + entries + " known already"));
        assertTrue(worked(book("list")).out().startsWith(name + "  " + entries + " entries"));
        assertTrue(worked(book("export", name, "-o", out.toString())).out().contains(entries + " entries"));
        assertEquals(entryLines(example(name)), entryLines(out), "every entry to the letter");
        assertEquals(Said.by("walk", example(name).toString()).out(), Said.by("walk", out.toString()).out());
    }

    private static Set<String> entryLines(Path survey) throws IOException {
        return Files.readAllLines(survey).stream().filter(line -> line.startsWith("{\"id\":")).map(line -> line.replaceFirst(",$", "")).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void one_file_among_several_that_is_no_survey_ends_with_2_and_what_came_before_is_kept() throws IOException {
        Path text = Files.writeString(folder.resolve("notes.survey.json"), "not a survey");
        refused(book("import", example("one-sill").toString(), text.toString()), "notes.survey.json");
        assertTrue(worked(book("list")).out().startsWith(BUILDING));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {
        "an entry with a wrong measure|\"depth\":\"|\"depth\":\"3 oz |depth|3 oz",
        "an entry with a field mistyped|\"along\":|\"alnog\":|did you mean along|alnog",
    })
    void one_bad_entry_is_set_aside_named_and_still_there_in_the_zip(String what, String good, String bad, String said, String kept) throws IOException {
        String text = Files.readString(example(BUILDING));
        Path file = Files.writeString(folder.resolve("bad.survey.json"), text.replaceFirst(good, bad));
        assertFalse(text.equals(Files.readString(file)));
        Said in = book("import", file.toString());
        assertEquals(Main.SET_ASIDE, in.code());
        assertTrue(in.err().contains("bad.survey.json, entry ") && in.err().contains(said), in.err());
        assertTrue(in.out().contains(entriesIn(file) - 1 + " new"), in.out());
        Said left = worked(book("export", BUILDING, "-o", folder.resolve("plain.survey.json").toString()));
        assertTrue(left.out().contains("Left behind: 1"), left.out());
        worked(book("export", "-o", folder.resolve("all.survey.zip").toString()));
        try (ZipFile zip = new ZipFile(folder.resolve("all.survey.zip").toFile())) {
            ZipEntry aside = zip.stream().filter(entry -> entry.getName().startsWith("set-aside/")).findFirst().orElseThrow();
            assertTrue(new String(zip.getInputStream(aside).readAllBytes(), java.nio.charset.StandardCharsets.UTF_8).contains(kept));
        }
        Said doctor = book("doctor");
        assertTrue(doctor.out().contains("set aside ") && doctor.out().contains("The book is whole"), doctor.out());
    }

    @Test
    void a_zip_with_a_photo_comes_back_with_its_photo() throws IOException {
        Path zip = folder.resolve("with-photo.zip");
        byte[] picture = picture();
        String photo = "{\"id\":\"0196a4b0-0000-7000-8000-000000000001\",\"at\":\"2026-05-06T09:00:00Z\",\"kind\":\"photo\",\"says\":{\"file\":\"photos/sill.png\",\"side\":\"%s\"}},\n";
        String survey = Files.readString(example(BUILDING));
        String side = survey.replaceFirst("(?s).*?\"kind\":\"side\",\"says\":\\{\"id\":\"([^\"]*)\".*", "$1");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry(BUILDING + ".survey.json"));
            out.write(survey.replace("\"entries\": [\n", "\"entries\": [\n" + photo.formatted(side)).getBytes(java.nio.charset.StandardCharsets.UTF_8));
            out.putNextEntry(new ZipEntry("photos/sill.png"));
            out.write(picture);
        }
        assertTrue(worked(book("import", zip.toString())).out().contains("1 photo"));
        assertTrue(worked(book("photos")).out().startsWith("photos/sill.png  "));
        Path out = folder.resolve("out.survey.zip");
        assertTrue(worked(book("export", "-o", out.toString())).out().contains("1 photo"));
        try (ZipFile again = new ZipFile(out.toFile())) {
            assertTrue(Arrays.equals(picture, again.getInputStream(again.getEntry("photos/sill.png")).readAllBytes()));
        }
    }

    private static byte[] picture() throws IOException {
        var image = new java.awt.image.BufferedImage(6, 4, java.awt.image.BufferedImage.TYPE_INT_RGB);
        var bytes = new ByteArrayOutputStream();
        assertTrue(javax.imageio.ImageIO.write(image, "png", bytes));
        return bytes.toByteArray();
    }

    @Test
    void a_photo_that_nobody_sent_is_named_and_told_by_the_code() throws IOException {
        String survey = Files.readString(example(BUILDING));
        String side = survey.replaceFirst("(?s).*?\"kind\":\"side\",\"says\":\\{\"id\":\"([^\"]*)\".*", "$1");
        Path file = Files.writeString(folder.resolve("missing.survey.json"), survey.replace("\"entries\": [\n",
                "\"entries\": [\n{\"id\":\"0196a4b0-0000-7000-8000-000000000001\",\"at\":\"2026-05-06T09:00:00Z\",\"kind\":\"photo\",\"says\":{\"file\":\"photos/gone.jpg\",\"side\":\"" + side + "\"}},\n"));
        Said in = book("import", file.toString());
        assertEquals(0, in.code(), in.err());
        assertTrue(in.err().contains("photos/gone.jpg") && in.err().contains("not beside the survey"), in.err());
        Said photos = book("photos");
        assertEquals(Main.SET_ASIDE, photos.code());
        assertTrue(photos.out().contains("photos/gone.jpg  not in the book"), photos.out());
    }

    @Test
    void a_zip_whose_names_lead_out_of_it_leaves_nothing_behind() throws IOException {
        Path zip = folder.resolve("evil.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.putNextEntry(new ZipEntry(BUILDING + ".survey.json"));
            out.write(Files.readAllBytes(example(BUILDING)));
            out.putNextEntry(new ZipEntry("../outside.png"));
            out.write(picture());
        }
        refused(book("import", zip.toString()), "evil.zip", "leads out of the zip");
        assertEquals("", worked(book("list")).out());
        assertFalse(Files.exists(folder.getParent().resolve("outside.png")));
    }

    @Test
    void a_table_of_readings_is_taken_whole_or_not_at_all() throws IOException {
        worked(book("import", example("porch-alone").toString()));
        Path good = Files.writeString(folder.resolve("meter.csv"), "at,member,face,along [mm],across [mm],reading\n2026-05-01,p-post-1,front,40,50,21%\n2026-05-01,p-post-1,front,400,50,15%\n");
        refused(book("import", good.toString()), "meter.csv", "--building");
        assertTrue(worked(book("import", good.toString(), "--building", "porch-alone")).out().contains("2 new"));
        assertTrue(worked(book("import", good.toString(), "--building", "porch-alone")).out().contains("0 new, 2 known already"));
        Path bad = Files.writeString(folder.resolve("bad.csv"), "at,member,face,along [mm],across [mm],reading\n2026-05-02,p-post-1,front,40,50,22%\n2026-05-02,p-post-9,front,40,50,21%\n2026-05-02,p-post-1,front,40,50,wet\n");
        Said said = book("import", bad.toString(), "--building", "porch-alone");
        assertEquals(Main.SET_ASIDE, said.code());
        assertTrue(said.err().contains("p-post-9") && said.err().contains("wet"), said.err());
        assertTrue(said.out().contains("0 new"), said.out());
    }

    @Test
    void a_backup_is_a_book_and_is_never_written_over_another() throws IOException {
        worked(book("import", example("porch-alone").toString()));
        Path copy = folder.resolve("copy.book");
        assertTrue(worked(book("backup", copy.toString())).out().contains("read again and found the same"));
        byte[] before = Files.readAllBytes(copy);
        refused(book("backup", copy.toString()), "copy.book", "already");
        assertTrue(Arrays.equals(before, Files.readAllBytes(copy)));
        assertEquals(worked(book("list")).out(), worked(Said.by("book", "list", "--book", copy.toString())).out());
        assertTrue(worked(Said.by("book", "doctor", "--book", copy.toString())).out().contains("Nothing is wrong."));
    }

    @Test
    void two_books_merged_either_way_say_the_same() throws IOException {
        List<String> lines = Files.readAllLines(example("porch-alone"));
        Path one = half(lines, 0, "one.survey.json"), two = half(lines, 1, "two.survey.json");
        Path left = folder.resolve("left.book"), right = folder.resolve("right.book");
        worked(Said.by("book", "import", one.toString(), "--building", "porch-alone", "--book", left.toString()));
        worked(Said.by("book", "import", two.toString(), "--building", "porch-alone", "--book", right.toString()));
        worked(Said.by("book", "merge", left.toString(), "--book", book.toString()));
        worked(Said.by("book", "merge", right.toString(), "--book", book.toString()));
        assertTrue(worked(Said.by("book", "merge", right.toString(), "--book", book.toString())).out().startsWith("0 new"));
        worked(Said.by("book", "merge", right.toString(), "--book", left.toString()));
        Path a = folder.resolve("a.survey.json"), b = folder.resolve("b.survey.json");
        worked(book("export", "-o", a.toString()));
        worked(Said.by("book", "export", "-o", b.toString(), "--book", left.toString()));
        assertEquals(Files.readString(a), Files.readString(b), "the same bytes");
        assertEquals(entryLines(example("porch-alone")), entryLines(a));
    }

    /// Every second entry, so that each half names members that only the other describes.
    private Path half(List<String> lines, int which, String name) throws IOException {
        List<String> entries = lines.stream().filter(line -> line.startsWith("{\"id\":")).map(line -> line.replaceFirst(",$", "")).toList();
        List<String> kept = IntStream.range(0, entries.size()).filter(i -> i % 2 == which).mapToObj(entries::get).toList();
        return Files.writeString(folder.resolve(name), "{\"format\":\"sillwright-survey\",\"version\":1,\"entries\":[\n" + String.join(",\n", kept) + "\n]}\n");
    }

    @Test
    void the_doctor_finds_a_byte_that_changed_on_the_disk_and_says_so_by_the_code() throws IOException {
        worked(book("import", example("porch-alone").toString()));
        assertTrue(worked(book("doctor")).out().contains("Nothing is wrong."));
        byte[] all = Files.readAllBytes(book);
        byte[] word = "water-stands-on-floor".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        int at = IntStream.range(0, all.length - word.length).filter(i -> Arrays.equals(word, Arrays.copyOfRange(all, i, i + word.length))).findFirst().orElseThrow();
        all[at] = 'W';
        Files.write(book, all);
        Said said = book("doctor");
        assertEquals(Main.BAD_INPUT, said.code(), said.out());
        assertTrue(said.out().contains("wrong: ") && said.out().contains("is not what was kept") && said.out().contains("The book is not whole."), said.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"doctor", "list", "photos", "export"})
    void a_book_that_is_not_there_is_not_begun_by_looking(String command) {
        Said said = book(command);
        assertEquals(Main.BAD_INPUT, said.code(), said.out() + said.err());
        assertTrue((said.out() + said.err()).contains("house.book"), said.err());
        assertFalse(Files.exists(book));
    }

    @ParameterizedTest
    @CsvSource({"list", "export", "photos", "doctor"})
    void a_file_that_is_no_book_is_left_as_it_is(String command) throws IOException {
        Files.writeString(book, "my shopping list, long enough to look like something that might have been a database of some kind once");
        Said said = book(command);
        assertEquals(Main.BAD_INPUT, said.code(), said.out() + said.err());
        assertTrue(Files.readString(book).startsWith("my shopping list"));
    }

    @Test
    void export_asks_which_building_where_there_are_two_and_names_one_that_is_not_there() {
        worked(book("import", example("one-sill").toString(), example("porch-alone").toString()));
        refused(book("export"), "holds 2 buildings", "one-sill");
        refused(book("export", "barn"), "barn", "nothing is kept");
        refused(book("merge", folder.resolve("nowhere.book").toString()), "nowhere.book");
    }

    @Test
    void an_order_that_is_not_understood_says_where_help_is() {
        for (String[] wrong : new String[][] {{"book", "improt"}, {"book", "backup"}, {"book", "import"}, {"book", "merge"}}) {
            Said said = Said.by(wrong);
            assertEquals(Main.BAD_INPUT, said.code());
            assertTrue(said.err().contains("--help"), said.err());
        }
        assertTrue(Said.by("book").out().contains("doctor"));
    }
}
