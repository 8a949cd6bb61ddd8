package gudgeon.rebuild.book;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Words as the sentences of this room need them. */
final class Words {
    private static final int LONGEST = 40;

    private Words() {}

    /** Cut to a length that fits a sentence, line breaks removed. */
    static String shortened(String text) {
        String line = text.strip().replaceAll("\\s+", " ").replaceAll("\\p{Cntrl}", "?");
        int end = line.offsetByCodePoints(0, Math.min(LONGEST, line.codePointCount(0, line.length())));
        return end < line.length() ? line.substring(0, end) + "…" : line;
    }

    /** A number without needless zeros. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        text = text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
        return text.equals("-0") ? "0" : text;
    }

    /** The known word that a person most likely meant, if one is near enough. */
    static Optional<String> nearest(String word, Collection<String> known) {
        String meant = word.length() > LONGEST ? word.substring(0, LONGEST) : word;
        return known.stream()
                .min(Comparator.comparingInt(candidate -> distance(meant, candidate)))
                .filter(candidate -> distance(meant, candidate) <= Math.max(1, candidate.length() / 3));
    }

    /** Letters to change, add or leave out to turn one word into the other: Levenshtein's distance. */
    private static int distance(String from, String to) {
        String a = from.toLowerCase(Locale.ROOT).replace('_', '-');
        String b = to.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
