package gudgeon.store.shelf;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.backup.Backup;
import gudgeon.store.backup.Backups;
import gudgeon.store.disk.Reason;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * The builds of one data folder. What was acknowledged is on disk and is never changed. One process holds a folder at a time; within
 * it, a shelf may be used by any number of threads.
 */
public final class Shelf implements AutoCloseable {
    private final FolderLock lock;
    private final Database database;
    private final Acknowledged acknowledged;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private final Backups backups;
    private final DailyBackup daily;
    private final Listing listing;
    private final FoldedBuilds folded = new FoldedBuilds();
    private final ReadBooks books = new ReadBooks();
    /** Of all builds together. */
    private long entries;

    private Shelf(FolderLock lock, Database database, Acknowledged acknowledged, Backups backups) {
        this.lock = lock;
        this.database = database;
        this.acknowledged = acknowledged;
        this.clock = backups.clock();
        this.backups = backups;
        this.daily = new DailyBackup(backups, database);
        try {
            this.listing = database.read(Listing::of);
            this.entries = database.read(Journals::entries);
            acknowledged.tell(entries);
            daily.ifDue();
        } catch (ShelfFault damaged) {
            database.close();
            throw damaged;
        }
    }

    /**
     * Opens the shelf of a data folder, which is made if it is not there. At its first use on a day, and in a week, the database is
     * copied to the folder's backups.
     *
     * @throws FolderInUse if another process holds the folder
     * @throws ShelfFault if it can't be used
     */
    public static Shelf open(Path folder) {
        return open(folder, Clock.system(ZoneId.systemDefault()));
    }

    /** The same by a clock of one's own. */
    public static Shelf open(Path folder, Clock clock) {
        FolderLock lock = FolderLock.on(folder);
        Path file = new DatabaseFiles(folder, clock).database();
        Acknowledged acknowledged = new Acknowledged(file);
        try {
            acknowledged.prove();
            return new Shelf(lock, Database.open(file), acknowledged, new Backups(folder.resolve("backups"), clock));
        } catch (ShelfFault fault) {
            lock.close();
            throw fault;
        }
    }

    /** Tells who opens the folder meanwhile where its builds are shown. */
    public synchronized void shownAt(URI address) {
        lock.tell(address);
    }

    /** Why the backup of the day could not be made; empty if all is well. */
    public synchronized Optional<String> backupFault() {
        return daily.fault();
    }

    /**
     * Makes a backup now, which is kept until the person removes it.
     *
     * @return its file
     * @throws ShelfFault if it can't be made
     */
    public synchronized Path backUp() {
        try {
            return backups.file(backups.make(Backup.Kind.ASKED, database::copyTo));
        } catch (IOException fault) {
            throw new ShelfFault(
                    "The backup could not be made: " + Reason.of(fault) + ". See that the disk has room.", fault);
        }
    }

    /** The builds, the one last worked on first. */
    public List<ShelvedBuild> builds() {
        return listing.all();
    }

    /**
     * Starts a build.
     *
     * @param name what the person calls it
     * @param bookText the engine book
     * @param found whether the engine was found together or in pieces
     * @param device the device that starts it
     * @return the build's id, fit for an address
     * @throws ShelfFault if the book can't be used, or the name is empty or too long
     */
    public synchronized String start(String name, String bookText, Found found, String device) {
        List<String> faults = Folding.faultsOf(bookText);
        if (!faults.isEmpty()) {
            throw new ShelfFault(String.join("\n", faults));
        }
        String id = BuildId.of(name, random);
        Entry entry = entry(device, 0, new Started(name, ContentHash.of(bookText), found));
        Line line = Line.after(Chain.beginning(id), 1, entry.key(), EntryJson.write(entry));
        if (EntryJson.read(line.json()) instanceof Reading.Refused refused) {
            throw new ShelfFault(String.join("\n", refused.sentences()));
        }
        write(1, journals -> {
            journals.addBook(bookText);
            journals.addBuild(id, name);
            journals.append(id, List.of(line));
        });
        listing.put(new ShelvedBuild(id, name, entry.at(), entry.at(), 1));
        return id;
    }

    private Entry entry(String device, long seen, Fact fact) {
        return new Entry(UUID.randomUUID().toString(), clock.instant(), device, seen, fact);
    }

    /**
     * A build as its journal tells it.
     *
     * @return empty if there is none with that id
     * @throws ShelfFault if its journal or book can't be read
     */
    public Optional<Build> build(String id) {
        Optional<Build> known = folded.of(id);
        return known.isPresent() ? known : fold(id);
    }

    /** What the person calls a build; empty if there is none with that id. */
    public Optional<String> name(String id) {
        return listing.of(id).map(ShelvedBuild::name);
    }

