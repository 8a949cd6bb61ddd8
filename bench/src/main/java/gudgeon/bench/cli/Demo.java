package gudgeon.bench.cli;

import gudgeon.bench.packed.Packed;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The invented workshop's own shelf, in a folder of its own that goes when the demo ends. */
final class Demo implements AutoCloseable {
    private static final String BOOK = "/demo/tarn-98.yaml";
    /** Its rebuilds, the one to be shown first last: the shelf has the one last worked on first. */
    private static final List<Rebuild> REBUILDS = List.of(
            new Rebuild("Tarn 98 no. 2043", Found.IN_PIECES, "/demo/tarn-98-worn.jsonl"),
            new Rebuild("Tarn 98 no. 1187", Found.TOGETHER, "/demo/tarn-98.jsonl"));

    /** A rebuild of the invented engine, as its journal tells it. */
    private record Rebuild(String name, Found found, String journal) {}

    private final Path folder;
    private final Shelf shelf;

    private Demo(Path folder, Shelf shelf) {
        this.folder = folder;
        this.shelf = shelf;
    }

    /** Puts the invented engine's rebuilds on a shelf. */
    static Demo open() {
        try {
            Path folder = Files.createTempDirectory("gudgeon-demo");
            Shelf shelf = Shelf.open(folder);
            REBUILDS.forEach(rebuild -> put(rebuild, shelf));
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

    private static void put(Rebuild rebuild, Shelf shelf) {
        String id = shelf.start(rebuild.name(), Packed.text(BOOK), rebuild.found(), "bench");
        if (!(shelf.append(id, entries(rebuild.journal())) instanceof Outcome.Kept)) {
            throw new IllegalStateException(rebuild.journal() + " does not go with its book");
        }
    }

    /** The entries of a journal but the one that begins it, which the shelf writes itself. */
    private static List<Entry> entries(String journal) {
        Reading reading = JournalFile.read(Packed.text(journal));
        if (reading instanceof Reading.Read read) {
            return read.entries().stream()
                    .filter(entry -> !(entry.fact() instanceof Fact.Started))
                    .toList();
        }
        throw new IllegalStateException(journal + " can't be read: " + reading);
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
