package gudgeon.rebuild.sheet;

import java.util.Locale;

/** Names and notes of a book as sentences. */
final class Sentence {
    private Sentence() {}

    /** With a capital at its beginning and a stop at its end. */
    static String of(String text) {
        return text.isEmpty() ? text : ended(text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1));
    }

    /** With a stop at its end. */
    static String ended(String text) {
        return text.isEmpty() || ".!?".indexOf(text.charAt(text.length() - 1)) >= 0 ? text : text + ".";
    }

    /** Minutes as a person reads them. */
    static String time(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        return hours == 0 ? rest + " min" : rest == 0 ? hours + " h" : hours + " h " + rest + " min";
    }
}
