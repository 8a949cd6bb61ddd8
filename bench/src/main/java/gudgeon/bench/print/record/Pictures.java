package gudgeon.bench.print.record;

import java.util.Optional;

/** Where the pictures of a record come from, one at a time, so that memory never holds more than one. */
@FunctionalInterface
public interface Pictures {
    /** Longest side that is printed, in points: half a sheet of A4 at about 200 points an inch. */
    int LONGEST = 1600;

    /** A picture as JPEG; empty if it is not there. */
    Optional<byte[]> jpeg(String hash);
}
