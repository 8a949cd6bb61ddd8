package gudgeon.benchmarks.shelf;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;

/** How many rows a bare loop puts into the shelf's own tables in a second, one a transaction. */
public final class BareInserts {
    private static final int ROWS = 3_000;
    private static final String LINE = "x".repeat(200);

    private BareInserts() {}

    /** Measures in a new database, whose disk is what counts. */
    public static double aSecond(Path file) throws SQLException, IOException {
        try (BareTable table = new BareTable(file)) {
            long begun = System.nanoTime();
            for (int row = 0; row < ROWS; row++) {
                table.insert(1, LINE, "0".repeat(64));
            }
            return ROWS / ((System.nanoTime() - begun) / 1e9);
        }
    }
}
