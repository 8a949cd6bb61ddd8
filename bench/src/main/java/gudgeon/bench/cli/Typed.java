package gudgeon.bench.cli;

import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Sizes typed as options. */
final class Typed {
    private static final Pattern SEMICOLON = Pattern.compile(";");
    private static final Pattern COMMA = Pattern.compile(",");

    private Typed() {}

    /** A length in mm, from a bare number of mm or a text with a unit. */
    static double mm(String option, String text) {
        return value(option, text, Unit.MM);
    }

    /** A length in mm; empty where none was typed. */
    static OptionalDouble mmIfAny(String option, @Nullable String text) {
        return ifAny(option, text, Unit.MM);
    }

    /** A temperature in degrees Celsius; empty where none was typed. */
    static OptionalDouble celsiusIfAny(String option, @Nullable String text) {
        return ifAny(option, text, Unit.CELSIUS);
    }

    /** A plain number; empty where none was typed. */
    static OptionalDouble numberIfAny(String option, @Nullable String text) {
        return ifAny(option, text, Unit.NONE);
    }

    /** Lengths in mm between semicolons, or between commas where there is no semicolon. */
    static List<Double> listOfMm(String option, String text) {
        return (text.contains(";") ? SEMICOLON : COMMA)
                .splitAsStream(text)
                .filter(one -> !one.isBlank())
                .map(one -> mm(option, one.strip()))
                .toList();
    }

    private static OptionalDouble ifAny(String option, @Nullable String text, Unit unit) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(value(option, text, unit));
    }

    private static double value(String option, String text, Unit unit) {
        TypedSize size = TypedSize.of(unit, text, 1);
        if (size instanceof TypedSize.Read read) {
            return read.value();
        }
        throw new Unusable(option + " '" + text + "': " + ((TypedSize.Refused) size).sentence());
    }
}
