package gudgeon.rebuild.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The example book and its spoilt copies, for the tests of this room. */
final class Books {
    private Books() {}

    static String tarn() {
        try {
            return Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The example with one piece of text replaced, which must be there. */
    static String spoilt(String text, String by) {
        String tarn = tarn();
        if (!tarn.contains(text)) {
            throw new IllegalArgumentException("the example does not hold: " + text);
        }
        int at = tarn.indexOf(text);
        return tarn.substring(0, at) + by + tarn.substring(at + text.length());
    }

    /** The line of the example on which a piece of text first stands. */
    static int lineOf(String text) {
        String tarn = tarn();
        return (int) tarn.substring(0, tarn.indexOf(text))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
    }

    static Geometry book(String text) {
        BookReading reading = new EngineBookReader().read(text);
        if (reading instanceof BookReading.Read read) {
            return read.book().geometry().orElseThrow();
        }
        throw new AssertionError("refused: " + sentences(reading));
    }

    static List<String> sentences(BookReading reading) {
        return reading.faults().stream().map(Fault::sentence).toList();
    }
}
