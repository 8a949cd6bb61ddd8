package gudgeon.bench.language;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A phrase with blanks, such as "The {0} is {1}.", and what it is in another language. Its blanks are numbered from 0; in the other
 * language each stands as often as in English, maybe elsewhere.
 */
final class Phrase {
    static final Pattern BLANK = Pattern.compile("\\{(\\d+)}");

    /** Ways to fill the blanks that are looked at, at the most. */
    private static final int MOST_WAYS = 12;

    private final List<String> fixed;
    private final String meaning;
    private final int letters;

    /** A phrase as the book has it: in English and in the other language. */
    Phrase(String english, String meaning) {
        this.meaning = meaning;
        fixed = List.of(BLANK.split(english, -1));
        letters = fixed.stream().mapToInt(Letters::count).sum();
    }

    /** Letters outside its blanks. */
    int letters() {
        return letters;
    }

    /** The words outside its blanks. */
    List<String> words() {
        return fixed.stream().flatMap(Letters::words).toList();
    }

    /** What may fill its blanks in a text, in each way in which the text can be one of this phrase; none if it can't. */
    List<List<String>> fills(String text) {
        List<List<String>> ways = new ArrayList<>();
        if (text.startsWith(fixed.get(0))) {
            fill(text, fixed.get(0).length(), 1, List.of(), ways);
        }
        return ways;
    }

    private void fill(String text, int from, int piece, List<String> before, List<List<String>> ways) {
        String next = fixed.get(piece);
        boolean last = piece == fixed.size() - 1;
        int at = last && text.endsWith(next) ? text.length() - next.length() : text.indexOf(next, from);
        while (at >= from && ways.size() < MOST_WAYS) {
            int end = at + next.length();
            if ((!last || end == text.length())
                    && !insideWord(text, from)
                    && !insideWord(text, at)
                    && !insideNumber(text, at)) {
                List<String> fills = new ArrayList<>(before);
                fills.add(text.substring(from, at));
                if (last) {
                    ways.add(fills);
                } else {
                    fill(text, end, piece + 1, fills, ways);
                }
            }
            at = last ? -1 : text.indexOf(next, at + 1);
        }
    }

    /** Whether a stop or comma stands there as the sign before a number's decimals. */
    private static boolean insideNumber(String text, int at) {
        return at > 0
                && at + 1 < text.length()
                && ".,".indexOf(text.charAt(at)) >= 0
                && Character.isDigit(text.charAt(at - 1))
                && Character.isDigit(text.charAt(at + 1));
    }

    private static boolean insideWord(String text, int at) {
        return at > 0
                && at < text.length()
                && Character.isLetter(text.charAt(at - 1))
                && Character.isLetter(text.charAt(at));
    }

    /** The phrase in the other language, its blanks filled. */
    String filled(List<String> fills) {
        return BLANK.matcher(meaning)
                .replaceAll(blank -> Matcher.quoteReplacement(fills.get(Integer.parseInt(blank.group(1)))));
    }
}
