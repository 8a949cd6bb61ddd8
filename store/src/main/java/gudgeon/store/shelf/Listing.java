package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jdbi.v3.core.JdbiException;

/** All builds as the shelf lists them, read from the database once and then kept up to date. For any number of threads. */
final class Listing {
    private final Map<String, ShelvedBuild> builds = new ConcurrentHashMap<>();

    static Listing of(Journals journals) {
        Listing listing = new Listing();
        journals.builds().forEach(row -> listing.put(shelved(journals, row)));
        return listing;
    }

    void put(ShelvedBuild build) {
        builds.put(build.id(), build);
    }

    /** Takes note of a build that came whole. */
    Optional<ShelvedBuild> read(Journals journals, String id) {
        Optional<ShelvedBuild> read = journals.build(id).map(row -> shelved(journals, row));
        read.ifPresent(this::put);
        return read;
    }

    /** Takes note that a build's journal is longer now. */
    void grew(String id, Instant lastEntry, long entries) {
        builds.computeIfPresent(
                id, (same, build) -> new ShelvedBuild(id, build.name(), build.begun(), lastEntry, entries));
    }

    Optional<ShelvedBuild> of(String id) {
        return Optional.ofNullable(builds.get(id));
    }

    /** The one last worked on first. */
    List<ShelvedBuild> all() {
        return builds.values().stream()
                .sorted(Comparator.comparing(ShelvedBuild::lastEntry).reversed().thenComparing(ShelvedBuild::id))
                .toList();
    }

    private static ShelvedBuild shelved(Journals journals, Journals.Shelved build) {
        return new ShelvedBuild(
                build.id(),
                build.name(),
                timeOf(journals, build.id(), 1),
                timeOf(journals, build.id(), build.entries()),
                build.entries());
    }

    /** The time of an entry; of one that can't be read, the beginning of time, since a list must not fail for it. */
    private static Instant timeOf(Journals journals, String id, long number) {
        try {
            return journals.numbered(id, number)
                    .flatMap(Line::entry)
                    .map(Entry::at)
                    .orElse(Instant.EPOCH);
        } catch (JdbiException damaged) {
            return Instant.EPOCH;
        }
    }
}
