package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Fact.Started;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A build's journal put together again from a damaged database and its backups: each entry is the one that the chain wants there.
 *
 * @param id the build's id
 * @param name what the person calls it
 * @param lines the journal, up to the first entry that is nowhere to be had
 * @param fromBackups how many of its entries came from backups
 * @param known how many entries the journal had, as far as that can be read
 * @param after entries behind the first that is nowhere to be had; they are whole, but the chain no longer reaches them
 */
record Rejoined(String id, String name, List<Line> lines, long fromBackups, long known, List<Line> after) {
    Rejoined {
        lines = List.copyOf(lines);
        after = List.copyOf(after);
    }

    /**
     * Joins one build.
     *
     * @param now the damaged database
     * @param backups the backups, the newest first
     */
    static Rejoined of(String id, Salvage now, List<Salvage> backups) {
        List<Line> lines = new ArrayList<>();
        long fromBackups = 0;
        String head = Chain.beginning(id);
        boolean ended = isEnd(id, head, now);
        for (Optional<Line> next = next(id, head, now, backups);
                !ended && next.isPresent();
                next = next(id, head, now, backups)) {
            Line line = next.get();
            lines.add(new Line(lines.size() + 1, line.key(), line.json(), line.previous(), line.hash()));
            fromBackups += now.after(id, head).isPresent() ? 0 : 1;
            head = line.hash();
            ended = isEnd(id, head, now);
        }
        List<Line> after = after(id, lines, now);
        long known = ended ? lines.size() : Math.max(told(id, now, backups), lines.size() + after.size());
        return new Rejoined(id, nameIn(lines), lines, fromBackups, known, after);
    }

    private static boolean isEnd(String id, String head, Salvage now) {
        return now.build(id).filter(row -> row.head().equals(head)).isPresent()
                && now.after(id, head).isEmpty();
    }

    /** The line that joins: the database's own, or one of a backup, best one that the database knows. */
    private static Optional<Line> next(String id, String head, Salvage now, List<Salvage> backups) {
        return now.after(id, head)
                .or(() -> ofBackups(id, head, backups)
                        .filter(line -> now.knows(id, line.hash()))
                        .findFirst())
                .or(() -> ofBackups(id, head, backups).findFirst());
    }

    private static Stream<Line> ofBackups(String id, String head, List<Salvage> backups) {
        return backups.stream().flatMap(backup -> backup.after(id, head).stream());
    }

    /** How long the journal was, by the database's own word unless that makes no sense. */
    private static long told(String id, Salvage now, List<Salvage> backups) {
        long read = Stream.concat(Stream.of(now), backups.stream())
                .mapToLong(source -> source.last(id))
                .max()
                .orElse(0);
        return now.build(id)
                .map(Journals.Shelved::entries)
                .filter(entries -> entries >= 0 && entries <= read + Salvage.LONGEST_GAP)
                .orElse(read);
    }

    /** As its first entry tells it, which is proved, where a row of the database is not. */
    private static String nameIn(List<Line> lines) {
        return lines.stream()
                .limit(1)
                .flatMap(first -> first.entry().stream())
                .flatMap(
                        entry -> entry.fact() instanceof Started started ? Stream.of(started.engine()) : Stream.empty())
                .findFirst()
                .orElse("");
    }

    private static List<Line> after(String id, List<Line> joined, Salvage now) {
        Set<String> hashes = joined.stream().map(Line::hash).collect(Collectors.toSet());
        return now.lines(id).stream()
                .filter(line -> !hashes.contains(line.hash()))
                .toList();
    }

    /** How many entries are lost to the journal. */
    long lost() {
        return known - lines.size();
    }
}
