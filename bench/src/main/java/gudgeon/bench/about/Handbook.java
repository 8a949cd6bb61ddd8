package gudgeon.bench.about;

import gudgeon.bench.language.Language;
import gudgeon.bench.packed.Packed;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The handbook, which is docs/handbook packed with the program. */
public final class Handbook {
    /** The page that lists the others. */
    public static final String FIRST = "index";

    private static final String ROOM = "/gudgeon/bench/handbook/";

    private Handbook() {}

    /** A page in Markdown by its name, in that language; empty if there is none. */
    public static Optional<String> page(Language language, String name) {
        String room = language == Language.ENGLISH ? ROOM : ROOM + language.tag() + "/";
        return name.matches("[a-z-]{1,40}")
                ? Packed.bytes(room + name + ".md").map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** A picture by its name, as PNG; empty if there is none. */
    public static Optional<byte[]> picture(String name) {
        return name.matches("[a-z-]{1,40}\\.png") ? Packed.bytes(ROOM + "images/" + name) : Optional.empty();
    }
}
