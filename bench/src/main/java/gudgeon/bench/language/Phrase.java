package gudgeon.bench.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A phrase with blanks, such as "The {0} is {1}.", and what it is in another language. Its blanks are numbered from 0; in the other
 * language each stands as often as in English, maybe elsewhere.
 */
final class Phrase {
    static final Pattern BLANK = Pattern.compile("\\{(\\d+)}");

    private final List<String> fixed;
    private final String meaning;
    private final Pattern pattern;
    private final int letters;

    /** A phrase as the book has it: in English and in the other language. */
    Phrase(String english, String meaning) {
        this.meaning = meaning;
        fixed = List.of(BLANK.split(english, -1));
        StringBuilder regex = new StringBuilder(Pattern.quote(fixed.get(0)));
        fixed.stream().skip(1).forEach(piece -> regex.append("(.*?)").append(Pattern.quote(piece)));
        pattern = Pattern.compile(regex.toString(), Pattern.DOTALL);
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

    /** What fills its blanks in a text; nothing if the text is not of this phrase. */
    Optional<List<String>> fills(String text) {
        int from = 0;
        for (String piece : fixed) {
            int at = text.indexOf(piece, from);
            if (at < 0) {
                return Optional.empty();
            }
            from = at + piece.length();
        }
        Matcher found = pattern.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        List<String> fills = new ArrayList<>();
        for (int n = 1; n <= found.groupCount(); n++) {
            if (insideWord(text, found.start(n)) || insideWord(text, found.end(n))) {
                return Optional.empty();
            }
            fills.add(found.group(n));
        }
        return Optional.of(fills);
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
