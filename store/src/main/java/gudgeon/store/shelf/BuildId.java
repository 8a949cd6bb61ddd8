package gudgeon.store.shelf;

import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Locale;

/** Ids of builds: something of the name, so that a person knows it, and something random, so that no two are the same. */
public final class BuildId {
    private static final int LONGEST_NAME = 32;
    private static final int RANDOM = 6;
    /** Without letters and digits that are taken for one another. */
    private static final String DIGITS = "23456789abcdefghjkmnpqrstuvwxyz";

    private BuildId() {}

    /** A new id: small letters, digits and hyphens. */
    static String of(String name, SecureRandom random) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String slug = plain.substring(0, Math.min(LONGEST_NAME, plain.length())).replaceAll("^-+|-+$", "");
        StringBuilder id = new StringBuilder(slug.isEmpty() ? "build" : slug).append('-');
        random.ints(RANDOM, 0, DIGITS.length()).forEach(digit -> id.append(DIGITS.charAt(digit)));
        return id.toString();
    }

    /** Whether a text could be the id of a build; no such text leads out of a folder. */
    public static boolean isOne(String text) {
        return text.matches("[a-z0-9][a-z0-9-]{0,63}");
    }
}
