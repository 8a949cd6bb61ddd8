package gudgeon.fuzz;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The invented engine that ships with the program, and the rebuild of a worn one. */
public final class Tarn {
    private Tarn() {}

    /** Its engine book. */
    public static EngineBook book() {
        if (new EngineBookReader().read(bookText()) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new IllegalStateException("the demo's book can't be read");
    }

    /** The text of its engine book. */
    public static String bookText() {
        return text("/demo/tarn-98.yaml");
    }

    /** The rebuild of a worn one, as far as its journal goes. */
    public static Build worn() {
        if (JournalFile.read(text("/demo/tarn-98-worn.jsonl")) instanceof Reading.Read read) {
            return Build.of(book()).after(read.entries());
        }
        throw new IllegalStateException("the demo's journal can't be read");
    }

    private static String text(String resource) {
        try (InputStream stream = Build.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(resource + " is not on the class path");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
