package gudgeon.bench.cli;

/** A number with its noun. */
final class Counted {
    private Counted() {}

    /** Such as "1 entry" or "12 entries". */
    static String of(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
