package sillwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;

import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import sillwright.measure.Refused;
import sillwright.walk.Fault;

/// A book in one SQLite file. While it is open, `-wal` and `-shm` stand beside it; closing folds them in, and then the one
/// file is the whole book. After a power cut copy all three, or open and close the book first.
final class SqliteFile extends Engine {
    /// Says that the file is a field book: `SILL`. Set by the migrations.
    static final int APPLICATION = 0x5349_4c4c;
    private static final int READERS = 16;
    /// How seldom the log is folded into the file behind the writers' backs, and from how many pages on a writer must do it itself. This program's own choice.
    private static final long FOLD_NS = 1_000_000_000;
    private static final int MOST_PAGES = 8_000;

    private final Path path;
    private final Jdbi readers;
    private final Handle writer;
    private final ReentrantLock turn = new ReentrantLock(true);
    private final Migrations migrations;
    /// Readers kept open between readings: to open one costs more than most of what is read.
    private final Deque<Handle> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean closed;
    /// Waiting for the disk happens in SQLite's own code, which would hold the carrier of a virtual thread, and with it every other request.
    private final ExecutorService hand = Executors.newSingleThreadExecutor(Thread.ofPlatform().name("book-writer").daemon().factory());
    private final ExecutorService folder = Executors.newSingleThreadExecutor(Thread.ofPlatform().name("book-folder").daemon().factory());
    private volatile long folded = System.nanoTime();

    /// @param mustBe true where a file that is not there is refused rather than begun
    SqliteFile(Path path, boolean mustBe) {
        this.path = path;
        mayOpen(mustBe);
        SQLiteDataSource plain = source(SQLiteConfig.TransactionMode.DEFERRED);
        readers = Jdbi.create(plain);
        migrations = new Migrations(name(), source(SQLiteConfig.TransactionMode.DEFERRED), "sqlite");
        Connection connection = null;
        try {
            int at = readers.withHandle(this::version);
            migrations.refuseNewer(at);
            if (at < Migrations.NEWEST) migrations.bring(readers);
            connection = source(SQLiteConfig.TransactionMode.IMMEDIATE).getConnection();
        } catch (SQLException thrown) {
            throw Trouble.of(name(), new ConnectionException(thrown));
        } catch (JdbiException thrown) {
            throw Trouble.of(name(), thrown);
        }
        writer = Jdbi.create(connection).open();
    }

    private void mayOpen(boolean mustBe) {
        if (Files.isDirectory(path)) throw new Refused(name(), "this is a folder", "name a file in it, such as " + path.resolve("house.book"));
        if (Files.exists(path)) return;
        if (mustBe) throw new Refused(path.toString(), "there is no book here", "name the book, or begin one: sillwright book init --book " + path);
        try {
            if (path.toAbsolutePath().getParent() != null) Files.createDirectories(path.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw new Refused(path.toString(), "the folder cannot be made: {}", "name a folder that may be written", String.valueOf(e.getMessage()));
        }
    }

    /// Every commit waits for the disk (`synchronous` FULL, and on a Mac through the drive's own cache): acknowledged is durable.
    private SQLiteDataSource source(SQLiteConfig.TransactionMode mode) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setPragma(SQLiteConfig.Pragma.FULL_SYNC, "true");
        config.setBusyTimeout(20_000);
        config.setPragma(SQLiteConfig.Pragma.WAL_AUTOCHECKPOINT, String.valueOf(MOST_PAGES));
        config.setJournalSizeLimit(64 << 20);
        config.setTransactionMode(mode);
        SQLiteDataSource source = new Patient(config);
        source.setUrl("jdbc:sqlite:" + path.toAbsolutePath());
        return source;
    }

    /// Waits for another program that sets the file up: SQLite answers at once that it is locked where the journal is changed, and its own
    /// waiting does not apply.
    private static final class Patient extends SQLiteDataSource {
        private static final long LONGEST_MS = 20_000, PAUSE_MS = 20;

        Patient(SQLiteConfig config) { super(config); }

        @Override
        public SQLiteConnection getConnection(String user, String password) throws SQLException {
            long until = System.nanoTime() + LONGEST_MS * 1_000_000;
            while (true) {
                try {
                    return super.getConnection(user, password);
                } catch (SQLiteException locked) {
                    boolean busy = (locked.getResultCode().code & 0xff) == SQLiteErrorCode.SQLITE_BUSY.code;
                    if (!busy || System.nanoTime() > until) throw locked;
                    LockSupport.parkNanos(PAUSE_MS * 1_000_000);
                    if (Thread.currentThread().isInterrupted()) throw locked;
                }
            }
        }
    }

