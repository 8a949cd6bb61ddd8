package gudgeon.store.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Migrations from the tables of this program to some that there may be one day: all entries are copied into other tables, which takes a
 * while. As a process it brings a database up to date, and is there to be killed.
 */
public final class Migrator {
    /** Another table takes the place of the entries', in three scripts, each of which would lose all if it were cut in the midst. */
    private static final List<String> LATER = List.of("""
            CREATE TABLE moved (
                build TEXT NOT NULL, number INTEGER NOT NULL, key TEXT NOT NULL, line TEXT NOT NULL,
                previous TEXT NOT NULL, hash TEXT NOT NULL, PRIMARY KEY (build, number)
            ) STRICT, WITHOUT ROWID;
            INSERT INTO moved SELECT build, number, key, line, previous, hash FROM entry;
            DROP TABLE entry;
            """, """
            CREATE TABLE entry AS SELECT * FROM moved;
            DROP TABLE moved;
            CREATE UNIQUE INDEX entry_numbered ON entry (build, number);
            """, """
            ALTER TABLE build ADD COLUMN note TEXT NOT NULL DEFAULT '';
            UPDATE build SET note = name || ' ' || entries;
            """);

    private Migrator() {}

    /** Those that a program of that version would have. */
    static Migrations ofVersion(int version) {
        List<String> scripts = new ArrayList<>(Migrations.ofProgram().scripts());
        scripts.addAll(LATER.subList(0, version - scripts.size()));
        return new Migrations(scripts);
    }

    /** Those of the last version there is here. */
    static Migrations all() {
        return ofVersion(Migrations.ofProgram().version() + LATER.size());
    }

    /** Takes the database. It says when it begins. */
    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]);
        // what is loaded before takes no time afterwards
        Database.open(Path.of(file + ".other"), all()).close();
        System.out.println("begins");
        Database.open(file, all()).close();
        System.out.println("ends");
    }
}
