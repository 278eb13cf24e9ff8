package sillwright.store;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;

import org.jdbi.v3.core.Handle;

/// Writers that wait at the same time are written in one transaction: one wait for the disk serves them all, so that fifty
/// phones do not stand in a queue of fifty waits. Each is answered only when the transaction they share is durable.
///
/// Lines that they bring are put into the book in one stroke: what a database is asked for fifty writers, it is asked once.
///
/// Work may be run twice: where one of several fails, all are taken back and each is run alone, so that it fails alone.
final class Together {
    private static final int MOST = 64;

    /// One transaction, from its begin to its durable end.
    interface Transaction {
        void run(Function<Handle, Void> work);
    }

    /// Somebody's work, and what came of it.
    private static final class Job<T> {
        private final Function<Handle, T> work;
        private final List<Line> lines;
        private final long nowMs;
        private List<Ledger.Fate> fates = List.of();
        /// Rung once: when the work is done, or when it is this writer's turn to do it for all who wait.
        private final CompletableFuture<Void> bell = new CompletableFuture<>();
        private T result;
        private Optional<RuntimeException> failed = Optional.empty();
        private boolean done;
        private boolean written;

        Job(Function<Handle, T> work, List<Line> lines, long nowMs) {
            this.work = work;
            this.lines = lines;
            this.nowMs = nowMs;
        }

        void run(Handle handle) { result = work.apply(handle); }
    }

    private final Transaction transaction;
    private final ReentrantLock queue = new ReentrantLock();
    private final Deque<Job<?>> waiting = new ArrayDeque<>();
    private boolean busy;

    Together(Transaction transaction) { this.transaction = transaction; }

    <T> T write(Function<Handle, T> work) { return done(new Job<>(work, List.of(), 0)).result; }

    /// Adds every line that is not here yet, and says of each what became of it.
    ///
    /// @param besides what is done in the same transaction
    List<Ledger.Fate> put(List<Line> lines, long nowMs, Consumer<Ledger> besides) {
        return done(new Job<Void>(handle -> {
            besides.accept(new Ledger(handle));
            return null;
        }, lines, nowMs)).fates;
    }

    private <T> Job<T> done(Job<T> job) {
        if (!first(job)) job.bell.join();
        if (!job.done) serve();
        // Not to have failed is not enough: memory may have run out on the way.
        if (!job.written) throw job.failed.orElseGet(() -> new IllegalStateException("the program failed before this was written"));
        return job;
    }

    /// True where nobody is at work, so that this writer begins at once.
    private boolean first(Job<?> job) {
        queue.lock();
        try {
            waiting.add(job);
            boolean first = !busy;
            busy = true;
            return first;
        } finally {
            queue.unlock();
        }
    }

    /// Does the work of those who wait, this writer's first, and gives the turn on.
    private void serve() {
        List<Job<?>> jobs = new ArrayList<>();
        queue.lock();
        try {
            while (jobs.size() < MOST && !waiting.isEmpty()) jobs.add(waiting.poll());
        } finally {
            queue.unlock();
        }
        try {
            run(jobs);
        } catch (RuntimeException thrown) {
            if (jobs.size() == 1) jobs.getFirst().failed = Optional.of(thrown);
            else for (Job<?> job : jobs) alone(job);
        } finally {
            for (Job<?> job : jobs) {
                job.done = true;
                job.bell.complete(null);
            }
            giveOn();
        }
    }

    private void giveOn() {
        queue.lock();
        try {
            busy = !waiting.isEmpty();
            if (busy) waiting.peek().bell.complete(null);
        } finally {
            queue.unlock();
        }
    }

    private void alone(Job<?> job) {
        try {
            run(List.of(job));
        } catch (RuntimeException thrown) {
            job.failed = Optional.of(thrown);
        }
    }

    private static void put(Handle handle, List<Job<?>> jobs) {
        if (jobs.isEmpty()) return;
        List<Line> lines = new ArrayList<>();
        for (Job<?> job : jobs) lines.addAll(job.lines);
        List<Ledger.Fate> fates = new Ledger(handle).put(lines, jobs.getFirst().nowMs);
        int from = 0;
        for (Job<?> job : jobs) job.fates = fates.subList(from, from += job.lines.size());
    }

    private void run(List<Job<?>> jobs) {
        transaction.run(handle -> {
            put(handle, jobs.stream().filter(job -> !job.lines.isEmpty()).toList());
            for (Job<?> job : jobs) job.run(handle);
            return null;
        });
        for (Job<?> job : jobs) job.written = true;
    }
}
