package gudgeon.store.shelf;

import gudgeon.store.disk.Reason;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Holds a data folder for one process. The operating system frees it when the process ends, however it ends.
 *
 * @param channel the lock file's channel, whose closing frees the folder
 */
record FolderLock(FileChannel channel) implements AutoCloseable {

    /** Takes hold of a folder, which is made if it is not there. */
    static FolderLock on(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve("shelf.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isLocked(channel)) {
                channel.close();
                throw new ShelfFault("The data folder " + folder
                        + " is in use by another Gudgeon. Stop that one first, or name another folder with --data.");
            }
            return new FolderLock(channel);
        } catch (IOException unusable) {
            throw new ShelfFault(
                    "The data folder " + folder + " can't be used: " + Reason.of(unusable)
                            + ". Name a folder that you may write with --data.",
                    unusable);
        }
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException heldHere) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException gone) {
            throw new ShelfFault("The data folder could not be let go: " + Reason.of(gone), gone);
        }
    }
}
