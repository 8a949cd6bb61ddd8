package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultPagesTest {
    private static final Path BOOK = Path.of("..", "examples", "tarn-98.yaml");

    @TempDir
    private Path folder;

    /** What is wrong with a field is said once, and nothing is taken down. */
    @Test
    void anAngleThatIsNoneIsRefusedInOneSentence() throws Exception {
        try (ServedBuild served = new ServedBuild(folder, Files.readString(BOOK), Found.TOGETHER)) {
            long before = served.build().size();
            HttpResponse<String> letter = felt(served, "35x");
            assertThat(letter.statusCode()).isEqualTo(422);
            assertThat(letter.body())
                    .contains("Crank angle: ", "35x", "is not a number")
                    .doesNotContain("No crank angle");
            HttpResponse<String> missing = felt(served, "");
            assertThat(missing.statusCode()).isEqualTo(422);
            assertThat(missing.body()).contains("No crank angle is written.");
            assertThat(served.build().size()).isEqualTo(before);
        }
    }

    private static HttpResponse<String> felt(ServedBuild served, String angle) throws Exception {
        return served.tell(
                "type",
                "tight-felt",
                "key",
                "k" + angle,
                "seen",
                "1",
                "hunt",
                "tight-spot-1",
                "turning",
                "forward",
                "angle",
                angle);
    }
}
