package gudgeon.store.shelf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
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
    /** The version of the tables that this program knows. */
    static final int VERSION = 1;

    private static final int BUSY_MS = 10_000;

    private final Path file;
    private final Handle handle;

    private Database(Path file, Handle handle) {
        this.file = file;
        this.handle = handle;
    }

    /** Opens a database, which is made if it is not there, and brings its tables up to date. */
    static Database open(Path file) {
        try {
            Handle handle = Jdbi.create(() -> connection(file)).open();
            Database database = new Database(file, handle);
            try {
                database.migrate();
                return database;
            } catch (ShelfFault | JdbiException fault) {
                handle.close();
                throw fault;
            }
        } catch (JdbiException unusable) {
            throw fault("The database " + file + " can't be opened: ", unusable, "");
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

    private void migrate() {
        int version = version();
        if (version > VERSION) {
            throw new ShelfFault("The database " + file + " was written by a newer Gudgeon (tables of version "
                    + version + ", this one knows " + VERSION + "). Update this one.");
        }
        for (int next = version + 1; next <= VERSION; next++) {
            String script = script(next) + "\nPRAGMA user_version = " + next + ";";
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

    private static String script(int version) {
        try (InputStream stream = Database.class.getResourceAsStream("migration-" + version + ".sql")) {
            if (stream == null) {
                throw new IllegalStateException("no migration " + version);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new IllegalStateException("the program's own file can't be read", unreadable);
        }
    }

    /** Runs a script of several statements; Jdbi's own splitting does not know triggers. */
    private static void run(Connection connection, String script) {
        try (Statement statement = connection.createStatement()) {
            statement.executeUpdate(script);
        } catch (SQLException fault) {
            throw new ShelfFault("The tables could not be brought up to date: " + fault.getMessage(), fault);
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

    private static ShelfFault fault(String what, JdbiException fault, String sequel) {
        DatabaseTrouble trouble = DatabaseTrouble.of(fault);
        return new ShelfFault(what + trouble.words(fault) + "." + sequel + " " + trouble.wayOn(), fault);
    }

    @Override
    public void close() {
        handle.close();
    }
}
