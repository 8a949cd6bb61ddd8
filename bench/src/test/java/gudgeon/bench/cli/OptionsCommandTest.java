package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Options at the command line. */
class OptionsCommandTest {
    private static final String TARN = Path.of("..", "examples", "tarn-98.yaml").toString();

    @TempDir
    Path folder;

    private String journal(String... lines) throws Exception {
        return Files.write(folder.resolve("journal.jsonl"), List.of(lines)).toString();
    }

    private String rebore() throws Exception {
        return journal(
                "{\"type\": \"option-drawn\", \"version\": 1, \"option\": \"rebore\", \"name\": \"Rebore\"}",
                "{\"type\": \"option-line\", \"version\": 1, \"option\": \"rebore\", \"position\": \"barrel\", \"what\": \"bored\","
                        + " \"price\": \"80 EUR\", \"sizes\": {\"bore\": \"50.50 mm\"}}",
                "{\"type\": \"taken-off\", \"version\": 1, \"position\": \"spark-plug\", \"remark\": \"Insulator cracked\"}");
    }

    @Test
    void saysEachWayAndWhatIsProposed() throws Exception {
        Terminal options = run("options", "--book", TARN, "--journal", rebore(), "--rpm", "6000");
        assertThat(options.code()).isZero();
        assertThat(options.out())
                .contains("The engine as it is", "Rebore (rebore), not decided", "Money: 80.00 EUR.")
                .contains("mean piston speed at 6000 turns a minute: 10.0", "Ask the authority")
                .contains("spark plug (spark-plug): replace.");
    }

    @Test
    void saysTheSameAsJson() throws Exception {
        Terminal options = run("options", "--book", TARN, "--journal", rebore(), "--json");
        assertThat(options.code()).isZero();
        JsonNode json = new ObjectMapper().readTree(options.out());
        JsonNode option = json.at("/options/0");
        assertThat(option.get("option").asText()).isEqualTo("rebore");
        assertThat(option.at("/money/0/amount").asDouble()).isEqualTo(80);
        assertThat(option.at("/figures/0/key").asText()).isEqualTo("sweptCm3");
        // π/4 · 5.05² · 5.0 cm³ by hand
        assertThat(option.at("/figures/0/low").asDouble()).isBetween(100.13, 100.16);
        assertThat(json.at("/parts/0/proposed").asText()).isEqualTo("replace");
    }

    @Test
    void aSpeedThatCanNotBeIsRefused() {
        Terminal refused = run("options", "--book", TARN, "--rpm", "0");
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("--rpm 0 is no speed of a crank");
    }
}
