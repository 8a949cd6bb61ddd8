package gudgeon.mechanics.thread;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The threads that are held. Metric: ISO 261, coarse pitch first; unified: ASME B1.1; Whitworth and fine: BS 84; British
 * Association: BS 93; cycle: BS 811. All of them from memory; those of BS 84 and 811 compared with published charts.
 */
final class ThreadTable {
    private static final double INCH_MM = 25.4;
    private static final int LONGEST = 40;
    private static final String EXAMPLES =
            " Write it as in M6, M8x1, 1/4 BSF, 1/4-28 UNF, 10-32 UNF, 2 BA or 5/16 CEI.";
    private static final Pattern METRIC = Pattern.compile("M(\\d+(?:\\.\\d+)?)(?:[X*](\\d*\\.?\\d+))?");
    private static final Pattern IMPERIAL = Pattern.compile(
            "(?:NO\\.?|#)?(\\d+(?:/\\d+)?)(?:\"|IN)?(?:[-X*](\\d+)(?:TPI)?)?(BSW|BSF|BSC|CEI|UNC|UNF|BA)");
    private static final Pattern HAND = Pattern.compile("[-\\s]*(LH|LEFT[-\\s]?HAND(ED)?|RH|RIGHT[-\\s]?HAND(ED)?)$");

    /** Nominal size and its pitches in mm, the coarse one first. */
    private static final String METRIC_SIZES = """
            1.6:0.35 2:0.4,0.25 2.5:0.45,0.35 3:0.5,0.35 3.5:0.6,0.35 4:0.7,0.5 4.5:0.75,0.5 5:0.8,0.5 6:1,0.75 7:1,0.75 \
            8:1.25,1,0.75 9:1.25,1,0.75 10:1.5,1.25,1,0.75 11:1.5,1,0.75 12:1.75,1.5,1.25,1 14:2,1.5,1.25,1 15:1.5,1 16:2,1.5,1 \
            17:1.5,1 18:2.5,2,1.5,1 20:2.5,2,1.5,1 22:2.5,2,1.5,1 24:3,2,1.5,1 25:2,1.5,1 26:1.5 27:3,2,1.5,1 28:2,1.5,1 \
            30:3.5,3,2,1.5,1 33:3.5,3,2,1.5 36:4,3,2,1.5""";

    /** Diameter and pitch of each number, in mm. */
    private static final String BA_SIZES =
            "0:6.0,1.0 1:5.3,0.9 2:4.7,0.81 3:4.1,0.73 4:3.6,0.66 5:3.2,0.59 6:2.8,0.53 7:2.5,0.48 8:2.2,0.43 9:1.9,0.39 10:1.7,0.35";

    /** A series in inches: size, then threads to the inch, the usual one first. */
    private record Series(String name, ThreadForm form, String sizes) {}

    private static final List<Series> INCHES = List.of(
            new Series(
                    "BSW",
                    ThreadForm.WHITWORTH,
                    "1/8:40 5/32:32 3/16:24 7/32:24 1/4:20 5/16:18 3/8:16 7/16:14 1/2:12 9/16:12 5/8:11 3/4:10 7/8:9 1:8"),
            new Series(
                    "BSF",
                    ThreadForm.WHITWORTH,
                    "3/16:32 7/32:28 1/4:26 9/32:26 5/16:22 3/8:20 7/16:18 1/2:16 9/16:16 5/8:14 11/16:14 3/4:12 7/8:11 1:10"),
            new Series(
                    "BSC",
                    ThreadForm.CYCLE,
                    "1/8:40 5/32:32 3/16:32 7/32:26 1/4:26 9/32:26 5/16:26 3/8:26 7/16:26,20 1/2:26,20 9/16:26,20 5/8:26,20 11/16:26,20 3/4:26,20"),
            new Series(
                    "UNC",
                    ThreadForm.UNIFIED,
                    "4:40 5:40 6:32 8:32 10:24 12:24 1/4:20 5/16:18 3/8:16 7/16:14 1/2:13 9/16:12 5/8:11 3/4:10 7/8:9 1:8"),
            new Series(
                    "UNF",
                    ThreadForm.UNIFIED,
                    "4:48 5:44 6:40 8:36 10:32 12:28 1/4:28 5/16:24 3/8:24 7/16:20 1/2:20 9/16:18 5/8:18 3/4:16 7/8:14 1:12"));

    private ThreadTable() {}

