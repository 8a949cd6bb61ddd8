package gudgeon.bench.packed;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Files that are packed with the program. */
public final class Packed {
    private Packed() {}

    /**
     * A text that every edition of the program holds.
     *
     * @param path from the root of the class path, with a slash before it
     * @throws IllegalStateException if it is not there
     */
    public static String text(String path) {
        return bytes(path)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElseThrow(() -> new IllegalStateException(path + " is not on the class path"));
    }

    /** A file's bytes; empty if there is no such file. */
    public static Optional<byte[]> bytes(String path) {
        try (InputStream stream = Packed.class.getResourceAsStream(path)) {
            return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
