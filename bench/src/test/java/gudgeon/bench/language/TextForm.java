package gudgeon.bench.language;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a text found in a source stands in the book of phrases. */
final class TextForm {
    /** Stands for what fills a blank while the text is put together. */
    static final String BLANK = "\u0001";

    private static final Pattern STATEMENT = Pattern.compile(
            "(?:\\{0}[^.]*)?(?:ORDER BY|WHERE|AND|PRAGMA|SELECT|INSERT|CREATE|UPDATE|DELETE|ALTER|DROP|VACUUM|REPLACE INTO) .*");
    private static final Pattern MARKUP = Pattern.compile(
            "[/<#?\\\\].*|--.*|.*(?:</|/>|=\").*|gudgeon.*|[a-z]+/[a-z+-]+(?:; charset=.*)?|.*[;{] ?[a-z-]+: ?[^;]+[;}].*|@.*|M\\d+ ?[\\d.].*|CN=.*"
                    + "|default-src.*|META-INF.*|.*(?:\\|[a-z(]|\\w\\|\\w).*|[a-z]+\\.(?:json|yaml|jsonl|csv|txt)|pdf|html|\\p{Lu}{3,}|d MMM .*");
    private static final Pattern STYLE =
            Pattern.compile("[\\w{}.-]+: ?[\\w{}]+;.*|(?:\\{0} )?(?:\\.[a-z]+|body)(?:\\.[a-z]+)? \\{.*");
    private static final Pattern TABLE = Pattern.compile(".*(?:\\d+ ){6}.*");
    private static final int LONGEST = 900;

    private TextForm() {}

    /** With its blanks numbered and its spaces single. */
    static String of(String raw) {
        String text = raw.replaceAll("\\s+", " ").replaceAll(BLANK + "+", BLANK).strip();
        int[] next = {0};
        return Pattern.compile(BLANK)
                .matcher(text)
                .replaceAll(blank -> Matcher.quoteReplacement("{" + next[0]++ + "}"));
    }

    /**
     * Whether it reads as words for a person, not as a key, a statement to the database, markup or a table of figures.
     *
     * @param named whether it stands where a constant gets its words, so that one small word is enough
     */
    static boolean isForPeople(String text, boolean named) {
        String letters = Phrase.BLANK.matcher(text).replaceAll(" ").strip();
        if (Letters.words(letters).findAny().isEmpty()
                || text.length() > LONGEST
                || STATEMENT.matcher(text).matches()
                || MARKUP.matcher(text).matches()
                || STYLE.matcher(text).matches()
                || TABLE.matcher(text).matches()) {
            return false;
        }
        return text.contains(" ") || text.matches("\\p{Lu}\\p{Ll}+[.:,;!?]?") || (named && text.matches("\\p{L}{2,}"));
    }
}
