package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.TypedSize;
import gudgeon.rebuild.book.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Figures that were read at a check, such as "0.05 mm" or "exhaust 0.05, inlet 0.04". */
final class Readings {
    private static final Pattern BETWEEN = Pattern.compile("[;/]\\s*|,\\s+|\\s+and\\s+");
    private static final Pattern FIGURE = Pattern.compile("(?:.*?\\s)?([+\\-\u2212\u2013]?[\\d.].*)");

    private Readings() {}

    /** The figures in a unit; empty where one of them can't be read. */
    static List<Double> of(String reading, Unit unit) {
        if (reading.isBlank()) {
            return List.of();
        }
        if (TypedSize.of(unit, reading, 1) instanceof TypedSize.Read read) {
            return List.of(read.value());
        }
        List<Double> all = new ArrayList<>();
        for (String part : BETWEEN.split(reading, -1)) {
            Matcher figure = FIGURE.matcher(part.strip());
            if (figure.matches() && TypedSize.of(unit, figure.group(1).strip(), 1) instanceof TypedSize.Read read) {
                all.add(read.value());
            } else {
                return List.of();
            }
        }
        return all;
    }

    /** Those that lie outside what is expected. */
    static List<Double> outside(String reading, Expect expect) {
        return of(reading, expect.unit()).stream()
                .filter(value -> !expect.holds(value))
                .toList();
    }
}
