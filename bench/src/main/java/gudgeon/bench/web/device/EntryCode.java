package gudgeon.bench.web.device;

import java.time.Instant;

/**
 * A code that lets one device in.
 *
 * @param digits what is typed
 * @param until until when
 */
public record EntryCode(String digits, Instant until) {
    /** As a person reads it: in two groups. */
    public String shown() {
        return digits.substring(0, digits.length() / 2) + " " + digits.substring(digits.length() / 2);
    }
}
