package gudgeon.rebuild.measure;

import gudgeon.rebuild.measure.Slip.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What could have been meant by a number as it was written.
 *
 * @param number the number, with a point
 * @param unit the unit behind it, may be empty
 */
record SlipText(String number, String unit) {
    private static final Pattern WRITTEN = Pattern.compile("\\s*([-+\u2212\u2013]?\\d*[.,]?\\d+)\\s*(\\D*)");
    private static final int FEWEST_DIGITS = 3;
    private static final int FURTHEST_POINT = 3;

    /**
     * Another number that one slip turns into the one written.
     *
     * @param kind the slip
     * @param number what was perhaps meant
     * @param placeValue of a wrong digit: what one more in its place makes; else infinite
     */
    record Meant(Kind kind, String number, double placeValue) {
        double value() {
            return Double.parseDouble(number);
        }
    }

    /** Of what was written; empty where it is no plain decimal number, as a fraction. */
    static Optional<SlipText> of(String written) {
        Matcher matcher = WRITTEN.matcher(written);
        return matcher.matches()
                ? Optional.of(new SlipText(
                        matcher.group(1)
                                .replace(',', '.')
                                .replace('\u2212', '-')
                                .replace('\u2013', '-')
                                .replace("+", ""),
                        matcher.group(2).strip()))
                : Optional.empty();
    }

    double value() {
        return Double.parseDouble(number);
    }

    /** A number with the unit as written. */
    String with(String other) {
        return unit.isEmpty() ? other : other + " " + unit;
    }

    /** The numbers of which it could be a slip of the hand, the likeliest slip first. */
    List<Meant> all() {
        List<Meant> all = new ArrayList<>();
        points(all);
        all.add(new Meant(
                Kind.SIGN, number.startsWith("-") ? number.substring(1) : "-" + number, Double.POSITIVE_INFINITY));
        if (significantDigits() >= FEWEST_DIGITS) {
            swaps(all);
            digits(all);
        }
        return all;
    }

    /** Digits after leading zeros: with few of them, one wrong digit explains any number. */
    private int significantDigits() {
        return number.replaceAll("[^0-9]", "").replaceFirst("^0+", "").length();
    }

    private void points(List<Meant> to) {
        for (int places = 1; places <= FURTHEST_POINT; places++) {
            for (int way : new int[] {-places, places}) {
                String moved = new BigDecimal(number).movePointRight(way).toPlainString();
                to.add(new Meant(Kind.POINT, moved, Double.POSITIVE_INFINITY));
            }
        }
    }

    private void swaps(List<Meant> to) {
        int before = -1;
        for (int i = 0; i < number.length(); i++) {
            if (Character.isDigit(number.charAt(i))) {
                if (before >= 0 && number.charAt(before) != number.charAt(i)) {
                    StringBuilder swapped = new StringBuilder(number);
                    swapped.setCharAt(before, number.charAt(i));
                    swapped.setCharAt(i, number.charAt(before));
                    to.add(new Meant(Kind.SWAPPED, swapped.toString(), Double.POSITIVE_INFINITY));
                }
                before = i;
            }
        }
    }

    private void digits(List<Meant> to) {
        for (int i = 0; i < number.length(); i++) {
            for (char digit = '0'; digit <= '9' && Character.isDigit(number.charAt(i)); digit++) {
                if (digit != number.charAt(i)) {
                    String changed = number.substring(0, i) + digit + number.substring(i + 1);
                    double apart = Math.abs(Double.parseDouble(changed) - value());
                    to.add(new Meant(Kind.DIGIT, changed, apart / Math.abs(digit - number.charAt(i))));
                }
            }
        }
    }
}
