package gudgeon.rebuild.book;

/** Sees sizes that were typed in inches where millimetres are meant. */
public final class Inches {
    /** Smaller sizes may well be changed twenty-five-fold. */
    private static final double LARGE_MM = 5;

    private static final double MM_PER_INCH = 25.4;
    private static final double SPREAD = 1.25;

    private Inches() {}

    /** Whether a number is some twenty-five times smaller than the size in whose place it stands. */
    public static boolean likely(Size size, double value) {
        boolean large = size.unit() == Unit.MM && Math.abs(size.value()) >= LARGE_MM;
        double ratio = size.value() / value;
        return large && ratio > MM_PER_INCH / SPREAD && ratio < MM_PER_INCH * SPREAD;
    }
}
