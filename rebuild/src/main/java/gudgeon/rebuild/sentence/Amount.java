package gudgeon.rebuild.sentence;

/** Amounts as sentences say them. */
public final class Amount {
    private static final int MINUTES_PER_HOUR = 60;

    private Amount() {}

    /** A number with what it counts, such as "1 step" or "3 steps". */
    public static String of(long count, String one) {
        return of(count, one, one + "s");
    }

    /** A number with what it counts, such as "1 entry" or "3 entries". */
    public static String of(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** A time of work, from 0, such as "45 min", "2 h" or "2 h 5 min". */
    public static String time(long minutes) {
        long hours = minutes / MINUTES_PER_HOUR;
        long rest = minutes % MINUTES_PER_HOUR;
        return hours == 0 ? rest + " min" : hours + " h" + (rest == 0 ? "" : " " + rest + " min");
    }
}
