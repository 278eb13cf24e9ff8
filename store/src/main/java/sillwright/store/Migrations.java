package sillwright.store;

import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;

import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.output.ValidateOutput;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import sillwright.measure.Refused;
import sillwright.walk.Fault;

/// The steps that bring a database to the shape this program knows: the SQL files in `sql/`.
final class Migrations {
    /// The last step there is.
    static final int NEWEST = 2;
    /// Where the steps done are noted.
    static final String HISTORY = "flyway_schema_history";
    private static final int TRIES = 10;

    private final String name;
    private final DataSource source;
    private final String engine;

    /// @param engine the folder of the steps that one database alone needs: `sqlite`, `postgresql`
    Migrations(String name, DataSource source, String engine) {
        this.name = name;
        this.source = source;
        this.engine = engine;
    }

    /// The last step done, told without the migrations' own machinery, which is slow to start.
    static int at(Handle handle) {
        return handle.createQuery("select coalesce(max(cast(version as integer)), 0) from " + HISTORY + " where success").mapTo(Integer.class).one();
    }

    /// @throws Refused when a newer program made the book
    void refuseNewer(int at) {
        if (at > NEWEST)
            throw new Refused(name, "the book is of version {}, and this program knows {}", "open it with the newer program that made it", at, NEWEST);
    }

    /// Does every step not yet done. Two programs may do this at once: the one that comes late finds it done.
    void bring(Jdbi jdbi) {
        for (int tried = 1; ; tried++) {
            try {
                flyway().migrate();
                int reached = jdbi.withHandle(Migrations::at);
                // A jar packed without its folders hides the steps: better no book than one without tables.
                if (reached != NEWEST) throw new IllegalStateException("the database came to step " + reached + ", not " + NEWEST);
                return;
            } catch (FlywayException thrown) {
                if (tried == TRIES) throw Trouble.of(name, thrown);
                pause(50L * tried);
            }
        }
    }

    private static void pause(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while waiting for another program to set up the book", stopped);
        }
    }

    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        var told = flyway().validateWithResult();
        for (ValidateOutput step : told.invalidMigrations)
            faults.add(new Fault(name, "", "", "step " + step.version + " of the database does not fit this program: " + step.errorDetails.errorMessage,
                    "open it with the program that made it; if nobody changed the database by hand, restore the last backup", true));
        return faults;
    }

    private Flyway flyway() {
        return Flyway.configure(Migrations.class.getClassLoader()).dataSource(source).loggers("slf4j").failOnMissingLocations(true).table(HISTORY)
                .locations("classpath:sillwright/store/sql/both", "classpath:sillwright/store/sql/" + engine).load();
    }
}
