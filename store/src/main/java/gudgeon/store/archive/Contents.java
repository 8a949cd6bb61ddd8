package gudgeon.store.archive;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.shelf.Line;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a journal names, and so what an archive of it holds.
 *
 * @param books content hashes of the engine books, the one that counts last
 * @param photos content hashes of the photos
 */
record Contents(List<String> books, Set<String> photos) {
    /** Of lines that can be read. */
    static Contents of(List<Line> lines) {
        List<Fact> facts = lines.stream()
                .flatMap(line -> EntryJson.read(line.json()) instanceof Reading.Read read
                        ? read.entries().stream()
                        : Stream.empty())
                .map(Entry::fact)
                .flatMap(Contents::withItsInstead)
                .toList();
        Set<String> photos = new LinkedHashSet<>();
        facts.stream()
                .flatMap(fact -> fact instanceof Photographed photo ? Stream.of(photo.photo()) : Stream.empty())
                .filter(hash -> !hash.isEmpty())
                .forEach(photos::add);
        return new Contents(facts.stream().flatMap(Contents::book).toList(), photos);
    }

    private static Stream<Fact> withItsInstead(Fact fact) {
        return fact instanceof Corrected corrected
                ? Stream.concat(Stream.of(fact), corrected.instead().stream())
                : Stream.of(fact);
    }

    private static Stream<String> book(Fact fact) {
        if (fact instanceof Started started) {
            return Stream.of(started.book());
        }
        return fact instanceof BookChanged changed ? Stream.of(changed.book()) : Stream.empty();
    }

    /** The book that counts. */
    String book() {
        return books.isEmpty() ? "" : books.get(books.size() - 1);
    }

    /** The books that counted before it and are not the same. */
    Set<String> earlierBooks() {
        Set<String> earlier = new LinkedHashSet<>(books);
        earlier.remove(book());
        return earlier;
    }
}
