package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The bore plan at the command line, of the invented engine and its drills. */
class BoreCommandTest {
    private static final String TARN = Path.of("..", "examples", "tarn-98.yaml").toString();

    private static String drill(String name) {
        return Path.of("..", "examples", "drill", name, "sound.jsonl").toString();
    }

    @Test
    void saysWhichOversizeCleansUp() {
        Terminal plan = run("bore", "--book", TARN, "--journal", drill("26-oversize-does-not-clean-up"));
        assertThat(plan.code()).isZero();
        assertThat(plan.out())
                .contains("Pistons to be had:")
                .contains("+0.25 mm: 50.250 mm does not clean up")
                .contains("'second oversize', ordered")
                .contains("Compression ratio:")
                .contains("No depth of scores was recorded");
    }

    @Test
    void asksForTheSizeOfThePistonInHand() throws Exception {
        Terminal plan = run("bore", "--book", TARN, "--journal", drill("27-sent-before-the-piston"), "--json");
        assertThat(plan.code()).isZero();
        JsonNode ask = new ObjectMapper().readTree(plan.out()).get("bore").get("ask");
        // skirt 50.47, clearance wanted 0.02 to 0.05, less the micrometer's doubt at both ends
        assertThat(ask.get("leastMm").asDouble()).isBetween(50.49, 50.50);
        assertThat(ask.get("mostMm").asDouble()).isBetween(50.505, 50.52);
        assertThat(ask.get("work").asText()).contains("50.49").contains("handed over");
    }

    @Test
    void saysHowTheSpringsStand() throws Exception {
        String[] springs = {"bore", "--book", TARN, "--journal", drill("08-springs-shimmed-too-far")};
        assertThat(run(springs).out()).doesNotContain("Springs:");
        assertThat(run("bore", "--book", TARN, "--journal", drill("08-springs-shimmed-too-far"), "--valves")
                        .out())
                .contains("Springs:")
                .contains("of shims may go under it");
        Terminal json = run("bore", "--book", TARN, "--journal", drill("08-springs-shimmed-too-far"), "--json");
        JsonNode spring = new ObjectMapper().readTree(json.out()).get("springs").get(0);
        assertThat(spring.get("short").asBoolean()).isFalse();
        assertThat(spring.get("marginMm").asDouble()).isGreaterThan(1);
    }

    @Test
    void aBuildThatIsNotNamedIsAskedFor() {
        Terminal nothing = run("bore");
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).contains("Name a build");
    }
}
