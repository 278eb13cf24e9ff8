package sillwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipEntry;

import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Fault;
import sillwright.walk.Photo;

/// A survey into a book: `*.survey.json` with the photos beside it, a zip of both, or a table of readings.
///
/// What is readable is kept, what is not is set aside and named; a zip that means harm is refused whole. To import the
/// same again changes nothing.
public final class Import {
    /// What became of a file.
    ///
    /// @param building whose book it went into
    /// @param photos   how many pictures were kept, counting those that were there already
    public record Taken(String building, Kept kept, int photos, List<Fault> faults) {
        public Taken { faults = List.copyOf(faults); }
    }

    private final Book book;
    private final Path file;
    private final Optional<String> told;
    private final List<Fault> faults = new ArrayList<>();

    private Import(Book book, Path file, Optional<String> told) {
        this.book = book;
        this.file = file;
        this.told = told;
    }

    /// @param building whose book it is; for a survey empty will do: it says so itself
    /// @throws Refused when the file holds no survey, or means harm; then nothing was kept
    public static Taken from(Book book, Path file, Optional<String> building) {
        Import one = new Import(book, file, building);
        if (isZip(file)) return one.zip();
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".csv") ? one.table() : one.survey();
    }

    private static boolean isZip(Path file) {
        if (!Files.isRegularFile(file)) return false;
        try (InputStream in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(4);
            return head.length == 4 && head[0] == 'P' && head[1] == 'K' && head[2] == 3 && head[3] == 4;
        } catch (IOException e) {
            throw new Refused(file.toString(), "the file cannot be read: {}", "check that it may be read", String.valueOf(e.getMessage()));
        }
    }

    private String building(SurveyFile.Held held, String fileName) {
        String building = told.or(() -> Book.buildingOf(held.entries())).orElseGet(() -> fileName.replaceFirst("(\\.survey)?\\.(json|zip)$", ""));
        try {
            Book.named(building);
        } catch (Refused refused) {
            throw told.isPresent() ? refused : new Refused(fileName, refused.what(Units.US), "say whose book it is: --building pond-lane-house");
        }
        return building;
    }

    private Taken survey() {
        SurveyFile.Held held = SurveyFile.read(file);
        String building = building(held, held.file());
        int photos = 0;
        Path folder = file.toAbsolutePath().getParent();
        for (String name : Photos.called(held.entries())) photos += beside(building, folder, name);
        faults.addAll(held.faults());
        return new Taken(building, book.take(building, held), photos, faults);
    }

    private int beside(String building, Path folder, String name) {
        try {
            Path photo = folder.resolve(name);
            if (!Files.isRegularFile(photo)) {
                note(name, "the picture is not beside the survey", "put it there and import again; the entry is kept");
                return 0;
            }
            // A link that leads out of the folder is not followed.
            if (!photo.toRealPath().startsWith(folder.toRealPath())) throw new Refused("", "is a link that leads out of the survey's folder", "put the picture itself there");
            if (Files.size(photo) > Picture.LARGEST) throw new Refused("", "the picture has {} MB, where {} MB are taken", "send it smaller", Files.size(photo) >> 20, Picture.LARGEST >> 20);
            book.photos().keep(building, name, Files.readAllBytes(photo));
            return 1;
        } catch (Refused refused) {
            note(name, refused.what(Units.US), refused.mend());
        } catch (IOException e) {
            note(name, "the picture cannot be read: " + e.getMessage(), "check that it may be read");
        }
        return 0;
    }

    private Taken zip() {
        try (Zip zip = new Zip(file)) {
            String zipName = file.getFileName().toString();
            List<ZipEntry> files = zip.files();
            List<ZipEntry> surveys = files.stream().filter(f -> !f.getName().contains("/") && f.getName().endsWith(".survey.json")).toList();
            if (surveys.size() != 1) throw new Refused(zipName, "the zip holds {} surveys at its top, where one is wanted", "pack one NAME.survey.json with its photos folder", surveys.size());
            String name = surveys.getFirst().getName();
            SurveyFile.Held held = SurveyFile.read(name, SurveyFile.decode(name, zip.bytes(surveys.getFirst(), SurveyFile.LARGEST)));
            String building = building(held, name);
            faults.addAll(held.faults());
            List<ZipEntry> pictures = new ArrayList<>();
            List<String> asides = new ArrayList<>(held.setAside());
            for (ZipEntry entry : files) if (entry != surveys.getFirst()) sort(zip, entry, pictures, asides);
            zip.again();
            for (ZipEntry entry : pictures) keep(building, entry.getName(), zip.bytes(entry, Picture.LARGEST));
            Kept kept = book.take(building, new SurveyFile.Held(held.file(), held.entries(), held.faults(), asides));
            return new Taken(building, kept, pictures.size(), faults);
        }
    }

    /// Reads one file to its end before anything is kept, so that a zip that means harm leaves nothing behind.
    private void sort(Zip zip, ZipEntry entry, List<ZipEntry> pictures, List<String> asides) {
        byte[] bytes = zip.bytes(entry, Picture.LARGEST);
        if (entry.getName().matches("set-aside/[0-9a-f]{64}\\.txt")) {
            asides.add(new String(bytes, StandardCharsets.UTF_8));
            return;
        }
        try {
            Picture.of(bytes);
            new Photo(entry.getName(), "", Optional.empty(), "");
            pictures.add(entry);
        } catch (Refused refused) {
            note(entry.getName(), refused.what(Units.US) + ", and was left out", refused.mend());
        }
    }

    /// A picture that goes by its own digest needs no name.
    private void keep(String building, String name, byte[] bytes) {
        Picture seen = Picture.of(bytes);
        if (name.equals(Photos.file(Line.digest(bytes), seen.media()))) book.photos().keep(bytes);
        else book.photos().keep(building, name, bytes);
    }

    private Taken table() {
        String name = file.getFileName().toString();
        if (told.isEmpty()) throw new Refused(name, "a table of readings does not say whose they are", "say so: --building pond-lane-house");
        Book.named(told.get());
        try {
            if (Files.size(file) > SurveyFile.LARGEST) throw new Refused(name, "the table has more than {} MB", "send it in parts", SurveyFile.LARGEST >> 20);
            Readings readings = Readings.read(name, SurveyFile.decode(name, Files.readAllBytes(file)), told.get(), book.read(told.get()));
            // A table is taken whole or not at all: its rows are easily mended where they came from.
            Kept kept = readings.faults().isEmpty() ? book.append(told.get(), readings.entries()) : Kept.NOTHING;
            return new Taken(told.get(), kept, 0, readings.faults());
        } catch (IOException e) {
            throw new Refused(file.toString(), "the file cannot be read: {}", "check its name, and that it may be read", String.valueOf(e.getMessage()));
        }
    }

    private void note(String where, String what, String mend) { faults.add(new Fault(file.getFileName().toString(), where, "", what, mend, false)); }
}
