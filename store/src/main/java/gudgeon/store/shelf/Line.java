package gudgeon.store.shelf;

import gudgeon.rebuild.journal.Entry;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.journal.Reading;
import java.util.Optional;

/**
 * An entry as it is kept.
 *
 * @param number its number in the journal, from 1
 * @param key its key
 * @param json its exact JSON text
 * @param previous hash of the line before; of the first, {@link Chain#beginning}
 * @param hash SHA-256 of the previous hash and the JSON text
 */
public record Line(long number, String key, String json, String previous, String hash) {
    /** The line that follows another. */
    static Line after(String previous, long number, String key, String json) {
        return new Line(number, key, json, previous, Chain.hash(previous, json));
    }

    /** The entry that its text tells; empty if it can't be read. */
    Optional<Entry> entry() {
        return EntryJson.read(json) instanceof Reading.Read read
                ? read.entries().stream().findFirst()
                : Optional.empty();
    }

    /** Whether its text is the one that its hash was made of. */
    boolean isWhole() {
        return Chain.hash(previous, json).equals(hash);
    }
}
