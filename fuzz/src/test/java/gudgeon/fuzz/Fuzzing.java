package gudgeon.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One run of the fuzzer, Jazzer, over a reader, in a process of its own: a reader that hangs or fills the memory must not take the
 * tests with it.
 *
 * @param reader what was fuzzed
 * @param runs how many inputs were tried
 * @param seconds for how long
 * @param edges how many edges of the code were reached
 * @param found the inputs that broke a promise
 * @param said what the fuzzer wrote last
 */
record Fuzzing(Reader reader, long runs, long seconds, long edges, List<Path> found, String said) {
    /** An input that takes longer hangs. */
    private static final int HANG_SECONDS = 60;
    /** A reader that needs more memory for one input asks for too much. */
    private static final String MEMORY = "-Xmx1g";
    /** Starting, and putting the fuzzer's counters into the code, takes this at most. */
    private static final Duration START = Duration.ofMinutes(3);

    /** What a short run is led by: putting counters into all code takes longer than the run itself. */
    private static final String COUNTED_SHORTLY = "gudgeon.mechanics.**:gudgeon.store.photo.**:com.drew.**";

    /** Inputs that a short run starts from. */
    private static final int FEW = 4;

    private static final Pattern DONE = Pattern.compile("Done (\\d+) runs in (\\d+) second");
    private static final Pattern EDGES = Pattern.compile("cov: (\\d+)");
    private static final int SHOWN = 4000;
    private static final String COUNTED =
            "gudgeon.**:org.snakeyaml.**:com.fasterxml.**:de.siegmar.**:com.drew.**:picocli.**";

    Fuzzing {
        found = List.copyOf(found);
    }

    /**
     * Fuzzes a reader for so long.
     *
     * @param whole whether it starts from all inputs kept for it and is led by all code that they reach; else from the shortest and by
     *     less code
     */
    static Fuzzing of(Reader reader, Duration time, boolean whole) throws IOException, InterruptedException {
        Path work = Files.createDirectories(Path.of("target", "fuzz", reader.word()));
        Path grown = Files.createDirectories(work.resolve("grown"));
        Path broke = work.resolve("broke");
        Scratch.remove(Files.createDirectories(broke));
        Files.createDirectories(broke);
        Path log = work.resolve("log.txt");
        Path begun = whole ? reader.corpus() : shortest(reader, work.resolve("begun"));
        Process fuzzer = new ProcessBuilder(
                        command(reader, time, whole ? COUNTED : COUNTED_SHORTLY, grown, broke, begun))
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        if (!fuzzer.waitFor(time.plus(START).toSeconds(), TimeUnit.SECONDS)) {
            fuzzer.destroyForcibly().waitFor();
        }
        return read(reader, Files.readString(log, StandardCharsets.ISO_8859_1), broke);
    }

    private static Path shortest(Reader reader, Path folder) throws IOException {
        Scratch.remove(Files.createDirectories(folder));
        Files.createDirectories(folder);
        try (Stream<Path> kept = Files.list(reader.corpus())) {
            List<Path> few = kept.sorted(
                            Comparator.comparingLong(file -> file.toFile().length()))
                    .limit(FEW)
                    .toList();
            for (Path one : few) {
                Files.copy(one, folder.resolve(one.getFileName()));
            }
        }
        return folder;
    }

    private static List<String> command(
            Reader reader, Duration time, String counted, Path grown, Path broke, Path begun) {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                MEMORY,
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-Dorg.slf4j.simpleLogger.defaultLogLevel=off",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + reader.target(),
                "--instrumentation_includes=" + counted,
                "--instrumentation_excludes=gudgeon.fuzz.**",
                "--reproducer_path=" + broke,
                "-max_total_time=" + time.toSeconds(),
                "-timeout=" + HANG_SECONDS,
                "-max_len=" + reader.longest(),
                "-artifact_prefix=" + broke + "/",
                grown.toString(),
                begun.toString());
    }

    private static Fuzzing read(Reader reader, String log, Path broke) throws IOException {
        Matcher done = DONE.matcher(log);
        boolean ended = done.find();
        long edges = EDGES.matcher(log)
                .results()
                .mapToLong(one -> Long.parseLong(one.group(1)))
                .max()
                .orElse(0);
        return new Fuzzing(
                reader,
                ended ? Long.parseLong(done.group(1)) : 0,
                ended ? Long.parseLong(done.group(2)) : 0,
                edges,
                found(broke),
                log.substring(Math.max(0, log.length() - SHOWN)));
    }

    /** The inputs that the fuzzer wrote; beside each it puts a program that replays it, which nobody needs here. */
    private static List<Path> found(Path broke) throws IOException {
        try (Stream<Path> files = Files.list(broke)) {
            return files.filter(file -> !file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }
}
