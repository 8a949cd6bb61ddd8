package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Objects;

/** A small engine book and entries about it, for tests. */
public final class Small {
    /** When all of it happens. */
    public static final Instant NOW = Instant.parse("2026-03-01T10:00:00Z");

    private Small() {}

    /** The text of a book of two parts. */
    public static String book() {
        try (InputStream stream = Objects.requireNonNull(Small.class.getResourceAsStream("/shelf/small.yaml"))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** An entry made by a device that had seen so many. */
    public static Entry entry(String key, String device, long seen, Fact fact) {
        return new Entry(key, NOW, device, seen, fact);
    }
}
