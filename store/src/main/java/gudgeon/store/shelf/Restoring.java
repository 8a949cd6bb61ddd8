package gudgeon.store.shelf;

import gudgeon.store.backup.Backup;
import gudgeon.store.backup.Backups;
import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Brings a backup back in the place of a data folder's database. */
public final class Restoring {
    private final Path folder;
    private final Clock clock;
    private final DatabaseFiles files;

    /** Of a data folder. */
    public Restoring(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        this.files = new DatabaseFiles(folder, clock);
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
        DatabaseFiles.removeAll(restored);
        Files.copy(backups.file(backup), restored);
        prove(restored, backup);
        Optional<Path> aside = files.putAside();
        files.replaceBy(restored);
        return new Restored(backup, aside);
    }

    private static void prove(Path copy, Backup backup) {
        try (Database opened = Database.open(copy)) {
            String integrity = opened.integrity();
            if (!integrity.equals("ok")) {
                throw new ShelfFault(integrity);
            }
        } catch (ShelfFault damaged) {
            DatabaseFiles.removeAll(copy);
            throw new ShelfFault(
                    "The backup " + backup.name() + " can't be used; nothing was changed. Name another. ("
                            + damaged.getMessage() + ")",
                    damaged);
        }
    }
}
