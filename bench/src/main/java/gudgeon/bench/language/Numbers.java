package gudgeon.bench.language;

import java.text.DecimalFormatSymbols;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and days as a language writes them. */
final class Numbers {
    /** A day as the program writes it (ISO 8601). */
    private static final Pattern DAY = Pattern.compile("(?<![\\d-])(\\d{4}-\\d{2}-\\d{2})(?![\\d-])");

    /** A number with decimals that is no part of a longer one, such as a version or a clause. */
    private static final Pattern DECIMAL = Pattern.compile("(?<![\\p{L}\\d.])(\\d+)\\.(\\d+)(?![\\p{L}\\d]|\\.\\d)");

    /** Strength classes of screws and nuts are names, not numbers (ISO 898-1 and 898-2). */
    private static final Pattern STRENGTH =
            Pattern.compile("(?:4\\.6|4\\.8|5\\.6|5\\.8|6\\.8|8\\.8|9\\.8|10\\.9|12\\.9)");

    private static final String NUMBER = "[\\d.,]*\\d";
    private static final String UNIT =
            "(?:mm|µm|in|thou|N·m|N|kN|lbf·ft|lbf·in|kgf·m|bar|psi|kPa|MPa|K|°C|°F|°|%|cm³|min|h|s|m/s|ft/min|g|kg"
                    + "|\\p{Lu}{3}|€|£)";
    private static final Pattern MEASURE =
            Pattern.compile("(?:[±+−-]? ?" + NUMBER + "(?: ?(?:±|×|–|:) ?" + NUMBER + ")* ?)?" + UNIT);

    private final String point;
    private final DateTimeFormatter days;

    Numbers(Language language) {
        point = String.valueOf(
                DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator());
        days = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(language.locale());
    }

    /** A text whose numbers and days are written as the language does. */
    String in(String text) {
        String dated = DAY.matcher(text).replaceAll(found -> Matcher.quoteReplacement(day(found.group())));
        return DECIMAL.matcher(dated).replaceAll(found -> {
            boolean named = STRENGTH.matcher(found.group()).matches() && !measured(dated, found.end());
            return named ? found.group() : found.group(1) + point + found.group(2);
        });
    }

    /** Whether a text is nothing but a number with its unit, or a unit. */
    static boolean isMeasure(String text) {
        return MEASURE.matcher(text).matches();
    }

    private String day(String iso) {
        try {
            return LocalDate.parse(iso).format(days);
        } catch (DateTimeException noDay) {
            return iso;
        }
    }

    /** Whether a unit follows, such as in "8.8 mm". */
    private static boolean measured(String text, int end) {
        return text.substring(end).matches("(?s) ?" + UNIT + "(?!\\p{L}).*");
    }
}
