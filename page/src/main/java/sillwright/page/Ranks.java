package sillwright.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import sillwright.Assessment;
import sillwright.Portfolio;
import sillwright.measure.Refused;
import sillwright.store.Book;

/// Every building of the book as it was assessed last, to be ranked. One is worked anew when entries were added to it, or the day has changed.
final class Ranks {
    private static final long PATIENCE_MS = 400;

    private final Desks desks;
    private final Map<String, Worked> worked = new LinkedHashMap<>();
    private CountDownLatch working = new CountDownLatch(0);

    /// @param assessment empty where it was refused, and `why`
    private record Worked(int entries, long day, Optional<Assessment> assessment, String why) {}

    /// All that can be ranked now.
    ///
    /// @param missing  buildings that are still to be worked
    /// @param leftOut  buildings that cannot be, each with why
    record Ranked(Portfolio portfolio, List<String> missing, List<String> leftOut) {}

    Ranks(Desks desks) { this.desks = desks; }

    /// What is worked already, or within a moment; begins to work the rest.
    Ranked soon(Optional<Double> budget) {
        List<String> missing = missing();
        if (missing.isEmpty()) return ranked(budget, missing);
        CountDownLatch done;
        synchronized (this) {
            if (working.getCount() == 0) {
                CountDownLatch begun = working = new CountDownLatch(1);
                Thread.ofVirtual().name("ranking").start(() -> workAll(begun));
            }
            done = working;
        }
        try {
            done.await(PATIENCE_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException _) {
            Thread.currentThread().interrupt();
        }
        return ranked(budget, missing());
    }

    /// All of them, however long that takes.
    Ranked whole(Optional<Double> budget) {
        for (String building : missing()) work(building);
        return ranked(budget, List.of());
    }

    private void workAll(CountDownLatch done) {
        try {
            for (String building : missing()) work(building);
        } finally {
            done.countDown();
        }
    }

    private synchronized List<String> missing() {
        List<String> missing = new ArrayList<>();
        long today = java.time.LocalDate.now().toEpochDay();
        for (Book.Shelf shelf : desks.book().buildings()) {
            Worked last = worked.get(shelf.building());
            if (last == null || last.entries != shelf.entries() || last.day != today) missing.add(shelf.building());
        }
        return missing;
    }

    private void work(String building) {
        long today = java.time.LocalDate.now().toEpochDay();
        int entries = desks.book().buildings().stream().filter(shelf -> shelf.building().equals(building)).mapToInt(Book.Shelf::entries).findFirst().orElse(0);
        Worked now;
        try {
            now = new Worked(entries, today, Optional.of(desks.of(building).open().assessment()), "");
        } catch (Refused refused) {
            now = new Worked(entries, today, Optional.empty(), refused.getMessage());
        } catch (Refusal refusal) {
            now = new Worked(entries, today, Optional.empty(), refusal.refused().getMessage());
        }
        synchronized (this) { worked.put(building, now); }
    }

    private synchronized Ranked ranked(Optional<Double> budget, List<String> missing) {
        List<Assessment> all = worked.values().stream().flatMap(one -> one.assessment.stream()).toList();
        List<String> leftOut = worked.entrySet().stream().filter(one -> one.getValue().assessment.isEmpty()).map(one -> one.getKey() + ": " + one.getValue().why).toList();
        return new Ranked(Portfolio.of(all, budget), missing, leftOut);
    }
}
