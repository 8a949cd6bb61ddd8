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
        Folders.make(folder);
        Path partial = folder.resolve(file.getFileName() + ".partial");
        Files.deleteIfExists(partial);
        try {
            filling.into(partial);
            move(partial, file);
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    /** Copies a file. */
    public static void copy(Path from, Path to) throws IOException {
        write(to, partial -> Files.copy(from, partial));
    }

    /** Gives a file that is written another name in its folder, in the place of one that is there already. */
    public static void move(Path written, Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(written, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(written, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        Folders.forceNames(file.resolveSibling("."));
    }
}
