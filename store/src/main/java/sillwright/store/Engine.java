package sillwright.store;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import sillwright.walk.Fault;

/// The database beneath a [Book]: how it is opened, locked and looked after.
///
/// Writers take turns, so that the places of entries are given in the order of commit: who reads on from a place
/// misses nothing.
abstract sealed class Engine implements AutoCloseable permits SqliteFile, PostgresServer {
    /// What faults call the book; a password is never part of it.
    abstract String name();

    private final Together together = new Together(this::alone);

    /// Runs in a transaction that no other writer shares the time of; when this returns, what was written is durable.
    ///
    /// @param work may be run more than once, and must come to the same
    final <T> T write(Function<Handle, T> work) {
        try {
            return together.write(work);
        } catch (JdbiException thrown) {
            throw Trouble.of(name(), thrown);
        }
    }

    /// Adds every line that is not here yet, and says of each what became of it; when this returns, all are durable.
    ///
    /// @param besides what is written in the same transaction; it may be run more than once, and must come to the same
    final List<Ledger.Fate> put(List<Line> lines, long nowMs, Consumer<Ledger> besides) {
        try {
            return together.put(lines, nowMs, besides);
        } catch (JdbiException thrown) {
            throw Trouble.of(name(), thrown);
        }
    }

    /// Runs one transaction that sees the book as it stood at one moment.
    final <T> T read(Function<Handle, T> work) {
        try {
            return snapshot(work);
        } catch (JdbiException thrown) {
            throw Trouble.of(name(), thrown);
        }
    }

    /// The same past every page that was read before: as the disk has it now.
    final <T> T fromDisk(Function<Handle, T> work) {
        try {
            return anew(work);
        } catch (JdbiException thrown) {
            throw Trouble.of(name(), thrown);
        }
    }

    abstract <T> T alone(Function<Handle, T> work);

    abstract <T> T snapshot(Function<Handle, T> work);

    abstract <T> T anew(Function<Handle, T> work);

    /// Asks the database about itself; what it throws is told as trouble.
    final <T> T ask(Function<Engine, T> question) {
        try {
            return question.apply(this);
        } catch (JdbiException | FlywayException thrown) {
            throw Trouble.of(name(), thrown);
        }
    }

    /// What the database itself says is wrong with it, and every setting that would lose what was acknowledged.
    abstract List<Fault> integrity();

    /// What the migrations say is wrong.
    abstract List<Fault> migrations();

    /// The names of the triggers that are in force.
    abstract List<String> triggers();

    /// Writes the book as it stands at this moment into a file that is not there yet; false where a database cannot.
    abstract boolean copy(Path into);

    @Override
    public abstract void close();
}
