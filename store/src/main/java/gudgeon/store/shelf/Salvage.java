package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jdbi.v3.core.JdbiException;

/**
 * What can still be read of a database, damaged or not, and proves itself: entries that are what their hash was made of, books that are
 * what they are named by.
 */
final class Salvage {
    /** Where a journal's end can't be told, it is looked for so far beyond the last entry that can be read: what some damaged pages hold. */
    static final int LONGEST_GAP = 2_000;

    private final Map<String, Journals.Shelved> builds = new LinkedHashMap<>();
    /** By build and by the hash of the line before: numbers are under no hash, so they may be damaged. */
    private final Map<String, Map<String, Line>> lines = new HashMap<>();

    private final Map<String, String> books = new HashMap<>();

    private Salvage() {}

    /**
     * Reads a database, piece by piece, and passes over what can't be read.
     *
     * @param known ids of builds that may be in it, should it not be able to tell them itself
     */
    static Salvage of(Database database, Collection<String> known) {
        return database.read(journals -> of(journals, known));
    }

    /** Of a database that can't be opened at all. */
    static Salvage nothing() {
        return new Salvage();
    }

    private static Salvage of(Journals journals, Collection<String> known) {
        Salvage salvage = new Salvage();
        Set<String> ids = new LinkedHashSet<>(readable(journals::ids).orElse(List.of()));
        ids.addAll(readable(journals::idsOfEntries).orElse(List.of()));
        ids.addAll(known);
        ids.forEach(id -> salvage.take(journals, id));
        for (String hash : readable(journals::bookHashes).orElse(List.of())) {
            readable(() -> journals.book(hash))
                    .flatMap(text -> text)
                    .filter(text -> ContentHash.of(text).equals(hash))
                    .ifPresent(text -> salvage.books.put(hash, text));
        }
        return salvage;
    }

    private void take(Journals journals, String id) {
        Optional<Journals.Shelved> row = readable(() -> journals.build(id)).flatMap(read -> read);
        row.ifPresent(read -> builds.put(id, read));
        Map<String, Line> whole = new LinkedHashMap<>();
        long last = 0;
        for (long number = 1; number <= last + LONGEST_GAP; number++) {
            long wanted = number;
            Optional<Line> line = readable(() -> journals.numbered(id, wanted))
                    .flatMap(read -> read)
                    .filter(Salvage::isWhole);
            if (line.isPresent()) {
                whole.put(line.get().previous(), line.get());
                last = number;
            }
            if (row.isPresent() && row.get().endsIn(line)) {
                break;
            }
        }
        if (!whole.isEmpty()) {
            lines.put(id, whole);
        }
    }

    /** This, and what another one has beyond it; of a build, the word of the one that knows it to be longer. */
    Salvage and(Salvage more) {
        Salvage both = new Salvage();
        for (Salvage one : List.of(this, more)) {
            one.builds.forEach((id, row) ->
                    both.builds.merge(id, row, (here, there) -> there.entries() > here.entries() ? there : here));
            one.lines.forEach((id, whole) -> whole.forEach((previous, line) -> both.lines
                    .computeIfAbsent(id, each -> new LinkedHashMap<>())
                    .putIfAbsent(previous, line)));
            both.books.putAll(one.books);
        }
        return both;
    }

    private static boolean isWhole(Line line) {
        return line.isWhole() && line.entry().map(Entry::key).equals(Optional.of(line.key()));
    }

    private static <T> Optional<T> readable(Supplier<T> reading) {
        try {
            return Optional.of(reading.get());
        } catch (JdbiException damaged) {
            return Optional.empty();
        }
    }

    /** The ids of its builds. */
    List<String> ids() {
        Set<String> ids = new LinkedHashSet<>(builds.keySet());
        ids.addAll(lines.keySet());
        return List.copyOf(ids);
    }

    /** What a build is called, how long its journal was and where it ended. */
    Optional<Journals.Shelved> build(String id) {
        return Optional.ofNullable(builds.get(id));
    }

    /** The line that follows the one with that hash, if it is whole. */
    Optional<Line> after(String id, String hash) {
        return Optional.ofNullable(lines.getOrDefault(id, Map.of()).get(hash));
    }

    /** All lines of a build that are whole. */
    Collection<Line> lines(String id) {
        return lines.getOrDefault(id, Map.of()).values();
    }

    /** Whether that hash stands at the end of a build's chain, or before a line that is whole. */
    boolean knows(String id, String hash) {
        return after(id, hash).isPresent()
                || build(id).filter(row -> row.head().equals(hash)).isPresent();
    }

    /** How long the journal was, as far as its last line that is whole tells; 0 if none is. */
    long last(String id) {
        return lines(id).stream().mapToLong(Line::number).max().orElse(0);
    }

    /** The texts of its engine books. */
    List<String> books() {
        return List.copyOf(books.values());
    }
}
