package gudgeon.rebuild.archetype;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** An engine book to start from. */
public enum Archetype {
    LYING_OVERHEAD_CAM_SINGLE("lying-overhead-cam-single"),
    UPRIGHT_PUSHROD_SINGLE("upright-pushrod-single"),
    SIDE_VALVE_STATIONARY("side-valve-stationary");

    private final String id;

    Archetype(String id) {
        this.id = id;
    }

    /** The one of that id. */
    public static Optional<Archetype> of(String id) {
        return Arrays.stream(values())
                .filter(archetype -> archetype.id.equals(id))
                .findFirst();
    }

    /** Its name on the command line and in addresses. */
    public String id() {
        return id;
    }

    /** The text of its book, to be copied and filled in. */
    public String text() {
        try (InputStream stream = Archetype.class.getResourceAsStream(id + ".yaml")) {
            if (stream == null) {
                throw new IllegalStateException("the archetype " + id + " is not in the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Its book. */
    public EngineBook book() {
        if (new EngineBookReader().read(text()) instanceof BookReading.Read read) {
            return read.book();
        }
        throw new IllegalStateException("the archetype " + id + " has faults");
    }
}
