package gudgeon.store.shelf;

import gudgeon.store.disk.WholeFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/**
 * SQLite's write-ahead log, read without regard to its sums: SQLite ends at the first page that is not whole, and most of those after it are.
 * What comes of it must prove itself otherwise. The format: https://www.sqlite.org/fileformat2.html#walformat.
 *
 * @param frames the pages, in the order in which they were written
 * @param pageSize bytes of a page
 */
record WriteAheadLog(List<Frame> frames, int pageSize) {
    private static final int HEADER = 32;
    private static final int FRAME_HEADER = 24;
    private static final int PAGE_SIZE_AT = 8;
    private static final int SALT_AT = 16;
    private static final int FRAME_SALT_AT = 8;
    private static final int LEAST_PAGE = 512;
    private static final int MOST_PAGE = 65_536;

    WriteAheadLog {
        frames = List.copyOf(frames);
    }

    /** One page as it was written; its number begins with 1. */
    private record Frame(int page, ByteBuffer content) {}

    /** Reads a log; one that is not there, or whose beginning makes no sense, has no pages. */
    static WriteAheadLog read(Path file) throws IOException {
        List<Frame> frames = new ArrayList<>();
        ByteBuffer all = ByteBuffer.wrap(Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
        int pageSize = all.limit() > HEADER ? all.getInt(PAGE_SIZE_AT) : 0;
        if (pageSize < LEAST_PAGE || pageSize > MOST_PAGE) {
            return new WriteAheadLog(frames, pageSize);
        }
        // pages with another salt are left over from before the log was last begun anew
        long salt = all.getLong(SALT_AT);
        int length = FRAME_HEADER + pageSize;
        for (int at = HEADER; at + length <= all.limit(); at += length) {
            int page = all.getInt(at);
            if (all.getLong(at + FRAME_SALT_AT) == salt && page > 0) {
                frames.add(new Frame(page, all.slice(at + FRAME_HEADER, pageSize)));
            }
        }
        return new WriteAheadLog(frames, pageSize);
    }

    boolean isEmpty() {
        return frames.isEmpty();
    }

    /** Copies a database with all these pages in it, but those whose number it can't have. */
    void copyInto(Path database, Path copy) throws IOException {
        WholeFile.copy(database, copy);
        long most = Files.size(database) / pageSize + frames.size();
        try (FileChannel channel = FileChannel.open(copy, StandardOpenOption.WRITE)) {
            for (Frame frame : frames) {
                if (frame.page() > most) {
                    continue;
                }
                channel.write(frame.content().duplicate(), (frame.page() - 1L) * pageSize);
            }
        }
    }
}
