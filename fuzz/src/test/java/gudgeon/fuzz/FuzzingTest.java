package gudgeon.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Every reader, first over all inputs kept for it, then fuzzed from them for a few seconds, or with {@code -Dgudgeon.long=true} for
 * minutes, which also writes the table of docs/fuzzing.md. An input that breaks a promise is kept under target/fuzz; moved into the
 * reader's folder of the corpus it is tried in every build from then on.
 */
@Execution(ExecutionMode.CONCURRENT)
class FuzzingTest {
    private static final boolean LONG = Boolean.getBoolean("gudgeon.long");
    private static final Duration LONG_RUN = Duration.ofSeconds(Long.getLong("gudgeon.fuzz.seconds", 180));
    private static final Duration HANG = Duration.ofSeconds(60);
    private static final List<Reader> ALL = List.of(Reader.values());

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
    void everyReaderIsFuzzed() throws IOException, InterruptedException {
        assumeTrue(LONG, "new inputs are sought by ./verify --long; each build feeds the kept ones");
        List<Fuzzing> runs = new ArrayList<>();
        for (Reader reader : ALL) {
            Fuzzing run = Fuzzing.of(reader, LONG_RUN);
            runs.add(run);
            assertThat(run.found())
                    .as("inputs that break a promise of the reader of the %s. %s", reader.words(), run.said())
                    .isEmpty();
            assertThat(run.runs()).as(run.said()).isGreaterThan(kept(reader).size());
        }
        FuzzTable.write(runs);
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
