package gudgeon.benchmarks.shelf;

import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import org.sqlite.SQLiteConfig;

/** The rival: rows put into the shelf's own tables with its own settings, and nothing else done. */
final class BareTable implements AutoCloseable {
    private final Connection connection;
    private final PreparedStatement insert;
    private long number;

    BareTable(Path file) throws SQLException, IOException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.enforceForeignKeys(true);
        connection = config.createConnection("jdbc:sqlite:" + file.toUri());
        try (Statement statement = connection.createStatement();
                InputStream tables = Objects.requireNonNull(
                        Shelf.class.getResourceAsStream("migration-1.sql"), "the shelf's tables")) {
            statement.executeUpdate(new String(tables.readAllBytes(), StandardCharsets.UTF_8));
            statement.executeUpdate("INSERT INTO build (id, name, entries, head) VALUES ('bare', 'bare', 0, '')");
        }
        connection.setAutoCommit(false);
        insert = connection.prepareStatement(
                "INSERT INTO entry (build, number, key, line, previous, hash) VALUES ('bare', ?, ?, ?, ?, ?)");
    }

    /** Puts rows in with one transaction. */
    void insert(int rows, String line, String hash) throws SQLException {
        for (int row = 0; row < rows; row++) {
            number++;
            insert.setLong(1, number);
            insert.setString(2, "key-" + number);
            insert.setString(3, line);
            insert.setString(4, hash);
            insert.setString(5, hash);
            insert.executeUpdate();
        }
        connection.commit();
    }

    @Override
    public void close() throws SQLException {
        insert.close();
        connection.close();
    }
}
