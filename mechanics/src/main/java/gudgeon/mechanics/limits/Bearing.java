package gudgeon.mechanics.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rolling bearing by its number: "6203 C3", "608-2RS", "62/22", "NU 204". Boundary dimensions by ISO 15; a cylindrical roller
 * bearing of series 10, 2, 3 or 4 shares them with the ball bearing of series 60, 62, 63 or 64.
 *
 * @param kind what rolls in it
 * @param number type, series and bore: "6203", "NU 204"
 * @param boreMm bore, mm
 * @param outsideMm outside diameter, mm
 * @param widthMm width of the rings, mm
 * @param suffixes what common letters behind the number mean, in the order written
 * @param others letters behind the number that are some maker's own
 */
public record Bearing(
        Kind kind,
        String number,
        int boreMm,
        int outsideMm,
        int widthMm,
        List<BearingSuffix> suffixes,
        List<String> others) {
    /** What rolls. */
    public enum Kind {
        /** Single-row deep groove ball bearing. */
        BALL,
        /** Single-row cylindrical roller bearing. */
        ROLLER
    }

    private static final int LONGEST = 40;
    private static final Pattern BALL =
            Pattern.compile("(618|619|160|6[0234])(?:(\\d{2})(?!\\d)|/(\\d{2})(?!\\d)|(\\d)(?!\\d))");
    private static final Pattern ROLLER = Pattern.compile("(NUP|NU|NJ|N)\\s*(10|[234])(\\d{2})(?!\\d)");
    private static final Pattern NUMBER = Pattern.compile("[A-Z]{0,3}\\s*\\d{3,5}(?:/\\d+)?.*");
    private static final Pattern BETWEEN = Pattern.compile("[\\s/.,-]+");
    private static final int[] BORES_OF_CODES_UNDER_FOUR = {10, 12, 15, 17};

    public Bearing {
        suffixes = List.copyOf(suffixes);
        others = List.copyOf(others);
    }

    /**
     * Reads a bearing's number.
     *
     * @throws UnknownDesignation when it is none, or none of the tables
     */
    public static Bearing of(String designation) {
        String written = designation.strip().toUpperCase(Locale.ROOT);
        Matcher ball = BALL.matcher(written);
        if (written.length() <= LONGEST && ball.lookingAt()) {
            return of(Kind.BALL, ball.group(1), bore(ball), ball.group(), written.substring(ball.end()));
        }
        Matcher roller = ROLLER.matcher(written);
        if (written.length() <= LONGEST && roller.lookingAt()) {
            String series = "6" + (roller.group(2).equals("10") ? "0" : roller.group(2));
            String number = roller.group(1) + " " + roller.group(2) + roller.group(3);
            return of(Kind.ROLLER, series, boreOfCode(roller.group(3)), number, written.substring(roller.end()));
        }
        throw new UnknownDesignation(
                written.length() <= LONGEST && NUMBER.matcher(written).matches()
                        ? "'" + written + "' is of no series held here; held are ball bearings of series "
                                + String.join(", ", BearingSizes.series())
                                + " and cylindrical roller bearings N, NU, NJ and NUP of series 10, 2, 3 and 4."
                        : "'" + (written.length() > LONGEST ? written.substring(0, LONGEST) + "..." : written)
                                + "' is not a bearing's number; write one as in 6203 C3, 608-2RS or NU 204.");
    }

    private static Bearing of(Kind kind, String series, int boreMm, String number, String behind) {
        BearingSizes.Envelope envelope = BearingSizes.envelope(series, boreMm)
                .orElseThrow(() -> new UnknownDesignation("There is no bearing " + number
                        + " in the tables, which go from 3 to 100 mm bore; measure it."));
        List<BearingSuffix> suffixes = new ArrayList<>();
        List<String> others = new ArrayList<>();
        BETWEEN.splitAsStream(behind)
                .filter(letters -> !letters.isEmpty())
                .forEach(letters -> read(letters, suffixes, others));
        return new Bearing(kind, number, boreMm, envelope.outsideMm(), envelope.widthMm(), suffixes, others);
    }

    /** Takes common suffixes, written together or apart, off the front of a group of letters; what is left is a maker's own. */
    private static void read(String letters, List<BearingSuffix> suffixes, List<String> others) {
        String left = letters;
        List<BearingSuffix> found = new ArrayList<>();
        while (!left.isEmpty()) {
            Optional<BearingSuffix> next = BearingSuffix.leading(left);
            if (next.isEmpty()) {
                others.add(letters);
                return;
            }
            found.add(next.get());
            left = left.substring(next.get().writtenIn(left).length());
        }
        suffixes.addAll(found);
    }

    private static int bore(Matcher ball) {
        if (ball.group(2) != null) {
            return boreOfCode(ball.group(2));
        }
        return Integer.parseInt(ball.group(3) != null ? ball.group(3) : ball.group(4));
    }

    private static int boreOfCode(String twoDigits) {
        int code = Integer.parseInt(twoDigits);
        return code < BORES_OF_CODES_UNDER_FOUR.length ? BORES_OF_CODES_UNDER_FOUR[code] : 5 * code;
    }
}
