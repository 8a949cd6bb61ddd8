package gudgeon.store.shelf;

import gudgeon.store.backup.Backup;
import gudgeon.store.backup.Backups;
import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** Brings a backup back in the place of a data folder's database. */
public final class Restoring {
    private static final List<String> SIDE_FILES = List.of("-wal", "-shm");

    private final Path folder;
    private final Clock clock;
    private final Path database;

    /** Of a data folder. */
    public Restoring(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        this.database = folder.resolve("shelf.db");
    }

    /**
     * What was done.
     *
     * @param backup the backup that counts now
     * @param aside the folder in which what was there before lies; empty if nothing was there
     */
    public record Restored(Backup backup, Optional<Path> aside) {}

    /**
     * Restores a backup: proves it first, then puts aside what is there, then puts the backup in its place.
     *
     * @param name the backup's file name; the newest where none is named
     * @throws ShelfFault if there is none, it is damaged, or the folder is in use; then nothing was changed
     */
    public Restored restore(Optional<String> name) {
        FolderLock lock = FolderLock.on(folder);
        try {
            return bring(name);
        } catch (IOException fault) {
            throw new ShelfFault(
                    "The backup could not be restored: " + Reason.of(fault)
                            + ". See that the disk has room and can be written.",
                    fault);
        } finally {
            lock.close();
        }
    }

    private Restored bring(Optional<String> name) throws IOException {
        Backups backups = new Backups(folder.resolve("backups"), clock);
        Backup backup = backups.named(name)
                .orElseThrow(() -> new ShelfFault("There is no backup"
                        + name.map(given -> " '" + given + "'").orElse("") + " in " + backups.folder()
                        + ". Look there for the names of those there are."));
        Path restored = folder.resolve("shelf.db.restoring");
        remove(restored);
        Files.copy(backups.file(backup), restored);
        prove(restored, backup);
        Optional<Path> aside = putAside();
        SIDE_FILES.forEach(ending -> remove(Path.of(database + ending)));
        Files.move(restored, database, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return new Restored(backup, aside);
    }

    private static void prove(Path copy, Backup backup) {
        try (Database opened = Database.open(copy)) {
            String integrity = opened.integrity();
            if (!integrity.equals("ok")) {
                throw new ShelfFault(integrity);
            }
        } catch (ShelfFault damaged) {
            remove(copy);
            throw new ShelfFault(
                    "The backup " + backup.name() + " can't be used; nothing was changed. Name another. ("
                            + damaged.getMessage() + ")",
                    damaged);
        }
    }

    /** Copies rather than moves: until the backup is in its place, what was there still is. */
    private Optional<Path> putAside() throws IOException {
        if (!Files.exists(database)) {
            return Optional.empty();
        }
        String stamp =
                clock.instant().truncatedTo(ChronoUnit.SECONDS).toString().replace(":", "");
        Path all = Files.createDirectories(folder.resolve("set-aside"));
        Path aside = Files.createTempDirectory(all, stamp + "-");
        Files.copy(database, aside.resolve("shelf.db"));
        for (String ending : SIDE_FILES) {
            Path side = Path.of(database + ending);
            if (Files.exists(side)) {
                Files.copy(side, aside.resolve("shelf.db" + ending));
            }
        }
        return Optional.of(aside);
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
