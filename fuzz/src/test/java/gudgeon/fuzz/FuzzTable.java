package gudgeon.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The table of what was fuzzed, as it stands in docs/fuzzing.md between its two marks. */
final class FuzzTable {
    private static final Path DOC = Path.of("..", "docs", "fuzzing.md");
    private static final String BEGIN = "<!-- made by the long run: begin -->\n";
    private static final String END = "<!-- made by the long run: end -->";

    private FuzzTable() {}

    /** Puts the runs in the place of the table that was there. */
    static void write(List<Fuzzing> runs) throws IOException {
        String doc = Files.readString(DOC);
        int from = doc.indexOf(BEGIN) + BEGIN.length();
        Files.writeString(DOC, doc.substring(0, from) + table(runs) + doc.substring(doc.indexOf(END)));
    }

    private static String table(List<Fuzzing> runs) throws IOException {
        StringBuilder rows = new StringBuilder("""
                | what is read | kept inputs | inputs tried | seconds | edges reached | broke a promise |
                | --- | ---: | ---: | ---: | ---: | ---: |
                """);
        for (Fuzzing run : runs) {
            rows.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %,d | %d | %,d | %d |%n",
                    run.reader().words(),
                    kept(run.reader()),
                    run.runs(),
                    run.seconds(),
                    run.edges(),
                    run.found().size()));
        }
        return rows.toString().lines().collect(Collectors.joining("\n", "", "\n"));
    }

    private static long kept(Reader reader) throws IOException {
        try (Stream<Path> files = Files.list(reader.corpus())) {
            return files.count();
        }
    }
}
