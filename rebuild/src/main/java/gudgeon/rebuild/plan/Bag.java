package gudgeon.rebuild.plan;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How people number bags: 1, 2, 3; A, B, C; A1, A2; front 1, front 2. */
final class Bag {
    private static final Pattern NUMBERED = Pattern.compile("(?s)(.*?)(\\d{1,9})");
    private static final Pattern LETTER = Pattern.compile("(?s)(.*[^A-Za-z])?([A-Ya-y])");

    private Bag() {}

    /** The bag that follows one. */
    static String after(String bag) {
        Matcher number = NUMBERED.matcher(bag);
        if (number.matches()) {
            String digits = number.group(2);
            return number.group(1) + String.format("%0" + digits.length() + "d", Integer.parseInt(digits) + 1);
        }
        Matcher letter = LETTER.matcher(bag);
        if (letter.matches()) {
            String before = letter.group(1) == null ? "" : letter.group(1);
            return before + (char) (letter.group(2).charAt(0) + 1);
        }
        return bag + " 2";
    }
}
