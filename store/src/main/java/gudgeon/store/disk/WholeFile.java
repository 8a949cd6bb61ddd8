package gudgeon.store.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** Writes a file so that under its name it is either whole and on disk or not there, whenever the power goes. */
public final class WholeFile {
    private WholeFile() {}

    /** Fills a file. */
    public interface Filling {
        /** Writes all of it into a file that is not there yet. */
        void into(Path file) throws IOException;
    }

    /** Writes a file, in the place of one that is there already. Its folder is made if it is not there. */
    public static void write(Path file, Filling filling) throws IOException {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent())
                .orElseThrow(() -> new IOException(file + " has no folder"));
        Files.createDirectories(folder);
        Path partial = folder.resolve(file.getFileName() + ".partial");
        Files.deleteIfExists(partial);
        try {
            filling.into(partial);
            force(partial, StandardOpenOption.WRITE);
            Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(partial);
        }
        forceName(folder);
    }

    private static void force(Path file, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how)) {
            channel.force(true);
        }
    }

    /** Has the name on disk too, where the system lets a folder be forced; Windows does not. */
    private static void forceName(Path folder) {
        try {
            force(folder, StandardOpenOption.READ);
        } catch (IOException notHere) {
            // the file itself is on disk; its name follows with the system's next sweep
        }
    }
}