    private int version(Handle handle) {
        List<String> tables = handle.createQuery("select name from sqlite_master where type = 'table'").mapTo(String.class).list();
        if (tables.contains(Migrations.HISTORY)) return Migrations.at(handle);
        if (!tables.isEmpty()) throw new Refused(name(), "the file is a database of another program", "name the book, or another file to begin one in");
        return 0;
    }

    @Override
    String name() { return path.getFileName() == null ? path.toString() : path.getFileName().toString(); }

    Path path() { return path; }

    @Override
    <T> T alone(Function<Handle, T> work) {
        if (!Thread.currentThread().isVirtual() || closed) return here(work);
        try {
            return CompletableFuture.supplyAsync(() -> here(work), hand).join();
        } catch (CompletionException thrown) {
            if (thrown.getCause() instanceof RuntimeException cause) throw cause;
            if (thrown.getCause() instanceof Error cause) throw cause;
            throw thrown;
        }
    }

    private <T> T here(Function<Handle, T> work) {
        turn.lock();
        try {
            T result = writer.inTransaction(work::apply);
            if (System.nanoTime() - folded > FOLD_NS && !closed) {
                folded = System.nanoTime();
                folder.execute(this::fold);
            }
            return result;
        } finally {
            turn.unlock();
        }
    }

    /// Folds the log into the file while others write and read: what a writer acknowledged is durable in the log already, so that nobody need wait for this.
    private void fold() { reading(reader -> reader.createQuery("pragma wal_checkpoint(passive)").mapToMap().list()); }

    @Override
    <T> T snapshot(Function<Handle, T> work) { return reading(reader -> reader.inTransaction(work::apply)); }

    private <T> T reading(Function<Handle, T> work) {
        Handle kept = idle.poll(), reader = kept == null ? readers.open() : kept;
        boolean well = false;
        try {
            T result = work.apply(reader);
            well = true;
            return result;
        } finally {
            // One that something went wrong with is not trusted with the next reading.
            if (well) keep(reader);
            else reader.close();
        }
    }

    private void keep(Handle reader) {
        idle.push(reader);
        if (closed || idle.size() > READERS) Optional.ofNullable(idle.poll()).ifPresent(Handle::close);
    }

    @Override
    <T> T anew(Function<Handle, T> work) { return readers.inTransaction(work::apply); }

    @Override
    boolean copy(Path into) {
        readers.useHandle(handle -> handle.execute("vacuum into ?", into.toAbsolutePath().toString()));
        return true;
    }

    @Override
    List<Fault> integrity() {
        List<Fault> faults = new ArrayList<>();
        for (String told : readers.withHandle(handle -> handle.createQuery("pragma integrity_check").mapTo(String.class).list()))
            if (!told.equals("ok")) faults.add(grave("the database says: " + told, "keep the file, begin a new book from the last backup, and let every phone send again"));
        int synchronous = alone(handle -> handle.createQuery("pragma synchronous").mapTo(Integer.class).one());
        String journal = alone(handle -> handle.createQuery("pragma journal_mode").mapTo(String.class).one());
        if (synchronous < 2 || !journal.equals("wal")) faults.add(grave("writes are not waited for: synchronous " + synchronous + ", journal " + journal, "put the book on a local disk"));
        int application = readers.withHandle(handle -> handle.createQuery("pragma application_id").mapTo(Integer.class).one());
        if (application != APPLICATION) faults.add(grave("the file does not say that it is a field book", "restore the last backup"));
        return faults;
    }

    private Fault grave(String what, String mend) { return new Fault(name(), "", "", what, mend, true); }

    @Override
    List<Fault> migrations() { return migrations.faults(); }

    @Override
    List<String> triggers() {
        return readers.withHandle(handle -> handle.createQuery("select name from sqlite_master where type = 'trigger' order by name").mapTo(String.class).list());
    }

    /// Folds the log into the file, so that a copy of the one file is whole.
    @Override
    public void close() {
        closed = true;
        turn.lock();
        try (Connection connection = writer.getConnection()) {
            hand.shutdown();
            folder.close();
            for (Handle reader = idle.poll(); reader != null; reader = idle.poll()) reader.close();
            if (connection.isClosed()) return;
            writer.execute("pragma wal_checkpoint(truncate)");
            writer.close();
        } catch (SQLException e) {
            throw new UncheckedIOException(new IOException("the book could not be closed: " + e.getMessage(), e));
        } finally {
            turn.unlock();
        }
    }
}
