package sillwright.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import sillwright.walk.FieldBook;

/// Looks a book over from the disk up to the fold, says all that is wrong at once, and how to mend it. It changes nothing.
public final class Doctor {
    private static final List<String> TABLES = List.of("entry", "photo", "photo_name", "aside");

    private final Book book;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> surveys = new ArrayList<>();
    private int buildings;
    private long entries;
    private long photos;

    private Doctor(Book book) { this.book = book; }

    /// Looks over a book that may not even open.
    public static Checkup examine(String where) {
        try (Book book = Book.open(where)) {
            return examine(book);
        } catch (Refused refused) {
            return new Checkup(refused.where(), 0, 0, 0, List.of(new Fault(refused.where(), "", "", refused.what(Units.US), refused.mend(), true)), List.of());
        }
    }

    public static Checkup examine(Book book) {
        Doctor doctor = new Doctor(book);
        doctor.step(() -> doctor.faults.addAll(book.engine().ask(Engine::integrity)));
        doctor.step(() -> doctor.faults.addAll(book.engine().ask(Engine::migrations)));
        doctor.step(doctor::guards);
        doctor.step(() -> book.fromDisk(doctor::look));
        return new Checkup(book.name(), doctor.buildings, doctor.entries, doctor.photos, doctor.faults, doctor.surveys);
    }

    /// One step of the examination. Where the damage stops it, that is a fault, and the next step is still taken.
    private void step(Runnable step) {
        try {
            step.run();
        } catch (Refused refused) {
            grave("", refused.what(Units.US), refused.mend());
        }
    }

    /// The triggers that keep rows from being changed.
    private void guards() {
        List<String> there = book.engine().ask(Engine::triggers);
        List<String> kinds = book.engine() instanceof SqliteFile ? List.of("_no_update", "_no_delete", "_no_replace") : List.of("_no_change");
        for (String table : TABLES)
            for (String kind : kinds)
                if (!there.contains(table + kind))
                    grave("", "the guard " + table + kind + " is gone: somebody may have changed the book by hand", "begin a new book and merge this one and the last backup into it");
    }

    private Ledger look(Ledger ledger) {
        Map<String, List<Entry>> read = lines(ledger);
        Set<String> all = new TreeSet<>(ledger.everyBuilding());
        buildings = all.size();
        entries = ledger.count("entry");
        photos = ledger.count("photo");
        for (String building : all) {
            asides(ledger, building);
            names(ledger, building, read.getOrDefault(building, List.of()));
        }
        read.forEach((building, folded) -> surveys.addAll(FieldBook.fold(building, folded).faults()));
        pictures(ledger);
        return ledger;
    }

    /// Every line: is it what was kept, does it parse, do its columns say what it says, is none missing, are the clocks right?
    private Map<String, List<Entry>> lines(Ledger ledger) {
        Map<String, List<Entry>> read = new TreeMap<>();
        Map<String, String> stamps = new HashMap<>();
        Set<String> ahead = new HashSet<>();
        long latest = book.nowMs() + Pen.MOST_AHEAD_MS;
        long[] place = {0};
        ledger.eachLine(line -> {
            if (line.place() != place[0] + 1)
                grave("place " + line.place(), line.place() == place[0] + 2 ? "the entry before it is missing" : line.place() - place[0] - 1 + " entries before it are missing",
                        "merge the last backup into this book, and let every phone send again");
            place[0] = line.place();
            entry(line).ifPresent(entry -> {
                read.computeIfAbsent(line.building(), _ -> new ArrayList<>()).add(entry);
                String other = stamps.putIfAbsent(entry.device() + " " + entry.stamp(), entry.id());
                if (other != null && !other.equals(entry.id()) && !entry.device().isEmpty())
                    note(line.building() + ", " + entry.id(), "has the same stamp as " + other + " of the same device", "give every phone and desk a name of its own; their order is by id until then");
                if (entry.stamp().wallMs() > latest && ahead.add(entry.device()))
                    note(line.building() + ", " + entry.id(), "is from a day to come: the clock of '" + entry.device() + "' is wrong", "set the clock of that device; its readings stand, their dates do not");
            });
        });
        return read;
    }

    private java.util.Optional<Entry> entry(Line line) {
        String where = line.building() + ", " + line.id();
        if (!line.unharmed()) {
            grave(where, "is not what was kept: its digest differs", "merge the last backup into a new book, or let the phone that wrote it send again");
            return java.util.Optional.empty();
        }
        try {
            Entry entry = line.entry();
            if (!entry.id().equals(line.id()) || !entry.stamp().equals(line.stamp()) || !entry.device().equals(line.device()))
                grave(where, "says another id, time or device than it is kept under", "merge the last backup into a new book");
            return java.util.Optional.of(entry);
        } catch (Fields.Wrongs wrongs) {
            for (Fields.Wrong wrong : wrongs.all()) faults.add(new Fault(book.name(), where, wrong.field(), wrong.what(), wrong.mend(), true));
            return java.util.Optional.empty();
        }
    }

    private void asides(Ledger ledger, String building) {
        for (Ledger.Aside aside : ledger.asides(building)) {
            String where = building + ", set aside " + aside.sha256().substring(0, 12);
            if (!aside.sha256().equals(Line.digest(aside.bytes()))) grave(where, "is not what was kept", "restore it from the last backup");
            else note(where, "could not be read as an entry when it arrived", "write it again rightly; sillwright book export to a zip shows it");
        }
    }

    private void names(Ledger ledger, String building, List<Entry> entries) {
        Map<String, String> names = new HashMap<>();
        List<Photos.Named> all = ledger.photoNames(building);
        for (Photos.Named named : all) {
            if (!ledger.hasPhoto(named.sha256())) grave(building + ", " + named.file(), "names a picture that is not here", "merge the last backup into this book");
            if (names.putIfAbsent(named.file(), named.sha256()) != null)
                note(building + ", " + named.file(), "is the name of more than one picture; the first by its digest is shown, all are kept", "rename one on the phone and write a new entry for it");
        }
        for (String file : Photos.called(entries))
            if (Photos.digest(file, all).filter(ledger::hasPhoto).isEmpty())
                note(building + ", " + file, "is named by an entry, and the picture is not here", "send it from the phone that took it, or import it in a zip");
    }

    private void pictures(Ledger ledger) {
        for (String sha256 : ledger.everyPhoto())
            if (ledger.photo(sha256).filter(Photos.Found::unharmed).isEmpty())
                grave("photo " + sha256.substring(0, 12), "is not the picture that was kept: its digest differs", "merge the last backup into a new book, or send it again from the phone");
    }

    private void grave(String where, String what, String mend) { faults.add(new Fault(book.name(), where, "", what, mend, true)); }

    private void note(String where, String what, String mend) { faults.add(new Fault(book.name(), where, "", what, mend, false)); }
}
