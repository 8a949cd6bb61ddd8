package gudgeon.store.shelf;

import gudgeon.store.disk.Folders;
import gudgeon.store.disk.Reason;
import gudgeon.store.disk.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    /** Its write-ahead log, which is there while it is open and after a kill. */
    Path log() {
        return Path.of(database() + "-wal");
    }

    /** Copies what is there now into a folder of its own; empty if nothing is there. */
    Optional<Path> putAside() throws IOException {
        if (!Files.exists(database())) {
            return Optional.empty();
        }
        String stamp =
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString().replace(":", "");
        Path aside = asideFor(stamp);
        WholeFile.copy(database(), aside.resolve("shelf.db"));
        for (String ending : SIDE_FILES) {
            Path side = Path.of(database() + ending);
            if (Files.exists(side)) {
                WholeFile.copy(side, aside.resolve("shelf.db" + ending));
            }
        }
        return Optional.of(aside);
    }

    /** A folder for it that was not there: two can be put aside in one second. */
    private Path asideFor(String stamp) throws IOException {
        Path all = folder.resolve("set-aside");
        Path aside = all.resolve(stamp);
        for (int more = 2; Files.exists(aside); more++) {
            aside = all.resolve(stamp + "-" + more);
        }
        return Folders.make(aside);
    }

    /**
     * Puts a whole database in the place of what is there. A log that is not its own would be taken for its own, so that goes before; how
     * much was acknowledged goes last, so that what the log held is missed should it come to an end between.
     */
    void replaceBy(Path whole) throws IOException {
        SIDE_FILES.forEach(ending -> remove(Path.of(database() + ending)));
        WholeFile.move(whole, database());
        new Acknowledged(database()).forget();
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
