package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayCommandTest {
    private static final String TARN = "../examples/tarn-98.yaml";
    private static final String SHALLOW = "../examples/drill/01-shallow-exhaust-pocket/";

    @TempDir
    Path folder;

    private String file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void printsTheAlarmAtTheEntryThatRaisedIt() {
        Terminal replay = run("replay", TARN, SHALLOW + "fault.jsonl");
        assertThat(replay.code()).isEqualTo(1);
        assertThat(replay.out())
                .containsSubsequence(
                        "Tarn 98, 4 entries.",
                        "     4  Measured on piston 'new piston': exhaust pocket depth 0.2 with depth-micrometer.",
                        "STOP: valve touches, at: piston",
                        "The exhaust valve and the crown touch",
                        "At the end 1 alarm stands:",
                        "stop: valve touches, at: piston");
    }

    @Test
    void endsWithNothingWhenNoAlarmStands() {
        Terminal replay = run("replay", TARN, SHALLOW + "sound.jsonl");
        assertThat(replay.code()).isZero();
        assertThat(replay.out()).contains("At the end no alarm stands.").doesNotContain("STOP");
    }

    @Test
    void tellsOfAlarmsThatGoAndOfEntriesThatCountForNothing() throws Exception {
        String journal = file("j.jsonl", """
                {"type":"started","version":1,"engine":"","book":"","found":"together"}
                {"type":"check-failed","version":1,"check":"leak-down","reading":"60 %"}
                {"type":"check-passed","version":1,"check":"two-turns"}
                {"type":"check-passed","version":1,"check":"valve-clearance","reading":"0.05"}
                {"type":"check-passed","version":1,"check":"leak-down","reading":"8 %"}
                {"type":"step-done","version":1,"step":"fit-the-moon"}
                """);
        Terminal replay = run("replay", TARN, journal);
        assertThat(replay.code()).isZero();
        assertThat(replay.out())
                .containsSubsequence("LOOK: check out of turn", "     5  ", "gone: check out of turn", "Entry 6 names");
    }

    @Test
    void givesEverythingAsJson() throws Exception {
        JsonNode json = new ObjectMapper()
                .readTree(run("replay", "--json", TARN, SHALLOW + "fault.jsonl").out());
        JsonNode turn = json.get("turns").get(0);
        assertThat(turn.get("entry").asInt()).isEqualTo(4);
        assertThat(turn.get("key").asText()).isEqualTo("e4");
        JsonNode alarm = turn.get("raised").get(0);
        assertThat(alarm.get("kind").asText()).isEqualTo("valve-touches");
        assertThat(alarm.get("severity").asText()).isEqualTo("stop");
        assertThat(alarm.get("at").asText()).isEqualTo("piston");
        assertThat(alarm.get("evidence")).hasSize(1);
        assertThat(json.get("standing").get(0)).isEqualTo(alarm);
        assertThat(json.get("entries").asInt()).isEqualTo(4);
    }

    @Test
    void saysWhatIsWrongWithAJournal() throws Exception {
        assertThat(run("replay", TARN, file("a.jsonl", "{\"type\":\"nonsense\",\"version\":1}\nnot json\n")))
                .satisfies(replay -> {
                    assertThat(replay.code()).isEqualTo(2);
                    assertThat(replay.out()).isEmpty();
                    assertThat(replay.err()).contains("Line 1").contains("Line 2");
                });
        assertThat(run("replay", TARN, folder.toString()).err()).contains("is a folder");
        assertThat(run("replay", TARN, folder.resolve("none").toString()).err()).contains("There is no file");
        Path bytes = Files.write(folder.resolve("b.jsonl"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
        assertThat(run("replay", TARN, bytes.toString()).err()).contains("not a text file in UTF-8");
        assertThat(run("replay", TARN).code()).isEqualTo(2);
    }

    @Test
    void anEmptyJournalRaisesNothing() throws Exception {
        assertThat(run("replay", TARN, file("empty.jsonl", "")).code()).isZero();
    }
}
