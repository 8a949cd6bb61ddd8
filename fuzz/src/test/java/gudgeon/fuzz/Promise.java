package gudgeon.fuzz;

import java.util.List;

/** What every reader promises; what breaks it ends the run with the input that did. */
public final class Promise {
    private Promise() {}

    /** Something that must be so. */
    public static void kept(boolean so, String promise) {
        if (!so) {
            throw new AssertionError(promise);
        }
    }

    /** What was read must be the same again after it was written. */
    public static void same(Object read, Object again, String what) {
        if (!read.equals(again)) {
            throw new AssertionError(what + " read back otherwise:\n" + read + "\n" + again);
        }
    }

    /** Whoever refuses says why, in words. */
    public static void said(List<String> sentences) {
        kept(!sentences.isEmpty(), "refused without a sentence");
        sentences.forEach(Promise::sentence);
    }

    /** One sentence of a refusal: of words, not of a fault in the program. */
    public static void sentence(String text) {
        kept(!text.isBlank(), "a sentence is empty");
        kept(!text.contains("Exception"), "a fault of the program instead of a sentence: " + text);
    }
}
