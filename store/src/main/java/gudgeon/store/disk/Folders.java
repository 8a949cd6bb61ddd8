package gudgeon.store.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders whose names are on disk, whenever the power goes: a file is lost with the name of a folder above it. */
public final class Folders {
    private Folders() {}

    /** Makes a folder, and those above it, unless they are there; then their names are on disk. */
    public static Path make(Path folder) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path at = folder.toAbsolutePath(); at != null && !Files.exists(at); at = at.getParent()) {
            missing.push(at);
        }
        Files.createDirectories(folder);
        for (Path made : missing) {
            forceNames(made.resolveSibling("."));
        }
        return folder;
    }

    /** Has the names in a folder on disk, where the system lets a folder be forced; Windows does not. */
    static void forceNames(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            // what the folder names is on disk; its name follows with the system's next sweep
        }
    }
}
