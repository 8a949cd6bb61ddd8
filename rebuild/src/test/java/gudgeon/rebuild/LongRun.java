package gudgeon.rebuild;

/** How far tests go that can go on for long: scaled down in every build, at full size by {@code ./verify --long}. */
public final class LongRun {
    private static final boolean ASKED = Boolean.getBoolean("gudgeon.long");

    private LongRun() {}

    /** How many of something, or how much. */
    public static int of(int scaledDown, int full) {
        return ASKED ? full : scaledDown;
    }
}
