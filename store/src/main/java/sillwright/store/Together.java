package sillwright.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;

import org.jdbi.v3.core.Handle;

/// Writers that wait at the same time are written in one transaction: one wait for the disk serves them all, so that fifty
/// phones do not stand in a queue of fifty waits. Each is answered only when the transaction they share is durable.
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
        private T result;
        private Optional<RuntimeException> failed = Optional.empty();
        private boolean done;

        Job(Function<Handle, T> work) { this.work = work; }

        void run(Handle handle) { result = work.apply(handle); }
    }

    private final Transaction transaction;
    private final ConcurrentLinkedQueue<Job<?>> waiting = new ConcurrentLinkedQueue<>();
    private final ReentrantLock turn = new ReentrantLock(true);

    Together(Transaction transaction) { this.transaction = transaction; }

    <T> T write(Function<Handle, T> work) {
        Job<T> job = new Job<>(work);
        waiting.add(job);
        turn.lock();
        try {
            while (!job.done) next();
        } finally {
            turn.unlock();
        }
        if (job.failed.isPresent()) throw job.failed.get();
        return job.result;
    }

    /// Runs those who wait, in the order they came.
    private void next() {
        List<Job<?>> jobs = new ArrayList<>();
        for (Job<?> job = waiting.poll(); job != null; job = jobs.size() < MOST ? waiting.poll() : null) jobs.add(job);
        try {
            run(jobs);
        } catch (RuntimeException thrown) {
            if (jobs.size() == 1) jobs.getFirst().failed = Optional.of(thrown);
            else for (Job<?> job : jobs) alone(job);
        } finally {
            for (Job<?> job : jobs) job.done = true;
        }
    }

    private void alone(Job<?> job) {
        try {
            run(List.of(job));
        } catch (RuntimeException thrown) {
            job.failed = Optional.of(thrown);
        }
    }

    private void run(List<Job<?>> jobs) {
        transaction.run(handle -> {
            for (Job<?> job : jobs) job.run(handle);
            return null;
        });
    }
}
