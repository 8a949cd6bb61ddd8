package gudgeon.bench.about;

import gudgeon.bench.packed.Packed;
import java.util.List;

/** This edition of Gudgeon, as the build wrote it down. Nothing of it is asked of the network. */
public final class Edition {
    private static final String ROOM = "/gudgeon/bench/about/";

    private Edition() {}

    /** Its version, such as 0.1.0. */
    public static String version() {
        return Packed.text(ROOM + "version.txt").strip();
    }

    /** What changed in each version, in Markdown. */
    public static String changes() {
        return Packed.text(ROOM + "CHANGELOG.md");
    }

    /** The libraries that ship with it, each a line with its licence, name and where it comes from. */
    public static List<String> libraries() {
        return Packed.text(ROOM + "libraries.txt")
                .lines()
                .map(String::strip)
                .filter(line -> line.startsWith("("))
                .toList();
    }
}
