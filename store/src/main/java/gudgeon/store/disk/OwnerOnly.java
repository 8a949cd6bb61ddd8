package gudgeon.store.disk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Files that only the person who runs Gudgeon may read: keys, and who is let in. */
public final class OwnerOnly {
    private static final String POSIX = "rw-------";

    private OwnerOnly() {}

    /**
     * Writes a file whole. It is made with its permissions before anything is in it, so that at no moment another may read it.
     */
    public static void write(Path file, byte[] content) throws IOException {
        WholeFile.write(file, partial -> {
            make(partial);
            Files.write(partial, content);
        });
    }

    private static void make(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(POSIX)));
            return;
        }
        // Windows keeps no such permissions: there the person's own folders are closed to others already
        Files.createFile(file);
    }
}
