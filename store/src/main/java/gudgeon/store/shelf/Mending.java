package gudgeon.store.shelf;

import gudgeon.store.backup.Backup;
import gudgeon.store.backup.Backups;
import gudgeon.store.disk.Reason;
import gudgeon.store.disk.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Mends a damaged database: joins what can still be read of it with what the backups hold, entry by entry. The chain says which entry
 * belongs where, so nothing wrong comes in, nothing that came after a backup is lost with it, and only what neither holds is gone.
 */
public final class Mending {
    private final Path folder;
    private final Clock clock;
    private final DatabaseFiles files;

    /** Of a data folder. */
    public Mending(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        this.files = new DatabaseFiles(folder, clock);
    }

    /**
     * A build that is on the shelf again.
     *
     * @param id its id
     * @param name what the person calls it
     * @param entries how many entries its journal has
     * @param fromBackups how many of them came from backups
     * @param lost how many are nowhere to be had in their place
     * @param kept where those of the lost are kept as text that can still be read; empty if none can
     */
    public record MendedBuild(String id, String name, long entries, long fromBackups, long lost, Optional<Path> kept) {}

    /**
     * What was done.
     *
     * @param builds the builds, by id
     * @param aside the folder in which what was there before lies; empty if nothing was there
     */
    public record Mended(List<MendedBuild> builds, Optional<Path> aside) {
        public Mended {
            builds = List.copyOf(builds);
        }
    }

    /**
     * Mends.
     *
     * @throws ShelfFault if the folder is in use or can't be written; then nothing was changed
     */
    public Mended mend() {
        FolderLock lock = FolderLock.on(folder);
        Path fresh = folder.resolve("shelf.db.mending");
        try {
            DatabaseFiles.removeAll(fresh);
            Optional<Path> aside = files.putAside();
            List<Rejoined> builds = write(fresh);
            files.replaceBy(fresh);
            List<MendedBuild> mended = new ArrayList<>();
            for (Rejoined build : builds) {
                mended.add(told(build, aside));
            }
            return new Mended(mended, aside);
        } catch (IOException fault) {
            throw new ShelfFault(
                    "The builds could not be mended: " + Reason.of(fault)
                            + ". See that the disk has room and can be written.",
                    fault);
        } finally {
            DatabaseFiles.removeAll(fresh);
            lock.close();
        }
    }

    private List<Rejoined> write(Path fresh) throws IOException {
        List<Salvage> backups = backups();
        Set<String> ids = new LinkedHashSet<>();
        backups.forEach(backup -> ids.addAll(backup.ids()));
        Salvage now = Files.exists(files.database()) ? now(ids) : Salvage.nothing();
        ids.addAll(now.ids());
        List<Rejoined> builds = ids.stream()
                .sorted()
                .map(id -> Rejoined.of(id, now, backups))
                .filter(build -> !build.lines().isEmpty())
                .toList();
        try (Database database = Database.open(fresh)) {
            database.write(journals -> {
                Stream.concat(Stream.of(now), backups.stream())
                        .flatMap(source -> source.books().stream())
                        .distinct()
                        .forEach(journals::addBook);
                for (Rejoined build : builds) {
                    journals.addBuild(build.id(), build.name());
                    journals.append(build.id(), build.lines());
                }
            });
        }
        return builds;
    }

    /** What the database tells, and what its log holds beyond the first page that is not whole. Closing the database ends the log. */
    private Salvage now(Collection<String> ids) throws IOException {
        WriteAheadLog log = WriteAheadLog.read(files.log());
        Salvage beyond = Salvage.nothing();
        if (!log.isEmpty()) {
            Path copy = folder.resolve("shelf.db.read");
            DatabaseFiles.removeAll(copy);
            log.copyInto(files.database(), copy);
            beyond = salvage(copy, ids);
            DatabaseFiles.removeAll(copy);
        }
        return salvage(files.database(), ids).and(beyond);
    }

    private List<Salvage> backups() throws IOException {
        Backups backups = new Backups(folder.resolve("backups"), clock);
        Path copy = folder.resolve("shelf.db.read");
        List<Salvage> all = new ArrayList<>();
        for (Backup backup : backups.all()) {
            DatabaseFiles.removeAll(copy);
            Files.copy(backups.file(backup), copy);
            all.add(salvage(copy, List.of()));
        }
        DatabaseFiles.removeAll(copy);
        return all;
    }

    private static Salvage salvage(Path file, Collection<String> ids) {
        try (Database database = Database.open(file)) {
            return Salvage.of(database, ids);
        } catch (NewerTables newer) {
            // it is not damaged, and what this program does not know in it would be lost
            throw newer;
        } catch (ShelfFault unreadable) {
            return Salvage.nothing();
        }
    }

    private static MendedBuild told(Rejoined build, Optional<Path> aside) throws IOException {
        Optional<Path> text = aside.filter(folder -> !build.after().isEmpty())
                .map(folder -> folder.resolve(build.id() + "-after-the-gap.jsonl"));
        if (text.isPresent()) {
            String lines =
                    build.after().stream().map(line -> line.json() + "\n").collect(Collectors.joining());
            WholeFile.write(text.get(), file -> Files.writeString(file, lines));
        }
        return new MendedBuild(build.id(), build.name(), build.lines().size(), build.fromBackups(), build.lost(), text);
    }
}
