package gudgeon.rebuild.source;

import gudgeon.rebuild.book.Dimension;
import gudgeon.rebuild.book.TypedSize;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How exactly a size is meant that someone else wrote. */
final class AsWritten {
    private static final Pattern DECIMALS = Pattern.compile("[.,](\\d+)");

    private AsWritten() {}

    /** Half of the last digit, in the dimension's unit: "39.5 mm" may be anything from 39.45 to 39.55. */
    static double halfLastDigit(Dimension dimension, String written) {
        Matcher decimals = DECIMALS.matcher(written);
        int count = decimals.find() ? decimals.group(1).length() : 0;
        String unit = written.replaceAll("^[-+\\d.,\\s/]+", "");
        return TypedSize.of(dimension.unit(), "1 " + unit, 1) instanceof TypedSize.Read one
                ? 0.5 * one.value() * Math.pow(10, -count)
                : 0.5 * Math.pow(10, -count);
    }
}
