package gudgeon.mechanics.limits;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a designation by ISO 286 says: a nominal size and one or two tolerance classes.
 *
 * @param written as it was written
 * @param classes one or two, in the order written
 */
record Designation(String written, List<ToleranceClass> classes) {
    /** The letters of the code system; I, L, O, Q and W are left out of it, and ones with two letters stand for themselves. */
    private static final List<String> LETTERS = List.of(
            "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p", "r", "s", "t", "u",
            "v", "x", "y", "z", "za", "zb", "zc");

    private static final Pattern SHAPE = Pattern.compile("(?:mm)?\\s*([^\\s/\\d]+)\\s*(\\d*)");
    private static final Pattern SIZE = Pattern.compile("[Øø⌀]?\\s*(\\d{1,4}(?:[.,]\\d{1,6})?)");
    private static final int LONGEST = 60;
    private static final String EXAMPLE = "; write a size and a class, as in 20 H7/k6, 47 N7 or 20 k6.";

    Designation {
        classes = List.copyOf(classes);
    }

    /**
     * Reads a designation.
     *
     * @throws UnknownDesignation with all that is wrong with it
     */
    static Designation read(String text) {
        String written = text.strip();
        Matcher size = SIZE.matcher(written);
        if (written.length() > LONGEST || !size.lookingAt()) {
            throw new UnknownDesignation("'" + shortened(written) + "' does not begin with a size in mm" + EXAMPLE);
        }
        double sizeMm = Double.parseDouble(size.group(1).replace(',', '.'));
        String[] parts = written.substring(size.end()).split("/", -1);
        if (parts.length > 2) {
            throw new UnknownDesignation("'" + written + "' has more than two classes" + EXAMPLE);
        }
        List<String> faults = new ArrayList<>();
        List<ToleranceClass> classes = new ArrayList<>();
        for (String part : parts) {
            try {
                classes.add(read(part.strip(), sizeMm));
            } catch (UnknownDesignation fault) {
                fault.sentences().stream().filter(s -> !faults.contains(s)).forEach(faults::add);
            }
        }
        if (!faults.isEmpty()) {
            throw new UnknownDesignation(faults);
        }
        return new Designation(written, classes);
    }

    private static ToleranceClass read(String part, double sizeMm) {
        Matcher shape = SHAPE.matcher(part);
        if (!shape.matches()) {
            throw new UnknownDesignation(
                    (part.isEmpty() ? "A tolerance class is missing" : "'" + part + "' is not a tolerance class")
                            + EXAMPLE);
        }
        String letters = shape.group(1);
        boolean oneCase = letters.equals(small(letters)) || letters.equals(letters.toUpperCase(Locale.ROOT));
        if (!LETTERS.contains(small(letters)) || !oneCase) {
            throw new UnknownDesignation(
                    "'" + letters + "' is not a letter of ISO 286; holes have A to ZC in capitals, "
                            + "shafts a to zc in small letters, without I, L, O, Q and W.");
        }
        if (shape.group(2).isEmpty()) {
            throw new UnknownDesignation("'" + letters + "' lacks its tolerance grade, as in " + letters + "7.");
        }
        if (shape.group(2).length() > 2) {
            throw new UnknownDesignation("Tolerance grade " + shape.group(2) + " is not held; grades are 1 to 18.");
        }
        return ToleranceClass.of(sizeMm, letters, Integer.parseInt(shape.group(2)));
    }

    /** The one class written. */
    ToleranceClass single() {
        if (classes.size() != 1) {
            throw new UnknownDesignation("'" + written + "' is a fit of two classes where one was asked for.");
        }
        return classes.get(0);
    }

    /** The hole and the shaft written. */
    Fit pair() {
        if (classes.size() != 2) {
            throw new UnknownDesignation("'" + written + "' has one tolerance class; a fit has two, as in 20 H7/k6.");
        }
        ToleranceClass first = classes.get(0);
        ToleranceClass second = classes.get(1);
        if (first.isHole() == second.isHole()) {
            throw new UnknownDesignation("'" + written + "' has two "
                    + (first.isHole()
                            ? "holes and no shaft; the shaft's letter is small"
                            : "shafts and no hole; the hole's letter is a capital")
                    + ", as in 20 H7/k6.");
        }
        return first.isHole() ? new Fit(first, second) : new Fit(second, first);
    }

    static String small(String letters) {
        return letters.toLowerCase(Locale.ROOT);
    }

    /** A number without trailing noughts. */
    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text;
    }
}