    private synchronized Optional<Build> fold(String id) {
        return database.read(journals -> journals.build(id).map(row -> {
            Build build = new Folding(journals, id, books).build(row);
            folded.put(id, build);
            return build;
        }));
    }

    /**
     * The text of the engine book that counts for a build.
     *
     * @throws ShelfFault if there is no such build or book
     */
    public synchronized String bookText(String id) {
        Build build = build(id).orElseThrow(() -> new ShelfFault(unknown(id)));
        return database.read(journals -> new Folding(journals, id, books).bookText(build.entries()));
    }

    /** The text of an engine book by its content hash, if it is on the shelf. */
    public synchronized Optional<String> book(String hash) {
        return database.read(journals -> journals.book(hash));
    }

    /**
     * Changes the engine book of a build. The same text again changes nothing.
     *
     * @param why why, as the journal tells it
     * @param seen number of the last entry that the device has seen
     */
    public synchronized Outcome changeBook(String id, String bookText, String why, String device, long seen) {
        Optional<Build> build = build(id);
        List<String> faults = build.isEmpty() ? List.of(unknown(id)) : Folding.faultsOf(bookText);
        if (!faults.isEmpty()) {
            return new Outcome.Refused(faults);
        }
        String hash = ContentHash.of(bookText);
        if (Folding.bookOf(build.orElseThrow().entries()).equals(hash)) {
            return new Outcome.Kept(build.get().size(), List.of());
        }
        database.write(journals -> journals.addBook(bookText));
        return append(id, List.of(entry(device, seen, new BookChanged(hash, why))));
    }

    /**
     * Writes entries to a build's journal: all of them, or none. An entry whose key is there already is not written again. When this
     * returns {@link Outcome.Kept}, they are on disk.
     *
     * @throws ShelfFault if the disk is full or fails; then nothing was kept
     */
    public synchronized Outcome append(String id, List<Entry> entries) {
        Optional<Build> before = build(id);
        Optional<Journals.Shelved> row = row(id);
        if (before.isEmpty() || row.isEmpty()) {
            return new Outcome.Refused(List.of(unknown(id)));
        }
        Admission admission = database.read(journals -> {
            Admission taking =
                    new Admission(journals, id, before.get(), row.get().head());
            entries.forEach(taking::take);
            return taking;
        });
        return admission.against().orElseGet(() -> write(id, before.get(), admission));
    }

    private Outcome write(String id, Build before, Admission admission) {
        if (!admission.lines().isEmpty()) {
            daily.ifDue();
            write(admission.lines().size(), journals -> journals.append(id, admission.lines()));
            boolean newBook = admission.fresh().stream().anyMatch(entry -> entry.fact() instanceof BookChanged);
            if (newBook) {
                folded.remove(id);
            } else {
                folded.put(id, before.after(admission.fresh()));
            }
            Entry last = admission.fresh().get(admission.fresh().size() - 1);
            listing.grew(id, last.at(), before.size() + admission.lines().size());
        }
        return admission.kept();
    }

    private void write(int more, Consumer<Journals> writing) {
        database.write(writing);
        entries += more;
        acknowledged.tell(entries);
    }

    /** The hash at the end of a build's chain; empty if there is no such build. */
    public synchronized Optional<String> lastHash(String id) {
        return row(id).map(Journals.Shelved::head);
    }

    /** Walks the chain of a build's journal and says which entry was changed, is missing or was put in. */
    public synchronized Verified verify(String id) {
        return row(id).map(row ->
                        Chain.verify(id, database.read(journals -> journals.lines(id)), row.entries(), row.head()))
                .orElseGet(() -> new Verified.Broken(List.of(unknown(id))));
    }

    /** A build's journal exactly as it is kept; empty if there is no such build. */
    public synchronized Optional<ShelvedJournal> journal(String id) {
        return database.read(
                journals -> journals.build(id).map(row -> new ShelvedJournal(id, row.name(), journals.lines(id))));
    }

    /**
     * Takes in a journal from elsewhere, which was proved before, with its books, in one transaction.
     *
     * @return whether it was taken in; not if a build with that id is here already
     */
    public synchronized boolean takeIn(ShelvedJournal journal, Collection<String> bookTexts) {
        if (row(journal.id()).isPresent()) {
            return false;
        }
        write(journal.lines().size(), journals -> {
            bookTexts.forEach(journals::addBook);
            journals.addBuild(journal.id(), journal.name());
            journals.append(journal.id(), journal.lines());
        });
        database.read(journals -> listing.read(journals, journal.id()));
        return true;
    }

    private Optional<Journals.Shelved> row(String id) {
        return database.read(journals -> journals.build(id));
    }

    private static String unknown(String id) {
        return "There is no build '" + id + "' on the shelf. gudgeon builds lists those there are.";
    }

    @Override
    public synchronized void close() {
        database.close();
        lock.close();
    }
}
