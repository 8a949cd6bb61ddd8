package gudgeon.store.shelf;

import gudgeon.store.disk.Folders;
import gudgeon.store.disk.Reason;
import gudgeon.store.disk.WholeFile;
import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Holds a data folder for one process. The operating system frees it when the process ends, however it ends.
 *
 * @param channel the lock file's channel, whose closing frees the folder
 * @param address the file that tells others where the holder shows the builds; only the holder's own counts
 */
record FolderLock(FileChannel channel, Path address) implements AutoCloseable {

    /** Takes hold of a folder, which is made if it is not there. */
    static FolderLock on(Path folder) {
        Path address = folder.resolve("shelf.address");
        try {
            Folders.make(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve("shelf.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isLocked(channel)) {
                channel.close();
                throw new FolderInUse(folder, told(address));
            }
            Files.deleteIfExists(address);
            return new FolderLock(channel, address);
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

    private static Optional<URI> told(Path address) {
        try {
            return Optional.of(URI.create(Files.readString(address).strip()));
        } catch (IOException | IllegalArgumentException notTold) {
            return Optional.empty();
        }
    }

    /** Tells others where the builds are shown. */
    void tell(URI where) {
        try {
            WholeFile.write(address, file -> Files.writeString(file, where + "\n"));
        } catch (IOException unwritable) {
            throw new ShelfFault(
                    "The data folder can't be written: " + Reason.of(unwritable) + ". See that the disk has room.",
                    unwritable);
        }
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(address);
            channel.close();
        } catch (IOException gone) {
            throw new ShelfFault("The data folder could not be let go: " + Reason.of(gone), gone);
        }
    }
}
