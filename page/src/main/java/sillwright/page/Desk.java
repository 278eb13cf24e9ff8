package sillwright.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.function.Function;

import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Refused;
import sillwright.store.Book;
import sillwright.store.SurveyFile;
import sillwright.walk.Entry;
import sillwright.walk.Fault;
import sillwright.walk.FieldBook;
import sillwright.walk.Survey;

/// One building as it lies open on the desk: its entries as far as they were read, and what the road made of them.
///
/// What arrives in the book is read on from where reading stopped, and only what it touches is worked again. What a change touches at once is told at once, while the
/// whole road is walked behind it, one at a time.
final class Desk {
    private static final int KEPT = 4;

    private final Book book;
    private final String building;
    private final Function<Survey, Settings> settings;
    private final Remembered memory = new Remembered();
    private final List<Entry> entries = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private List<Fault> asides = List.of();
    private final List<Consumer<String>> listeners = new java.util.concurrent.CopyOnWriteArrayList<>();
    /// The last few whole roads, by their version.
    private final Map<String, Opened> whole = new LinkedHashMap<>();
    private final Object road = new Object();
    private final Semaphore roads;
    private String mark = "";
    private Optional<Opened> opened = Optional.empty();
    private Optional<CompletableFuture<Opened>> opening = Optional.empty();
    private volatile String step = "";

    /// The building at one moment.
    ///
    /// @param version changes whenever the book does, and the day
    /// @param whole   false where the outlook, the order of work, the money and the watch are still as they were before the last change
    record Opened(String building, String version, Assessment assessment, List<Entry> entries, boolean whole) {
        Survey survey() { return assessment.survey(); }

        Optional<Entry> entry(String id) { return entries.stream().filter(entry -> entry.id().equals(id)).findFirst(); }
    }

    /// @param roads how many may be walked at one time
    Desk(Book book, String building, Function<Survey, Settings> settings, Semaphore roads) {
        this.roads = roads;
        this.book = book;
        this.building = building;
        this.settings = settings;
    }

    String building() { return building; }

    Remembered memory() { return memory; }

    /// The whole road over what the book has now; walks it where the book changed.
    ///
    /// @throws Refused where nothing can be worked yet
    Opened open() {
        synchronized (road) {
            while (true) {
                Survey survey;
                List<Entry> all;
                String version;
                synchronized (this) {
                    readOn();
                    version = version();
                    if (opened.isPresent() && opened.get().whole() && opened.get().version().equals(version)) return opened.get();
                    survey = FieldBook.fold(building, entries, faults());
                    all = List.copyOf(entries);
                }
                memory.round();
                Opened now = new Opened(building, version, walked(survey), all, true);
                synchronized (this) {
                    keep(now);
                    if (opened.isEmpty() || version.equals(version())) opened = Optional.of(now);
                    if (version.equals(version())) return now;
                }
            }
        }
    }

    private Assessment walked(Survey survey) {
        roads.acquireUninterruptibly();
        try {
            return Assessment.of(survey, settings.apply(survey), this::tell, memory);
        } finally {
            roads.release();
        }
    }

    /// What the book has now, with all that a change touches at once; where more rests on it, the whole road is begun behind it.
    ///
    /// @throws Refused where nothing can be worked yet
    Opened soon() {
        Opened now = direct();
        if (!now.whole()) begin();
        return now;
    }

    /// The same, and the whole road is left to whoever asks for it: begun at once it would take the processors from the answer, and from the screen that shows it.
    Opened direct() {
        synchronized (this) {
            readOn();
            if (opened.isPresent() && opened.get().version().equals(version())) return opened.get();
            if (opened.isPresent()) {
                Survey survey = FieldBook.fold(building, entries, faults());
                Opened now = new Opened(building, version(), Assessment.soon(survey, settings.apply(survey), memory, opened.get().assessment()), List.copyOf(entries), false);
                opened = Optional.of(now);
                return now;
            }
        }
        return open();
    }

    /// The last whole road that was walked, and whether nothing arrived since.
    record Last(Optional<Opened> opened, boolean ready) {}

    /// Waits for nothing: where something arrived since, the next road is begun.
    synchronized Last last() {
        readOn();
        boolean ready = opened.filter(Opened::whole).filter(now -> now.version().equals(version())).isPresent();
        if (!ready) {
            version();
            begin();
        }
        return new Last(whole(lastWhole()), ready);
    }

    /// The whole road of a version, while it is remembered.
    synchronized Optional<Opened> whole(String version) { return Optional.ofNullable(whole.get(version)); }

    /// The last version of which the whole road was walked.
    synchronized String lastWhole() { return whole.isEmpty() ? "" : whole.keySet().stream().reduce((_, later) -> later).get(); }

    private void keep(Opened now) {
        whole.remove(now.version());
        whole.put(now.version(), now);
        if (whole.size() > KEPT) whole.remove(whole.keySet().iterator().next());
    }

    /// The start of work is counted from today, so that the day is part of it.
    private String version() {
        if (entries.isEmpty() && faults.isEmpty() && asides.isEmpty()) throw Refusal.notThere(building, "there is no such building in the book", "see /api/buildings for those there are");
        return mark + "-" + asides.size() + "-" + java.time.LocalDate.now().toEpochDay();
    }

    /// The building as it can be shown within a while; where its road was never walked, begins to walk it, and gives nothing.
    Optional<Opened> openSoon(long waitMs) {
        synchronized (this) {
            if (opened.isPresent()) return Optional.of(soon());
        }
        CompletableFuture<Opened> now = begin();
        try {
            return Optional.of(now.get(waitMs, java.util.concurrent.TimeUnit.MILLISECONDS));
        } catch (java.util.concurrent.TimeoutException _) {
            return Optional.empty();
        } catch (java.util.concurrent.ExecutionException thrown) {
            if (thrown.getCause() instanceof RuntimeException known) throw known;
            throw new IllegalStateException(thrown.getCause());
        } catch (InterruptedException _) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /// Begins to walk the road, or joins one who is walking.
    private CompletableFuture<Opened> begin() {
        synchronized (listeners) {
            if (opening.isPresent() && !opening.get().isDone()) return opening.get();
            CompletableFuture<Opened> now = new CompletableFuture<>();
            opening = Optional.of(now);
            Thread.ofVirtual().name("road of " + building).start(() -> {
                try {
                    now.complete(open());
                } catch (Throwable thrown) {
                    now.completeExceptionally(thrown);
                }
            });
            return now;
        }
    }

    /// Tells each step of a road that is being walked, until it is done.
    void follow(Consumer<String> listener) {
        listeners.add(listener);
        try {
            if (!step.isEmpty()) listener.accept(step);
            begin().join();
        } catch (java.util.concurrent.CompletionException _) {
            // Whoever asks for the page is told what is wrong.
        } finally {
            listeners.remove(listener);
        }
    }

    private void tell(String now) {
        step = now;
        listeners.forEach(listener -> listener.accept(now));
    }

    private void readOn() {
        while (true) {
            Book.Since since = book.since(building, mark, 10_000);
            if (since.again()) {
                entries.clear();
                faults.clear();
            }
            entries.addAll(since.entries());
            faults.addAll(since.faults());
            mark = since.mark();
            if (!since.more()) break;
        }
        asides = book.asides(building);
    }

    private List<Fault> faults() {
        List<Fault> all = new ArrayList<>(faults);
        all.addAll(asides);
        return all;
    }
}
