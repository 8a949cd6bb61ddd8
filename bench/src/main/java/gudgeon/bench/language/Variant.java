package gudgeon.bench.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * A way in which the program may have written a phrase: as it is, with a capital at its beginning, with a stop or colon at its end.
 *
 * @param text how the phrase would stand in the book
 * @param back writes its meaning as the text was written
 */
record Variant(String text, UnaryOperator<String> back) {
    static List<Variant> of(String text) {
        List<Variant> all = new ArrayList<>(ends(text, UnaryOperator.identity()));
        char first = text.charAt(0);
        if (Character.isUpperCase(first)) {
            all.addAll(ends(lower(text), Variant::upper));
        } else if (Character.isLowerCase(first)) {
            all.addAll(ends(upper(text), UnaryOperator.identity()));
        }
        return all;
    }

    private static List<Variant> ends(String text, UnaryOperator<String> begun) {
        Variant same = new Variant(text, begun);
        String end = text.substring(text.length() - 1);
        return ".:".contains(end) && text.length() > 1
                ? List.of(
                        same, new Variant(text.substring(0, text.length() - 1), meaning -> begun.apply(meaning) + end))
                : List.of(
                        same,
                        new Variant(text + ".", meaning -> begun.apply(meaning).replaceFirst("\\.$", "")));
    }

    /** With a capital at its beginning. */
    static String upper(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