    static ScrewThread read(String designation) {
        String written = designation.strip();
        String plain = plain(written);
        if (plain.isEmpty() || plain.length() > LONGEST) {
            throw new UnknownFastener(
                    plain.isEmpty() ? "No thread is named." + EXAMPLES : "This is too long for a thread." + EXAMPLES);
        }
        Matcher metric = METRIC.matcher(plain);
        if (metric.matches()) {
            return metric(written, metric.group(1), Optional.ofNullable(metric.group(2)));
        }
        Matcher imperial = IMPERIAL.matcher(plain);
        if (imperial.matches()) {
            return imperial.group(3).equals("BA")
                    ? association(written, imperial.group(1))
                    : inches(written, imperial.group(1), Optional.ofNullable(imperial.group(2)), imperial.group(3));
        }
        throw new UnknownFastener("'" + written + "' is not a thread known here." + EXAMPLES);
    }

    private static String plain(String written) {
        String upper = written.toUpperCase(Locale.ROOT).replace('×', 'X').replace(',', '.');
        return HAND.matcher(upper).replaceFirst("").replaceAll("\\s+", "");
    }

    private static ScrewThread metric(String written, String size, Optional<String> pitch) {
        String nominal = number(size);
        String[] pitches = entry(METRIC_SIZES, nominal).orElseThrow(() -> unknown(written, "M", METRIC_SIZES));
        String asked = pitch.map(ThreadTable::number).orElse(pitches[0]);
        if (!Arrays.asList(pitches).contains(asked)) {
            throw new UnknownFastener("There is no M" + nominal + " of pitch " + asked + " mm in ISO 261; there is "
                    + Arrays.stream(pitches)
                            .map(one -> "M" + nominal + "x" + one)
                            .collect(Collectors.joining(", ")) + ".");
        }
        String name = asked.equals(pitches[0]) ? "M" + nominal : "M" + nominal + "x" + asked;
        return new ScrewThread(name, ThreadForm.ISO_METRIC, Double.parseDouble(nominal), Double.parseDouble(asked));
    }

    private static ScrewThread association(String written, String size) {
        String[] sizes = entry(BA_SIZES, size).orElseThrow(() -> unknown(written, "BA ", BA_SIZES));
        return new ScrewThread(
                size + " BA",
                ThreadForm.BRITISH_ASSOCIATION,
                Double.parseDouble(sizes[0]),
                Double.parseDouble(sizes[1]));
    }

    private static ScrewThread inches(String written, String size, Optional<String> perInch, String series) {
        String name = series.equals("CEI") ? "BSC" : series;
        Series held = INCHES.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        String[] counts = entry(held.sizes(), size).orElseThrow(() -> unknown(written, series + " ", held.sizes()));
        String asked = perInch.orElse(counts[0]);
        if (!Arrays.asList(counts).contains(asked)) {
            throw new UnknownFastener("A thread of " + size + " " + series + " has " + String.join(" or ", counts)
                    + " threads to the inch, not " + asked + ".");
        }
        return new ScrewThread(
                size + "-" + asked + " " + series,
                held.form(),
                INCH_MM * sizeInches(size, held.form()),
                INCH_MM / Double.parseDouble(asked));
    }

    /** Unified numbers below a quarter: 0.060 in + 0.013 in for each number (ASME B1.1). */
    private static double sizeInches(String size, ThreadForm form) {
        String[] parts = size.split("/", -1);
        double first = Double.parseDouble(parts[0]);
        if (parts.length == 2) {
            return first / Double.parseDouble(parts[1]);
        }
        return form == ThreadForm.UNIFIED && first > 1 ? 0.060 + 0.013 * first : first;
    }

    private static Optional<String[]> entry(String table, String size) {
        return Arrays.stream(table.split(" ", -1))
                .filter(one -> one.startsWith(size + ":"))
                .findFirst()
                .map(one -> one.substring(one.indexOf(':') + 1).split(",", -1));
    }

    private static UnknownFastener unknown(String written, String before, String table) {
        String held = Arrays.stream(table.split(" ", -1))
                .map(one -> one.substring(0, one.indexOf(':')))
                .collect(Collectors.joining(", "));
        return new UnknownFastener("'" + written + "' is not a thread known here; known are " + before + held + ".");
    }

    private static String number(String text) {
        return new BigDecimal(text).stripTrailingZeros().toPlainString();
    }
}
