package gudgeon.rebuild.lesson;

import gudgeon.rebuild.book.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How values are written in an engine book so that they can stand anywhere in it, within braces too. */
final class Written {
    /** What needs no quotes: nothing in it has a meaning of its own in YAML 1.2, and it is no other kind of value. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ./±°()'-]*[A-Za-z0-9.)°]|[A-Za-z0-9]");

    private Written() {}

    /** A word or a sentence, in quotes where it needs them. */
    static String text(String text) {
        return PLAIN.matcher(text).matches() ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (Character.isISOControl(c)) {
                quoted.append(String.format("\\x%02X", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }

    /** A list of values that are written already. */
    static String list(List<String> written) {
        return written.stream().collect(Collectors.joining(", ", "[", "]"));
    }

    /** A place in mm, to the hundredth. */
    static String point(Point point) {
        return list(List.of(hundredth(point.x()), hundredth(point.y())));
    }

    /** A number to the hundredth, without zeros at its end. */
    static String hundredth(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
