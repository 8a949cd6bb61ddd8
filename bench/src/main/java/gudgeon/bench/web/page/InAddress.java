package gudgeon.bench.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** A person's words in an address: a name may hold anything, and an address means something by {@code & # / + %}. */
public final class InAddress {
    private InAddress() {}

    /** A text as it can stand between two slashes, or behind an equals sign. */
    public static String of(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
