package gudgeon.bench.language;

import static java.time.format.DateTimeFormatter.ISO_LOCAL_DATE;

import java.text.DecimalFormatSymbols;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and days as a language writes them. */
final class Numbers {
    /** A day as the program writes it (ISO 8601). */
    private static final Pattern DAY = Pattern.compile("(?<![\\d-])(\\d{4}-\\d{2}-\\d{2})(?![\\d-])");

    /** A day as a person reads it in English, such as "3 Oct 2026", maybe with a time of day behind it. */
    private static final Pattern SPOKEN_DAY =
            Pattern.compile("(?<![\\d.])(\\d{1,2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) \\d{4})(?!\\d)");

    private static final DateTimeFormatter SPOKEN = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private static final Pattern TIME =
            Pattern.compile("(?:" + SPOKEN_DAY.pattern() + "|" + DAY.pattern() + ")(?:,? \\d{1,2}:\\d{2})?");

    /** A number with decimals that is no part of a longer one, such as a version or a clause. */
    private static final Pattern DECIMAL = Pattern.compile("(?<![\\p{L}\\d.])(\\d+)\\.(\\d+)(?![\\p{L}\\d]|\\.\\d)");

    /** Strength classes of screws and nuts are names, not numbers (ISO 898-1 and 898-2). */
    private static final Pattern STRENGTH =
            Pattern.compile("(?:4\\.6|4\\.8|5\\.6|5\\.8|6\\.8|8\\.8|9\\.8|10\\.9|12\\.9)");

    static final String NUMBER = "[\\d.,]*\\d";
    static final String UNIT =
            "(?:mm|µm|in|thou|N·m|N|kN|lbf·ft|lbf·in|kgf·m|bar|psi|kPa|MPa|K|°C|°F|°|%|cm³|min|h|s|m/s|ft/min|g|kg|l|ml"
                    + "|\\p{Lu}{3}|€|£)";
    /** A thread of ISO 261, maybe with its length behind it, or two bare numbers. */
    private static final Pattern SIZE =
            Pattern.compile("(?:M\\d[\\dx×.,]*(?: ?× ?" + NUMBER + ")?|" + NUMBER + " ?[x×] ?" + NUMBER + ")");

    private static final Pattern MEASURE = Pattern.compile(
            "(?:[±+−-]? ?" + NUMBER + "(?: ?" + UNIT + ")?(?: ?(?:±|×|x|–|:) ?" + NUMBER + ")* ?)?" + UNIT);

    private final String point;
    private final DateTimeFormatter days;

    Numbers(Language language) {
        point = String.valueOf(
                DecimalFormatSymbols.getInstance(language.locale()).getDecimalSeparator());
        days = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(language.locale());
    }

    /** A text whose numbers and days are written as the language does. */
    String in(String text) {
        String days =
                DAY.matcher(text).replaceAll(found -> Matcher.quoteReplacement(day(found.group(), ISO_LOCAL_DATE)));
        String dated =
                SPOKEN_DAY.matcher(days).replaceAll(found -> Matcher.quoteReplacement(day(found.group(), SPOKEN)));
        return DECIMAL.matcher(dated).replaceAll(found -> {
            boolean named = STRENGTH.matcher(found.group()).matches() && !measured(dated, found.end());
            return named ? found.group() : found.group(1) + point + found.group(2);
        });
    }

    /** Whether a text is nothing but a number with its unit, a unit, or a day. */
    static boolean isMeasure(String text) {
        return MEASURE.matcher(text).matches()
                || SIZE.matcher(text).matches()
                || TIME.matcher(text).matches();
    }

    private String day(String written, DateTimeFormatter as) {
        try {
            return LocalDate.parse(written, as).format(days);
        } catch (DateTimeException noDay) {
            return written;
        }
    }

    /** Whether a unit follows, such as in "8.8 mm". */
    private static boolean measured(String text, int end) {
        return text.substring(end).matches("(?s) ?" + UNIT + "(?!\\p{L}).*");
    }
}
