package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** The chain of hashes that ties each entry to all before it. */
public final class Chain {
    private Chain() {}

    /** What stands before the first entry of a build, so that a journal can't pass for another's. */
    public static String beginning(String build) {
        return ContentHash.of(build);
    }

    static String hash(String previous, String json) {
        return ContentHash.of(previous + json);
    }

    /**
     * Walks a chain.
     *
     * @param build the build's id
     * @param lines its lines by number
     * @param entries how many there should be
     * @param head the hash that the last one should have
     */
    public static Verified verify(String build, List<Line> lines, long entries, String head) {
        List<String> keys = lines.stream()
                .map(line -> line.entry().map(Entry::key).orElse(""))
                .toList();
        return verify(build, lines, keys, entries, head);
    }

    /**
     * The same of lines whose texts were read already.
     *
     * @param keys the key in each line's text
     */
    static Verified verify(String build, List<Line> lines, List<String> keys, long entries, String head) {
        List<String> sentences = new ArrayList<>();
        Iterator<String> key = keys.iterator();
        Line before = new Line(0, "", "", "", beginning(build));
        String beforeThat = "";
        for (Line line : lines) {
            verify(before, beforeThat, line, key.next(), sentences);
            beforeThat = before.hash();
            before = line;
        }
        if (before.number() < entries) {
            sentences.add(missing(before.number() + 1, entries));
        } else if (!before.hash().equals(head) || before.number() > entries) {
            sentences.add("The journal does not end as it was written: " + named(before.number())
                    + " was changed or put in last.");
        }
        return sentences.isEmpty() ? new Verified.Sound(entries, head) : new Verified.Broken(sentences);
    }

    private static void verify(Line before, String beforeThat, Line line, String key, List<String> sentences) {
        if (line.number() > before.number() + 1) {
            sentences.add(missing(before.number() + 1, line.number() - 1));
        } else if (!line.previous().equals(before.hash())) {
            sentences.add(
                    line.previous().equals(beforeThat)
                            ? named(before.number()) + " was put in: the one after it does not know it."
                            : "Between " + named(before.number()) + " and " + named(line.number())
                                    + " something was taken out, put in or changed: their hashes do not join.");
        }
        if (!line.isWhole()) {
            sentences.add(named(line.number()) + " was changed: its text is not the one its hash was made of.");
        } else if (!key.equals(line.key())) {
            sentences.add(named(line.number()) + " was changed: its key is not the one its text has.");
        }
    }

    private static String missing(long from, long to) {
        return from == to ? named(from) + " is missing." : "Entries " + from + " to " + to + " are missing.";
    }

    private static String named(long number) {
        return number == 0 ? "the beginning" : "Entry " + number;
    }
}
