package gudgeon.bench.language;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Letters and words of a text. */
final class Letters {
    private static final Pattern WORD = Pattern.compile("\\p{L}{2,}");

    private Letters() {}

    static int count(String text) {
        int letters = 0;
        for (int i = 0; i < text.length(); i++) {
            if (Character.isLetter(text.charAt(i))) {
                letters++;
            }
        }
        return letters;
    }

    /** Its words of two letters or more. */
    static Stream<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group);
    }
}
