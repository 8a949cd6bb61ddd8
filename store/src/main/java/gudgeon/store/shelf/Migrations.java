package gudgeon.store.shelf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The scripts that bring a database's tables up to date, each from one version to the next. A script and the number that it leaves are one
 * transaction: wherever it is cut short, the tables are wholly of one version, and the next start goes on from there.
 *
 * @param scripts the first makes the tables of an empty database
 */
record Migrations(List<String> scripts) {
    /** The version of the tables that this program knows. */
    private static final int KNOWN = 1;

    Migrations {
        scripts = List.copyOf(scripts);
    }

    /** Those of this program. */
    static Migrations ofProgram() {
        return new Migrations(
                IntStream.rangeClosed(1, KNOWN).mapToObj(Migrations::read).toList());
    }

    private static String read(int version) {
        try (InputStream stream = Migrations.class.getResourceAsStream("migration-" + version + ".sql")) {
            if (stream == null) {
                throw new IllegalStateException("no migration " + version);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new IllegalStateException("the program's own file can't be read", unreadable);
        }
    }

    /** The version that they lead to. */
    int version() {
        return scripts.size();
    }

    /** What makes tables of a version, at least 1, from those of the one before. */
    String to(int version) {
        return scripts.get(version - 1) + "\nPRAGMA user_version = " + version + ";";
    }
}
