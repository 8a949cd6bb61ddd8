package gudgeon.store.shelf;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Engine books that were read, by the hash of their text, so that builds with the same book share it; the {@value #MOST} used last are
 * kept. For any number of threads.
 */
final class ReadBooks {
    private static final int MOST = 16;

    private final Map<String, BookReading> readings = new LinkedHashMap<>(16, 0.75f, true);

    /**
     * What a book says.
     *
     * @param hash the content hash of its text, proved before
     */
    synchronized BookReading of(String hash, String text) {
        BookReading reading = readings.computeIfAbsent(hash, unread -> new EngineBookReader().read(text));
        if (readings.size() > MOST) {
            readings.remove(readings.keySet().iterator().next());
        }
        return reading;
    }
}
