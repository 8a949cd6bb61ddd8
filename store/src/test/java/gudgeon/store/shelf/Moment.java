package gudgeon.store.shelf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * The files of a database as they were at one moment, and how a disk may hold them when the power goes between two: of what was not
 * synchronised, any sector may be there, not be there, or be there up to some byte.
 */
final class Moment {
    private static final List<Integer> SECTORS = List.of(512, 4096);
    private static final int LOG_HEADER = 32;
    /** Of a sector: kept, dropped, or torn. */
    private static final int FATES = 5;

    private final byte[] database;
    private final byte[] log;
    private final byte[] note;

    /**
     * A moment.
     *
     * @param database the database
     * @param log its write-ahead log; empty if there is none
     * @param note how many entries were acknowledged
     */
    Moment(byte[] database, byte[] log, byte[] note) {
        this.database = database;
        this.log = log;
        this.note = note;
    }

    static Moment of(Path folder) throws IOException {
        Path database = folder.resolve("shelf.db");
        return new Moment(read(database), read(Path.of(database + "-wal")), read(Path.of(database + "-acknowledged")));
    }

    private static byte[] read(Path file) throws IOException {
        return Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
    }

    byte[] log() {
        return log.clone();
    }

    byte[] note() {
        return note.clone();
    }

    /** The same with another log. */
    Moment withLog(byte[] other) {
        return new Moment(database, other, note);
    }

    /** The same with another note. */
    Moment withNote(byte[] other) {
        return new Moment(database, log, other);
    }

    /** Whether the database changed between, as it does when the log is copied into it. */
    boolean isOfOneDatabaseWith(Moment next) {
        return Arrays.equals(database, next.database);
    }

    /** Lays it into a folder, with what else a disk may hold by chance: an index of the log that tells nothing true. */
    void layInto(Path folder, Random chance) throws IOException {
        Path file = Files.createDirectories(folder).resolve("shelf.db");
        Files.write(file, database);
        lay(Path.of(file + "-wal"), log);
        lay(Path.of(file + "-acknowledged"), note);
        byte[] index = new byte[chance.nextInt(3) * 16_384];
        chance.nextBytes(index);
        lay(Path.of(file + "-shm"), index);
    }

    private static void lay(Path file, byte[] content) throws IOException {
        Files.deleteIfExists(file);
        if (content.length > 0) {
            Files.write(file, content);
        }
    }

    /** Whether the log was not begun anew between, which changes its beginning. */
    boolean isOfOneLogWith(Moment next) {
        return next.log.length >= LOG_HEADER && Arrays.equals(log, 0, LOG_HEADER, next.log, 0, LOG_HEADER);
    }

    /** The database is closed, and the disk has not yet been told that its log is gone. */
    Moment withDatabaseOf(Moment closed) {
        return new Moment(closed.database, log, note);
    }

    /** The power goes while the log is written: it was synchronised at this moment and not yet at the next. */
    Moment cutInLog(Moment next, Random chance) {
        return new Moment(database, mixed(log, next.log, chance), mixed(note, note, chance));
    }

    /** The power goes while pages of the log are copied into the database, for which the whole log was synchronised. */
    Moment cutInCheckpoint(Moment next, Random chance) {
        byte[] whole = next.log.length == 0 ? log : next.log;
        return new Moment(mixed(database, next.database, chance), whole, mixed(note, next.note, chance));
    }

    /** What a disk may hold of a file between two states: anything, or all up to some sector and then anything, or all. */
    private static byte[] mixed(byte[] before, byte[] after, Random chance) {
        if (chance.nextInt(FATES) == 0) {
            return after.clone();
        }
        int least = Math.min(before.length, after.length);
        int most = Math.max(before.length, after.length);
        byte[] held = Arrays.copyOf(before, least + chance.nextInt(most - least + 1));
        int sector = SECTORS.get(chance.nextInt(SECTORS.size()));
        int inOrder = chance.nextBoolean() ? chance.nextInt(held.length + 1) : 0;
        for (int at = 0; at < Math.min(held.length, after.length); at += sector) {
            int end = Math.min(Math.min(held.length, after.length), at + sector);
            int fate = chance.nextInt(FATES);
            boolean whole = end <= inOrder || fate % 2 == 1;
            int kept = whole ? end - at : fate == 0 ? chance.nextInt(end - at) : 0;
            System.arraycopy(after, at, held, at, kept);
        }
        return held;
    }
}
