package gudgeon.rebuild.drill;

import java.util.Locale;

/** What became of a mistake. */
public enum Outcome {
    /** The alarm stood when its time was up. */
    CAUGHT,
    /** It came afterwards. */
    LATE,
    /** It never came. */
    MISSED;

    /** The word as a person reads it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
