package gudgeon.benchmarks.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** The heap of another Java process, as the JDK's own jcmd tells it. */
final class Heap {
    private static final Pattern GENERATION = Pattern.compile("generation\\s+total \\d+K, used (\\d+)K");

    private Heap() {}

    /** The bytes in use right after a full collection. */
    static long usedBy(Process process) throws IOException, InterruptedException {
        asked(process, "GC.run");
        return GENERATION
                        .matcher(asked(process, "GC.heap_info"))
                        .results()
                        .mapToLong(used -> Long.parseLong(used.group(1)))
                        .sum()
                * 1024;
    }

    private static String asked(Process process, String command) throws IOException, InterruptedException {
        Process jcmd = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                        Long.toString(process.pid()),
                        command))
                .redirectErrorStream(true)
                .start();
        String said = new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (jcmd.waitFor() != 0) {
            throw new IOException("jcmd failed: " + said);
        }
        return said;
    }
}
