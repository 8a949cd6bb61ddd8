package gudgeon.rebuild.measure;

import gudgeon.rebuild.book.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A reading in words, as one says it back across the bench: "thirty-nine point zero one two millimetres". */
public final class Spoken {
    private static final String[] ONES = {
        "zero",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen"
    };
    private static final String[] TENS = {
        "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };
    private static final int HUNDRED = 100;
    private static final int THOUSAND = 1000;
    private static final int LONGEST_WHOLE = 6;

    private Spoken() {}

    /**
     * What was written, in words: digits behind the point one by one, as they stand, so that a slip is heard.
     *
     * @param written a number with or without a unit
     * @param bareUnit the unit that a number without one is in
     */
    public static String of(String written, String bareUnit) {
        Optional<SlipText> text = SlipText.of(written);
        if (text.isEmpty()) {
            return written;
        }
        String number = text.get().number();
        String unit = unit(text.get().unit().isEmpty() ? bareUnit : text.get().unit());
        String positive = number.startsWith("-") ? number.substring(1) : number;
        int point = positive.indexOf('.');
        String whole = point < 0 ? positive : positive.substring(0, point);
        String decimals = point < 0 ? "" : " point " + digits(positive.substring(point + 1));
        String sign = number.startsWith("-") ? "minus " : "";
        return (sign + whole(whole) + decimals + " " + unit).strip();
    }

    /** The same for a number in a unit that sizes are held in. */
    public static String of(String written, Unit unit) {
        return of(written, unit.symbol());
    }

    private static String whole(String digits) {
        if (digits.length() > LONGEST_WHOLE) {
            return digits(digits);
        }
        return words(digits.isEmpty() ? 0 : Integer.parseInt(digits));
    }

    private static String words(int number) {
        if (number < ONES.length) {
            return ONES[number];
        }
        if (number < HUNDRED) {
            return TENS[number / 10] + (number % 10 == 0 ? "" : "-" + ONES[number % 10]);
        }
        int unit = number < THOUSAND ? HUNDRED : THOUSAND;
        int rest = number % unit;
        return words(number / unit)
                + (unit == HUNDRED ? " hundred" : " thousand")
                + (rest == 0 ? "" : (rest < HUNDRED ? " and " : " ") + words(rest));
    }

    private static String digits(String digits) {
        return digits.chars().mapToObj(digit -> ONES[digit - '0']).collect(Collectors.joining(" "));
    }

    private static String unit(String written) {
        return switch (written.toLowerCase(Locale.ROOT)) {
            case "mm" -> "millimetres";
            case "cm" -> "centimetres";
            case "µm", "um" -> "micrometres";
            case "in", "inch", "inches", "\"", "\u2033" -> "inches";
            case "thou" -> "thousandths of an inch";
            case "°", "deg", "degrees" -> "degrees";
            case "°c", "degc" -> "degrees Celsius";
            case "cm3", "cm³", "cc" -> "cubic centimetres";
            case "ml" -> "millilitres";
            case "kpa" -> "kilopascals";
            case "n" -> "newtons";
            case "%" -> "per cent";
            default -> written;
        };
    }
}
