package gudgeon.store.shelf;

import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * The files of a data folder's database, and how another takes their place: what was there is kept aside first, and until the other is in
 * its place, what was there still is.
 *
 * @param folder the data folder
 * @param clock tells when something was set aside
 */
record DatabaseFiles(Path folder, Clock clock) {
    private static final List<String> SIDE_FILES = List.of("-wal", "-shm");

    /** The database itself. */
    Path database() {
        return folder.resolve("shelf.db");
    }

    /** Copies what is there now into a folder of its own; empty if nothing is there. */
    Optional<Path> putAside() throws IOException {
        if (!Files.exists(database())) {
            return Optional.empty();
        }
        String stamp =
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString().replace(":", "");
        Path all = Files.createDirectories(folder.resolve("set-aside"));
        Path aside = Files.createTempDirectory(all, stamp + "-");
        Files.copy(database(), aside.resolve("shelf.db"));
        for (String ending : SIDE_FILES) {
            Path side = Path.of(database() + ending);
            if (Files.exists(side)) {
                Files.copy(side, aside.resolve("shelf.db" + ending));
            }
        }
        return Optional.of(aside);
    }

    /** Puts a whole database in the place of what is there. */
    void replaceBy(Path whole) throws IOException {
        SIDE_FILES.forEach(ending -> remove(Path.of(database() + ending)));
        Files.move(whole, database(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Removes a database that was only made on the way, with its side files. */
    static void removeAll(Path database) {
        remove(database);
        SIDE_FILES.forEach(ending -> remove(Path.of(database + ending)));
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException fault) {
            throw new ShelfFault(
                    "The file " + file + " can't be removed: " + Reason.of(fault) + ". Remove it and try again.",
                    fault);
        }
    }
}
