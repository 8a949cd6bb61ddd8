package gudgeon.store.backup;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * One copy of the database.
 *
 * @param kind why it was made
 * @param taken when it was made, to the second
 */
public record Backup(Kind kind, Instant taken) {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final String ENDING = ".db";

    /** Why a backup was made, and so how long it is kept. */
    public enum Kind {
        /** At the first opening of a day; the last 7 are kept. */
        DAILY,
        /** At the first opening of a week; the last 4 are kept. */
        WEEKLY,
        /** Asked for; kept until the person removes it. */
        ASKED;

        private String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The name of its file. */
    public String name() {
        return kind.word() + "-" + STAMP.format(taken) + ENDING;
    }

    /** The backup that a file is, by its name; empty if it is none. */
    static Optional<Backup> of(Path file) {
        String name = String.valueOf(file.getFileName());
        return Arrays.stream(Kind.values())
                .filter(kind -> name.startsWith(kind.word() + "-") && name.endsWith(ENDING))
                .findFirst()
                .flatMap(kind -> taken(name.substring(kind.word().length() + 1, name.length() - ENDING.length()))
                        .map(at -> new Backup(kind, at)));
    }

    private static Optional<Instant> taken(String stamp) {
        try {
            return Optional.of(Instant.from(STAMP.parse(stamp)));
        } catch (DateTimeParseException otherFile) {
            return Optional.empty();
        }
    }
}
