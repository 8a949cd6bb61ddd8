package gudgeon.store.disk;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Optional;

/** Why the disk could not do it, in words for a sentence. */
public final class Reason {
    private Reason() {}

    /** Words that can follow a colon. */
    public static String of(IOException fault) {
        if (fault instanceof AccessDeniedException denied) {
            return "you may not read or write " + denied.getFile();
        }
        if (fault instanceof NoSuchFileException missing) {
            return missing.getFile() + " is not there";
        }
        if (fault instanceof FileAlreadyExistsException taken) {
            return taken.getFile() + " is there already";
        }
        if (fault instanceof NotDirectoryException file) {
            return file.getFile() + " is no folder";
        }
        if (fault instanceof FileSystemException other) {
            return other.getFile() + ": "
                    + Optional.ofNullable(other.getReason()).orElse("the system does not say why");
        }
        return Optional.ofNullable(fault.getMessage()).orElse("the system does not say why");
    }
}
