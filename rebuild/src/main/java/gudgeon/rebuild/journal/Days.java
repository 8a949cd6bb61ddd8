package gudgeon.rebuild.journal;

/**
 * How long something is on its way, in calendar days.
 *
 * @param least the fewest, 0 or more
 * @param likely the likeliest, from {@code least} to {@code most}
 * @param most the most, to be reckoned with
 */
public record Days(int least, int likely, int most) {
    /** The longest that is taken for a number of days. */
    public static final int MOST = 3650;

    public Days {
        if (!(0 <= least && least <= likely && likely <= most && most <= MOST)) {
            throw new IllegalArgumentException("days run from least over likely to most, 0 to " + MOST);
        }
    }
}
