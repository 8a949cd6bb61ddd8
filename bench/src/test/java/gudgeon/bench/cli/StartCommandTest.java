package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** The first start and running in at the command line. */
class StartCommandTest {
    private static final String BOOK = "../examples/tarn-98.yaml";
    private static final String DRILL = "../examples/drill/42-ran-on-with-the-old-oil/";

    private static JsonNode json(Terminal outcome) throws Exception {
        return new ObjectMapper().readTree(outcome.out());
    }

    @Test
    void whatIsOpenHoldsTheSignature() throws Exception {
        Terminal open = run("start", "--book", BOOK);
        assertThat(open.code()).isEqualTo(1);
        assertThat(open.out()).contains("Fire extinguisher at hand (extinguisher)", "no certificate");
        JsonNode signed = json(run("start", "--book", BOOK, "--journal", DRILL + "sound.jsonl", "--json"));
        assertThat(signed.at("/signed").asBoolean()).isTrue();
        assertThat(signed.at("/signedBy").asText()).isEqualTo("the fitter");
        assertThat(signed.at("/items").findValuesAsText("standing")).doesNotContain("not-good");
    }

    @Test
    void runningInSaysWhatIsDue() throws Exception {
        assertThat(run("run-in", "--book", BOOK, "--journal", DRILL + "fault.jsonl")
                        .out())
                .contains("Before it runs again: Change: engine oil.", "After it, due: Change: engine oil.");
        JsonNode json = json(run("run-in", "--book", BOOK, "--journal", DRILL + "fault.jsonl", "--json"));
        assertThat(json.at("/now").asText()).isEqualTo("half-load");
        assertThat(json.at("/stages/1/mostRpm").asInt()).isEqualTo(3000);
        assertThat(json.at("/stages/1/after/0/done").asBoolean()).isFalse();
        assertThat(json.at("/ownScheme").asBoolean()).isTrue();
    }
}
