package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Fasteners at the command line, of the invented engine and its drills. */
class FastenersCommandTest {
    private static final String TARN = Path.of("..", "examples", "tarn-98.yaml").toString();

    private static String fault(String name) {
        return Path.of("..", "examples", "drill", name, "fault.jsonl").toString();
    }

    @Test
    void saysWhichLengthIsRight() {
        Terminal asked = run("bolt-length", "--thread", "M6", "--stack", "28", "--depth", "14", "--into", "alloy");
        assertThat(asked.code()).isZero();
        assertThat(asked.out())
                .contains("At least 38 mm")
                .contains("At most 41 mm")
                .contains("Take 40 mm");
    }

    @Test
    void judgesALength() throws Exception {
        Terminal asked =
                run("bolt-length", "--thread", "M6", "--stack", "28", "--depth", "14", "--length", "45", "--json");
        assertThat(asked.code()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(asked.out());
        assertThat(json.get("verdict").asText()).isEqualTo("bottoms");
        assertThat(json.get("standardMm").get(0).asDouble()).isEqualTo(40);
    }

    @Test
    void aScrewShorterThanWhatItClampsIsNoMatterOfThread() {
        Terminal asked = run("bolt-length", "--thread", "M6", "--stack", "40", "--length", "30");
        assertThat(asked.code()).isEqualTo(1);
        assertThat(asked.out()).contains("30 mm is too short: it does not reach through the 40 mm it clamps.");
    }

    @Test
    void unusableInputGetsItsSentence() {
        assertThat(run("bolt-length", "--thread", "M6.5", "--stack", "28").err())
                .contains("M6.5");
        assertThat(run("bolt-length", "--thread", "M6", "--stack", "-3").err()).contains("above 0");
        assertThat(run("bolt-length", "--thread", "M6", "--stack", "9 N.m").err())
                .contains("is not a length");
        assertThat(run("bolt-length", "--thread", "M6", "--stack", "9", "--into", "cheese")
                        .err())
                .contains("is not a metal known here");
        Terminal joint = run("fasteners", "--book", TARN, "--joint", "no-joint");
        assertThat(joint.code()).isEqualTo(2);
        assertThat(joint.err()).contains("no joint 'no-joint'").contains("cover-right-joint");
    }

    @Test
    void saysWhatToBuyAndHowFarTheJointIs() throws Exception {
        Terminal asked = run(
                "fasteners",
                "--book",
                TARN,
                "--journal",
                fault("10-screw-too-short"),
                "--joint",
                "cover-right-joint",
                "--json");
        assertThat(asked.code()).isZero();
        JsonNode json = new ObjectMapper().readTree(asked.out());
        JsonNode joint = json.get("joints").get(0);
        assertThat(joint.get("holes")).hasSize(11);
        assertThat(joint.get("orderFrom").asText()).isEqualTo("computed");
        assertThat(joint.get("passes")).hasSize(3);
        // three of 35 and two of 45 lie there; two of 40, three of 30 and one of 55 do not
        assertThat(json.get("buy")).hasSize(3);
        assertThat(run("fasteners", "--book", TARN).out())
                .contains("Not tightened yet")
                .contains("Nothing of the heap is counted yet")
                .doesNotContain("Buy:");
    }
}
