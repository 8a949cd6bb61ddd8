package gudgeon.store.device;

import java.time.Instant;

/**
 * A device that was let in. What it shows to come in again is not kept, only a hash of it.
 *
 * @param id names it on the laptop's page
 * @param name what the person calls it; the journal's entries carry it
 * @param tokenHash SHA-256 of its token, in hex
 * @param since when it was let in
 * @param lastSeen when it last asked for anything, to within {@link Devices#SEEN_WITHIN} after a restart
 */
public record LetIn(String id, String name, String tokenHash, Instant since, Instant lastSeen) {
    /** Letters of the longest name. */
    public static final int LONGEST_NAME = 40;

    LetIn seen(Instant at) {
        return new LetIn(id, name, tokenHash, since, at);
    }
}
