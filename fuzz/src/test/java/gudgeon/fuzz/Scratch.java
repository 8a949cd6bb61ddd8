package gudgeon.fuzz;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Folders that go when they are done with. */
final class Scratch {
    private Scratch() {}

    /** One that goes when the process ends. */
    static Path folder() {
        try {
            Path folder = Files.createTempDirectory("gudgeon-fuzz");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
            return folder;
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** Takes a folder away with all in it. */
    static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException left) {
            // the system's temporary folder is emptied by the system
        }
    }
}
