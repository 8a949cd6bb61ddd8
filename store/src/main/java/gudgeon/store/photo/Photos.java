package gudgeon.store.photo;

import gudgeon.store.disk.Reason;
import gudgeon.store.disk.WholeFile;
import gudgeon.store.shelf.ContentHash;
import gudgeon.store.shelf.ShelfFault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The photos of a data folder. Each is kept as JPEG under the hash of its content, the right way up, with no side longer than
 * {@value #LONGEST} points, beside a smaller copy for lists. Nothing but the points is kept, so no place, time or camera. A photo is
 * never removed: an old journal may show it.
 */
public final class Photos {
    /** Most bytes of a photo that is taken: 25 MB. */
    public static final int MOST_BYTES = 25 * 1024 * 1024;
    /** Longest side kept, in points; stamped numbers can still be read. */
    public static final int LONGEST = 3200;
    /** Longest side of the copy for lists, in points. */
    public static final int LONGEST_SMALL = 480;

    private final Path folder;

    /** The photos of a data folder. */
    public Photos(Path dataFolder) {
        this.folder = dataFolder.resolve("photos");
    }

    /** Which copy of a photo. */
    public enum Copy {
        FULL(".jpg"),
        SMALL(".small.jpg");

        private final String ending;

        Copy(String ending) {
            this.ending = ending;
        }
    }

    /**
     * Takes a photo as a camera gives it. The stream is not closed.
     *
     * @throws IOException if the stream can't be read
     * @throws ShelfFault if it can't be written
     */
    public Kept keep(InputStream photo) throws IOException {
        byte[] bytes = photo.readNBytes(MOST_BYTES + 1);
        return keep(bytes);
    }

    /** The same from memory. One at a time, since a big picture takes much of it. */
    public synchronized Kept keep(byte[] bytes) {
        try {
            Picture picture = read(bytes, LONGEST);
            byte[] jpeg = picture.jpeg();
            String hash = ContentHash.of(jpeg);
            write(hash, jpeg, picture);
            return new Kept.Photo(hash);
        } catch (PhotoFault fault) {
            return new Kept.Refused(fault.getMessage());
        } catch (IOException fault) {
            throw notWritten(fault);
        }
    }

    /**
     * Takes a photo that was kept before, as out of an archive, exactly as it is.
     *
     * @param hash the hash that it must have
     */
    public synchronized Kept keepExactly(String hash, byte[] bytes) {
        try {
            Picture picture = proven(hash, bytes);
            write(hash, bytes, picture);
            return new Kept.Photo(hash);
        } catch (PhotoFault fault) {
            return new Kept.Refused(fault.getMessage());
        } catch (IOException fault) {
            throw notWritten(fault);
        }
    }

    /** What speaks against {@link #keepExactly}; empty if nothing does. */
    public static Optional<String> against(String hash, byte[] bytes) {
        try {
            proven(hash, bytes);
            return Optional.empty();
        } catch (PhotoFault fault) {
            return Optional.of(fault.getMessage());
        }
    }

    private static Picture proven(String hash, byte[] bytes) throws PhotoFault {
        if (!ContentHash.of(bytes).equals(hash)) {
            throw new PhotoFault("The photo " + hash + " is not the one that was kept under this hash.");
        }
        return read(bytes, LONGEST_SMALL);
    }

    private static Picture read(byte[] bytes, int longest) throws PhotoFault {
        if (bytes.length > MOST_BYTES) {
            throw new PhotoFault("The photo has more than 25 MB. Make it smaller and send it again.");
        }
        return Picture.read(bytes, longest);
    }

    private void write(String hash, byte[] jpeg, Picture picture) throws IOException {
        byte[] small = picture.noLongerThan(LONGEST_SMALL).jpeg();
        WholeFile.write(path(hash, Copy.SMALL), file -> Files.write(file, small));
        WholeFile.write(path(hash, Copy.FULL), file -> Files.write(file, jpeg));
    }

    private static ShelfFault notWritten(IOException fault) {
        return new ShelfFault(
                "The photo could not be kept: " + Reason.of(fault) + ". See that the disk has room and send it again.",
                fault);
    }

    /** The file of a photo; empty if it is not there or that is no hash. */
    public Optional<Path> file(String hash, Copy copy) {
        return hash.matches("[0-9a-f]{64}")
                ? Optional.of(path(hash, copy)).filter(Files::isRegularFile)
                : Optional.empty();
    }

    /** What is wrong with a photo that was kept, words that follow its name; empty if it is there as it was kept. */
    public Optional<String> amiss(String hash) {
        Optional<Path> file = file(hash, Copy.FULL);
        if (file.isEmpty()) {
            return Optional.of("is not in " + folder);
        }
        try {
            return ContentHash.of(Files.readAllBytes(file.get())).equals(hash)
                    ? Optional.empty()
                    : Optional.of("is damaged: " + file.get() + " is not what was kept");
        } catch (IOException unreadable) {
            return Optional.of("can't be read: " + Reason.of(unreadable));
        }
    }

    /**
     * A photo made smaller, as JPEG. One at a time, since a big picture takes much memory.
     *
     * @param longest longest side wanted, in points, above 0
     * @return the picture; empty if it is not there or can't be read
     */
    public synchronized Optional<byte[]> noLongerThan(String hash, int longest) {
        Optional<Path> file = file(hash, Copy.FULL);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Picture.read(Files.readAllBytes(file.get()), longest)
                    .noLongerThan(longest)
                    .jpeg());
        } catch (IOException | PhotoFault unreadable) {
            return Optional.empty();
        }
    }

    private Path path(String hash, Copy copy) {
        return folder.resolve(hash.substring(0, 2)).resolve(hash + copy.ending);
    }
}
