package gudgeon.store.shelf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.OptionalLong;

/**
 * How many entries of a database were acknowledged, noted in a file beside it after each commit. SQLite reads its write-ahead log up to the
 * first page that is not whole: were a page damaged, or the log gone, between a kill and the next start, then all that came after would be
 * gone without a word. By this number it is missed.
 *
 * <p>The note is not synchronised, since that would make every entry wait twice. So after a loss of power it may be some seconds
 * behind, but it is never ahead: it is written when the entry is on disk.
 *
 * @param database the database
 */
record Acknowledged(Path database) {
    private Path note() {
        return Path.of(database + "-acknowledged");
    }

    /** Notes the number. It must not fail an entry that is on disk: where it can't be written, an older one stands. */
    void tell(long entries) {
        String number = String.format(Locale.ROOT, "%019d", entries);
        String text = number + " " + ContentHash.of(number) + "\n";
        try {
            // over the old one, in one sector: a disk that is full takes it too
            Files.writeString(note(), text, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException unwritable) {
            // the next one may be
        }
    }

    /** The number noted last; 0 if there is none that can be believed. */
    long told() {
        try {
            String text = Files.readString(note(), StandardCharsets.US_ASCII).strip();
            int space = text.indexOf(' ');
            return space > 0 && ContentHash.of(text.substring(0, space)).equals(text.substring(space + 1))
                    ? Long.parseLong(text.substring(0, space))
                    : 0;
        } catch (IOException | NumberFormatException nothing) {
            return 0;
        }
    }

    /**
     * Proves that the database holds as many. Nothing is changed by it. What can't be read at all is left to its opening to tell.
     *
     * @throws ShelfFault if it holds fewer
     */
    void prove() {
        long told = told();
        long there = told > 0 ? there().orElse(told) : told;
        if (there < told) {
            throw new ShelfFault("The database " + database + " holds " + there + " entries, and " + told
                    + " were written: the end of its log is damaged or gone, or another database was put in its place."
                    + " gudgeon mend saves all of them that can be read and fills in the rest from the backups.");
        }
    }

    private OptionalLong there() {
        return Files.exists(database) ? Database.entriesIn(database) : OptionalLong.of(0);
    }

    /** Forgets it, when another database has taken the place. */
    void forget() throws IOException {
        Files.deleteIfExists(note());
    }
}
