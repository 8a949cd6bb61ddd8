package gudgeon.store.shelf;

import java.util.Arrays;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteException;

/** Why the database could not do it, and the way on, in words for a person. */
enum DatabaseTrouble {
    FULL("the disk is full", "Make room on the disk and try again.", "FULL"),
    READ_ONLY(
            "it may only be read",
            "See that you may write the file and its folder, and try again.",
            "READONLY|CANTOPEN|PERM"),
    DAMAGED(
            "it is damaged",
            "gudgeon mend saves all of it that can be read and fills in the rest from the backups.",
            "CORRUPT|NOTADB|FORMAT"),
    DISK(
            "the disk does not read or write it",
            "See that the disk is there, is sound and has room, and try again; if it goes on, copy the data folder to"
                    + " another disk and run gudgeon mend there.",
            "IOERR"),
    OTHER(
            "",
            "If it goes on, stop Gudgeon and run gudgeon mend, which saves all that can be read and fills in the rest"
                    + " from the backups.",
            "");

    private final String words;
    private final String wayOn;
    /** Beginnings of SQLite's result codes, as a pattern. */
    private final String codes;

    DatabaseTrouble(String words, String wayOn, String codes) {
        this.words = words;
        this.wayOn = wayOn;
        this.codes = codes;
    }

    static DatabaseTrouble of(Exception fault) {
        if (!(cause(fault) instanceof SQLiteException cause)) {
            return OTHER;
        }
        String code = cause.getResultCode().name();
        return Arrays.stream(values())
                .filter(trouble -> code.matches("SQLITE_(" + trouble.codes + ")(_.*)?"))
                .findFirst()
                .orElse(OTHER);
    }

    /** What SQLite said, whether or not it comes by way of Jdbi. */
    private static Throwable cause(Exception fault) {
        return fault instanceof JdbiException && fault.getCause() != null ? fault.getCause() : fault;
    }

    /** Words that can follow a colon. */
    String words(Exception fault) {
        return this == OTHER ? String.valueOf(cause(fault).getMessage()) : words;
    }

    /** What to do, sentences. */
    String wayOn() {
        return wayOn;
    }
}
