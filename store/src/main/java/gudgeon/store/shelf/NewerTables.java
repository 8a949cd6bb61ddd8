package gudgeon.store.shelf;

import java.nio.file.Path;

/** A database was written by a newer Gudgeon, which may keep in it what this one does not know. */
final class NewerTables extends ShelfFault {
    NewerTables(Path file, int version, int known) {
        super("The database " + file + " was written by a newer Gudgeon (tables of version " + version
                + ", this one knows " + known + "). Update this one. If there never was a newer one here, the file is"
                + " damaged: gudgeon restore brings back a backup.");
    }
}
