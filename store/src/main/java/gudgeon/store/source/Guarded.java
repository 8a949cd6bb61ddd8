package gudgeon.store.source;

/** A cell of a table that a spreadsheet does not reckon with. */
public final class Guarded {
    private Guarded() {}

    /** What would begin a formula gets an apostrophe before it, as OWASP's "CSV Injection" advises; reading takes it off again. */
    public static String cell(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
