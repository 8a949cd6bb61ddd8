package gudgeon.rebuild.sentence;

import java.util.List;
import java.util.Locale;

/** Names, notes and lists as sentences. */
public final class Sentence {
    private Sentence() {}

    /** With a capital at its beginning and a stop at its end; empty for an empty text. */
    public static String of(String text) {
        return ended(capital(text));
    }

    /** With a capital at its beginning. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** With a stop at its end; empty for an empty text. */
    public static String ended(String text) {
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }

    /** Several things in one sentence, such as "a, b and c". */
    public static String list(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
