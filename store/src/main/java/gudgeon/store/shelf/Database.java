package gudgeon.store.shelf;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;

/**
 * The one connection to a shelf's database. A commit returns only once the system says that it is on disk: write-ahead log with full
 * synchronisation, see https://www.sqlite.org/pragma.html#pragma_synchronous. Not for several threads at once.
 */
final class Database implements AutoCloseable {
    private static final int BUSY_MS = 10_000;

    private final Path file;
    private final Handle handle;

    private Database(Path file, Handle handle) {
        this.file = file;
        this.handle = handle;
    }

    /** Opens a database, which is made if it is not there, and brings its tables up to date. */
    static Database open(Path file) {
        return open(file, Migrations.ofProgram());
    }

    /** The same with migrations of one's own. */
    static Database open(Path file, Migrations migrations) {
        try {
            Handle handle = Jdbi.create(() -> connection(file)).open();
            Database database = new Database(file, handle);
            try {
                database.migrate(migrations);
                return database;
            } catch (ShelfFault | JdbiException fault) {
                handle.close();
                throw fault;
            }
        } catch (JdbiException unusable) {
            throw fault("The database " + file + " can't be opened: ", unusable, "");
        }
    }

    /**
     * How many entries a database holds, looked at without changing anything: not even a damaged log goes away by it, as it does when a
     * database that was opened for writing is closed.
     *
     * @return empty if that can't be read
     */
    static OptionalLong entriesIn(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        try (Handle handle = Jdbi.create(() -> config.createConnection("jdbc:sqlite:" + file.toUri()))
                .open()) {
            // where all that was ever written is in a log that is gone, there are no tables either
            boolean made = handle.createQuery("PRAGMA user_version")
                            .mapTo(Integer.class)
                            .one()
                    > 0;
            return OptionalLong.of(made ? new Journals(handle).entries() : 0);
        } catch (JdbiException unreadable) {
            return OptionalLong.empty();
        }
    }

    private static Connection connection(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MS);
        // as an address, in which every character of a path can be told
        return config.createConnection("jdbc:sqlite:" + file.toUri());
    }

    private void migrate(Migrations migrations) {
        int version = version();
        if (version > migrations.version()) {
            throw new NewerTables(file, version, migrations.version());
        }
        for (int next = version + 1; next <= migrations.version(); next++) {
            String script = migrations.to(next);
            write(journals -> run(journals.handle().getConnection(), script));
        }
    }

    int version() {
        return handle.createQuery("PRAGMA user_version").mapTo(Integer.class).one();
    }

    /** SQLite's own proof of the file: "ok", or what is wrong. */
    String integrity() {
        return String.join(
                "; ",
                handle.createQuery("PRAGMA integrity_check").mapTo(String.class).list());
    }

    /** Runs a script of several statements; Jdbi's own splitting does not know triggers. */
    private void run(Connection connection, String script) {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        } catch (SQLException fault) {
            throw fault(
                    "The tables of the database " + file + " can't be brought up to date: ",
                    fault,
                    " It is as it was.");
        }
    }

    /** Reads. */
    <T> T read(Function<Journals, T> reading) {
        try {
            return reading.apply(new Journals(handle));
        } catch (JdbiException fault) {
            throw fault("The database " + file + " can't be read: ", fault, "");
        }
    }

    /** Writes all or nothing; when it returns, all is on disk. */
    void write(Consumer<Journals> writing) {
        try {
            handle.useTransaction(here -> writing.accept(new Journals(here)));
        } catch (JdbiException fault) {
            throw fault("The database " + file + " can't be written: ", fault, " Nothing of this was kept.");
        }
    }

    /** Copies the database as it stands into a new file. */
    void copyTo(Path target) {
        try {
            handle.execute("VACUUM INTO ?", target.toString());
        } catch (JdbiException fault) {
            throw fault("The database could not be copied to " + target + ": ", fault, "");
        }
    }

    private static ShelfFault fault(String what, Exception fault, String sequel) {
        DatabaseTrouble trouble = DatabaseTrouble.of(fault);
        return new ShelfFault(what + trouble.words(fault) + "." + sequel + " " + trouble.wayOn(), fault);
    }

    @Override
    public void close() {
        handle.close();
    }
}
