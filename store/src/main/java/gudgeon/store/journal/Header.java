package gudgeon.store.journal;

import java.time.Instant;

/**
 * What an entry has beside its fact, for a line that leaves it out.
 *
 * @param key the entry's key
 * @param at when it was made
 * @param device which device made it
 * @param seen number of the last entry that the device had seen
 */
record Header(String key, Instant at, String device, long seen) {}
