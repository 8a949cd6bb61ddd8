package gudgeon.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Every reader over all inputs kept for it, and some fuzzed for a few seconds; with {@code -Dgudgeon.long=true} all for minutes, which
 * also writes the table of docs/fuzzing.md. An input that breaks a promise is kept under target/fuzz; moved into the reader's folder of
 * the corpus it is tried in every build from then on.
 */
@Execution(ExecutionMode.CONCURRENT)
class FuzzingTest {
    private static final boolean LONG = Boolean.getBoolean("gudgeon.long");
    private static final Duration RUN = Duration.ofSeconds(Long.getLong("gudgeon.fuzz.seconds", LONG ? 180 : 5));
    private static final int AT_ONCE = LONG ? 1 : 2;
    private static final Duration HANG = Duration.ofSeconds(60);
    private static final List<Reader> ALL = List.of(Reader.values());
    /** Those that are fuzzed in each build; with the others the fuzzer takes longer to begin than a build may last. */
    private static final List<Reader> SOON_BEGUN = List.of(Reader.SIZE, Reader.PHOTO);

    private static List<Path> kept(Reader reader) throws IOException {
        try (Stream<Path> files = Files.list(reader.corpus())) {
            return files.sorted().toList();
        }
    }

    @TestFactory
    Stream<DynamicTest> everyInputThatIsKeptBreaksNoPromise() {
        return ALL.stream()
                .map(reader -> DynamicTest.dynamicTest(reader.word(), () -> {
                    MethodHandle target = target(reader);
                    for (Path input : kept(reader)) {
                        byte[] bytes = Files.readAllBytes(input);
                        assertTimeoutPreemptively(HANG, () -> feed(target, bytes, input), input.toString());
                    }
                }));
    }

    private static MethodHandle target(Reader reader) throws ReflectiveOperationException {
        return MethodHandles.lookup()
                .findStatic(
                        Class.forName(reader.target()),
                        "fuzzerTestOneInput",
                        MethodType.methodType(void.class, byte[].class));
    }

    private static void feed(MethodHandle target, byte[] bytes, Path input) {
        try {
            target.invokeExact(bytes);
        } catch (Throwable broken) {
            throw new AssertionError(input + " breaks a promise: " + broken.getMessage(), broken);
        }
    }

    @Test
    void readersAreFuzzed() throws IOException, InterruptedException, ExecutionException {
        ExecutorService hands = Executors.newFixedThreadPool(AT_ONCE);
        List<Callable<Fuzzing>> work = (LONG ? ALL : SOON_BEGUN)
                .stream()
                        .map(reader -> (Callable<Fuzzing>) () -> Fuzzing.of(reader, RUN, LONG))
                        .toList();
        List<Fuzzing> runs = new ArrayList<>();
        for (Future<Fuzzing> done : hands.invokeAll(work)) {
            runs.add(done.get());
        }
        hands.shutdown();
        for (Fuzzing run : runs) {
            assertThat(run.found())
                    .as(
                            "inputs that break a promise of the reader of the %s. %s",
                            run.reader().words(), run.said())
                    .isEmpty();
            assertThat(run.runs())
                    .as(run.said())
                    .isGreaterThan(kept(run.reader()).size());
        }
        if (LONG) {
            FuzzTable.write(runs);
        }
    }

    /** A fuzzer that can't fail would prove nothing. */
    @Test
    void aBrokenPromiseIsAFailure() {
        assertThatThrownBy(() -> Promise.sentence("java.lang.IllegalStateException: 7"))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Promise.said(List.of())).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Promise.same(1, 2, "it")).isInstanceOf(AssertionError.class);
    }
}
