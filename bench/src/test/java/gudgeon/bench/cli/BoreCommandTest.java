package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.stream.Stream;
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
        // skirt 50.47 ± 0.0074 (step 0.01, error 0.004), clearance wanted 0.02 to 0.05: 50.4974 to 50.5126, inwards to
        // whole 0.005
        assertThat(ask.get("leastMm").asDouble()).isEqualTo(50.50, within(1e-9));
        assertThat(ask.get("mostMm").asDouble()).isEqualTo(50.51, within(1e-9));
        assertThat(ask.get("work").asText())
                .startsWith("Bore and hone to 50.500 mm +0.010 / -0")
                .contains("handed over");
    }

    @Test
    void saysHowTheSpringsStand() throws Exception {
        String journal = drill("08-springs-shimmed-too-far");
        assertThat(run("bore", "--book", TARN, "--journal", journal).out()).doesNotContain("Springs:");
        assertThat(run("bore", "--book", TARN, "--journal", journal, "--valves").out())
                .contains("Springs:")
                .contains("of shims may go under it");
        Terminal json = run("bore", "--book", TARN, "--journal", journal, "--json");
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

    @Test
    void aSpringIsWorkedOutFromItsWire() {
        Object[] spring = {"spring", "--wire", "2.8", "--outside", "22.8 mm", "--coils", "6.5", "--lift", "8"};
        assertThat(run(spring).out()).contains("Solid at 18.20 mm").doesNotContain("presses");
        Object[] fitted =
                Stream.concat(Stream.of(spring), Stream.of("--fitted", "26")).toArray();
        assertThat(run(fitted).code()).isEqualTo(1);
        assertThat(run(fitted).out()).contains("The coils meet 0.20 mm before full lift");
        Terminal none = run("spring", "--wire", "3", "--outside", "5", "--coils", "6");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("There is no such spring");
    }
}
