package gudgeon.rebuild.fasten;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The example engine, and builds of it. */
final class TarnJoints {
    static final String COVER = "cover-right-joint";

    private TarnJoints() {}

    static Build build(List<? extends Fact> facts) {
        return Build.of(book()).asIf(facts);
    }

    static JointNow joint(String id, List<? extends Fact> facts) {
        return JointNow.of(build(facts), id).orElseThrow();
    }

    private static EngineBook book() {
        try {
            BookReading reading =
                    new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
            if (reading instanceof BookReading.Read read) {
                return read.book();
            }
            throw new AssertionError(reading.faults());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
