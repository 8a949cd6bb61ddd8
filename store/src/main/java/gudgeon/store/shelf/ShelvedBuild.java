package gudgeon.store.shelf;

import java.time.Instant;

/**
 * A build as the shelf lists it.
 *
 * @param id its id, fit for an address
 * @param name what the person calls it
 * @param begun time of the first entry
 * @param lastEntry time of the last entry
 * @param entries how many entries its journal has, at least 1
 */
public record ShelvedBuild(String id, String name, Instant begun, Instant lastEntry, long entries) {}
