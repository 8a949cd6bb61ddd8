package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Started twice on one data folder. */
class ServedTwiceTest {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/");

    @TempDir
    private Path data;

    private Process serve() throws IOException {
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Gudgeon.class.getName(),
                        "serve",
                        "--port",
                        "0",
                        "--data",
                        data.toString()))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String addressOf(Process served) throws IOException {
        BufferedReader out = served.inputReader();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                return address.group();
            }
        }
        throw new IOException("it did not start");
    }

    @Test
    void theSecondNamesTheFirstAndOneThatWasKilledStandsInNobodysWay() throws Exception {
        Process first = serve();
        try {
            String address = addressOf(first);
            Terminal second = run("serve", "--port", "0", "--data", data);
            assertThat(second.code()).isZero();
            assertThat(second.out()).contains("shows these builds already", address);
            Terminal other = run("builds", "--data", data);
            assertThat(other.code()).isEqualTo(2);
            assertThat(other.err()).contains("in use by another Gudgeon, which shows it at " + address);
        } finally {
            first.destroyForcibly().waitFor();
        }
        assertThat(data.resolve("shelf.address")).exists();
        Terminal after = run("builds", "--data", data);
        assertThat(after.code()).isZero();
        assertThat(data.resolve("shelf.address")).doesNotExist();
    }
}
