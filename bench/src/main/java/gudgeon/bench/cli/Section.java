package gudgeon.bench.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;

/** Sentences under a heading. */
final class Section {
    private Section() {}

    /** Prints them after an empty line; nothing where there are none. */
    static void print(PrintWriter out, String heading, Stream<String> sentences) {
        List<String> all = sentences.toList();
        if (!all.isEmpty()) {
            out.println();
            out.println(heading);
            all.forEach(sentence -> out.println("  " + sentence));
        }
    }
}
