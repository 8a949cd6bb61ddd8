package gudgeon.bench.cli;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The invented workshop's own shelf, in a folder of its own that goes when the demo ends. */
final class Demo implements AutoCloseable {
    private static final String BOOK = "/demo/tarn-98.yaml";
    private static final String JOURNAL = "/demo/tarn-98.jsonl";

    private final Path folder;
    private final Shelf shelf;

    private Demo(Path folder, Shelf shelf) {
        this.folder = folder;
        this.shelf = shelf;
    }

    /** Puts the invented engine's rebuild on a shelf. */
    static Demo open() {
        try {
            Path folder = Files.createTempDirectory("gudgeon-demo");
            Shelf shelf = Shelf.open(folder);
            String id = shelf.start("Tarn 98 no. 1187", text(BOOK), Found.TOGETHER, "bench");
            if (!(shelf.append(id, entries()) instanceof Outcome.Kept)) {
                throw new IllegalStateException("the demo's journal does not go with its book");
            }
            Demo demo = new Demo(folder, shelf);
            // a demo is mostly ended by Ctrl+C
            Runtime.getRuntime().addShutdownHook(new Thread(demo::close));
            return demo;
        } catch (IOException unwritable) {
            throw new Unusable("The demo needs a temporary folder, and none can be made: " + unwritable.getMessage());
        }
    }

    Shelf shelf() {
        return shelf;
    }

    Photos photos() {
        return new Photos(folder);
    }

    private static List<Entry> entries() {
        Reading reading = JournalFile.read(text(JOURNAL));
        if (reading instanceof Reading.Read read) {
            return new ArrayList<>(read.entries());
        }
        throw new IllegalStateException("the demo's journal can't be read: " + reading);
    }

    private static String text(String resource) {
        try (InputStream stream = Demo.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(resource + " is not on the class path");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public synchronized void close() {
        if (!Files.exists(folder)) {
            return;
        }
        shelf.close();
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException left) {
            // the system's temporary folder is emptied by the system
        }
    }
}
