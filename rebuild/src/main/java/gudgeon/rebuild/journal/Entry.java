package gudgeon.rebuild.journal;

import java.time.Instant;

/**
 * A fact with its time. Nothing is ever changed in one; a {@link Fact.Corrected} puts it right.
 *
 * @param key made where the entry was made, unique, so that sending it again does no harm; letters, digits and hyphens, at most 64
 * @param at when it was made, by the clock of the device
 * @param device which device made it
 * @param seen number of the last entry that the device had seen when it made this one, 0 for none: entries count from 1
 * @param fact the fact
 */
public record Entry(String key, Instant at, String device, long seen, Fact fact) {
    /** Longest key. */
    public static final int LONGEST_KEY = 64;

    public Entry {
        if (!key.matches("[A-Za-z0-9-]{1," + LONGEST_KEY + "}")) {
            throw new IllegalArgumentException("a key is letters, digits and hyphens, at most " + LONGEST_KEY);
        }
        if (seen < 0) {
            throw new IllegalArgumentException("entries count from 1; none seen is 0");
        }
    }
}
