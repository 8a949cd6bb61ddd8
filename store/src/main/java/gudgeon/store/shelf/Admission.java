package gudgeon.store.shelf;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Contradiction;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.BookChanged;
import gudgeon.rebuild.journal.Fact.Corrected;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Telling;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import gudgeon.store.shelf.Outcome.Clashing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A batch of entries on its way into a journal: numbers them, and gathers what speaks against them. */
final class Admission {
    private final Journals journals;
    private final String id;
    private final Build build;

    private final List<Long> numbers = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Entry> fresh = new ArrayList<>();
    private final Map<String, Line> inBatch = new HashMap<>();
    private final List<String> sentences = new ArrayList<>();
    private final List<Clashing> clashes = new ArrayList<>();
    private String head;

    /**
     * An admission to a build's journal.
     *
     * @param build the build as far as its journal goes
     * @param head hash of the journal's last line
     */
    Admission(Journals journals, String id, Build build, String head) {
        this.journals = journals;
        this.id = id;
        this.build = build;
        this.head = head;
    }

    /** Takes the next entry of the batch. */
    Admission take(Entry entry) {
        Optional<Line> known = line(entry.key());
        if (known.isPresent()) {
            numbers.add(known.get().number());
            if (!factOf(known.get()).equals(Optional.of(entry.fact()))) {
                fault(
                        entry,
                        "carries the key of another entry, number "
                                + known.get().number() + ". Send it with a key of its own.");
            }
            return this;
        }
        long number = build.size() + lines.size() + 1;
        Line line = Line.after(head, number, entry.key(), EntryJson.write(entry));
        lookAt(entry, line);
        numbers.add(number);
        lines.add(line);
        fresh.add(entry);
        inBatch.put(entry.key(), line);
        head = line.hash();
        return this;
    }

    private Optional<Line> line(String key) {
        return Optional.ofNullable(inBatch.get(key)).or(() -> journals.keyed(id, key));
    }

    private static Optional<Fact> factOf(Line line) {
        return line.entry().map(Entry::fact);
    }

    private void lookAt(Entry entry, Line line) {
        if (EntryJson.read(line.json()) instanceof Reading.Refused refused) {
            sentences.addAll(refused.sentences());
        }
        long last = build.size() + lines.size();
        if (entry.seen() > last) {
            fault(
                    entry,
                    "has seen entry " + entry.seen() + ", but the journal ends at " + last
                            + ", as after a restored backup. Load the page again and enter it anew.");
        }
        if (entry.fact() instanceof Started) {
            fault(entry, "begins the build again. Start another build instead.");
        }
        if (entry.fact() instanceof BookChanged changed
                && journals.book(changed.book()).isEmpty()) {
            fault(entry, "names a book that is not on the shelf. Change the book itself.");
        }
        if (entry.fact() instanceof Corrected correction) {
            lookAt(entry, correction);
        }
        for (long number = entry.seen() + 1; number <= build.size(); number++) {
            clash(number, entry);
        }
    }

    private void lookAt(Entry entry, Corrected correction) {
        Optional<Line> wrong = line(correction.entry());
        if (wrong.isEmpty()) {
            fault(
                    entry,
                    "corrects entry '" + correction.entry() + "', which is not in this journal. Name one that is.");
        }
        if (wrong.flatMap(Admission::factOf).filter(Admission::isOfTheBook).isPresent()
                || correction.instead().filter(Admission::isOfTheBook).isPresent()) {
            fault(entry, "corrects which book counts. Change the book again instead.");
        }
        if (correction.instead().filter(Corrected.class::isInstance).isPresent()) {
            fault(entry, "puts a correction in the place of an entry. Correct that other entry itself.");
        }
    }

    private static boolean isOfTheBook(Fact fact) {
        return fact instanceof Started || fact instanceof BookChanged;
    }

    private void clash(long number, Entry entry) {
        Entry earlier = build.entry(number);
        if (!build.isCorrected(number) && Contradiction.between(earlier, number, entry)) {
            clashes.add(new Clashing(
                    number,
                    earlier,
                    "Meanwhile on " + earlier.device() + " (entry " + number + "): "
                            + Telling.of(earlier.fact(), build.structure())
                            + " That can't stand beside: " + Telling.of(entry.fact(), build.structure())
                            + " Nothing was written. Look at what is so, and enter that."));
        }
    }

    private void fault(Entry entry, String sentence) {
        sentences.add("Entry '" + entry.key() + "' " + sentence);
    }

    /** What speaks against the batch; empty if it can be written. */
    Optional<Outcome> against() {
        if (!sentences.isEmpty()) {
            return Optional.of(new Outcome.Refused(sentences));
        }
        return clashes.isEmpty() ? Optional.empty() : Optional.of(new Outcome.Clashed(clashes));
    }

    /** What is to be written: the lines that were not there. */
    List<Line> lines() {
        return lines;
    }

    /** The entries of those lines. */
    List<Entry> fresh() {
        return fresh;
    }

    /** What is said once the lines are on disk. */
    Outcome kept() {
        return new Outcome.Kept(build.size() + lines.size(), numbers);
    }
}
