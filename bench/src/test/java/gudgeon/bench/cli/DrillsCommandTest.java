package gudgeon.bench.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All drills played by one command, and a new one as soon as its folder is there. */
class DrillsCommandTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            joints:
              - id: cover
                name: cover screws
                torque: 9 N.m
                holes: [{id: top, thread: M6, class: "8.8", length: 35, stack: 21, depth: 18, into: aluminium}]
            steps:
              - {id: close, name: close the cover, tightens: [cover]}
            """;
    private static final String STARTED = "{\"type\":\"started\",\"version\":1,\"found\":\"in-pieces\"}\n";

    @TempDir
    private Path folder;

    private static String given(String length) {
        return "{\"type\":\"hole-given\",\"version\":1,\"joint\":\"cover\",\"hole\":\"top\",\"thread\":\"M6\",\"length\":\""
                + length + "\"}\n";
    }

    private void write(String name, String description, String fault, String sound) throws IOException {
        Path drill = Files.createDirectories(folder.resolve(name));
        Files.writeString(folder.resolve("book.yaml"), BOOK);
        Files.writeString(drill.resolve("drill.yaml"), description);
        Files.writeString(drill.resolve("fault.jsonl"), fault);
        Files.writeString(drill.resolve("sound.jsonl"), sound);
    }

    private void writeScrew(String soundLength) throws IOException {
        write("screw-bottoms", """
                mistake: A screw of mine bottomed.
                shown-by: It is given its hole.
                book: ../book.yaml
                expected: {alarm: fastener-too-long, at: cover, entry: 2}
                vary:
                  fault: [{entry: 2, field: length, from: 42, to: 60}]
                """, STARTED + given("45 mm"), STARTED + given(soundLength));
    }

    private String run(int code, String... more) {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        String[] all = new String[more.length + 2];
        all[0] = "drills";
        all[1] = folder.toString();
        System.arraycopy(more, 0, all, 2, more.length);
        assertThat(Gudgeon.run(out, out, all)).as(said.toString()).isEqualTo(code);
        return said.toString();
    }

    @Test
    void aNewFolderHasItsRowAndItsVariants() throws IOException {
        writeScrew("35 mm");
        assertThat(run(0, "--variants", "20"))
                .contains("| screw-bottoms | A screw of mine bottomed. | Tarn 98 | 1 | 20 | 21 | 0 | 0 | 0 |")
                .contains("|  | all |  | 1 | 20 | 21 | 0 | 0 | 0 |");
    }

    @Test
    void aTwinThatIsNotSoundIsAFalseAlarmAndIsKept() throws IOException {
        writeScrew("50 mm");
        Path kept = folder.resolve("kept");
        String said = run(1, "--variants", "2", "--keep", kept.toString());
        assertThat(said).contains("| 1 | 2 | 3 | 0 | 0 | 3 |", "false alarms", "fastener-too-long at cover");
        assertThat(kept.resolve("screw-bottoms-variant-2/fault.jsonl"))
                .content()
                .contains("hole-given");
    }

    @Test
    void aMistakeThatNobodySeesIsMissed() throws IOException {
        write("unseen", """
                mistake: Nothing at all.
                shown-by: Nothing.
                book: ../book.yaml
                expected: {alarm: fastener-too-long, at: cover, entry: 2}
                """, STARTED + given("35 mm"), STARTED + given("35 mm"));
        assertThat(run(1, "--variants", "3")).contains("| 1 | 3 | 0 | 0 | 4 | 0 |", "unseen, variant 3: missed");
    }

    @Test
    void theTableIsWrittenAndTheSameSeedWritesItAgain() throws IOException {
        writeScrew("35 mm");
        Path table = folder.resolve("docs").resolve("table.md");
        run(0, "--variants", "4", "--seed", "3", "--table", table.toString());
        String first = Files.readString(table);
        assertThat(first).startsWith("# The fault drill").contains("--seed 3");
        run(0, "--variants", "4", "--seed", "3", "--table", table.toString());
        assertThat(table).content().isEqualTo(first);
    }

    @Test
    void whatCantBePlayedIsToldAllAtOnce() throws IOException {
        write("odd", """
                mistake: ''
                shown-by: Nothing.
                book: ../nowhere.yaml
                expected: {alarm: no-such, at: cover, entry: 9}
                colour: red
                vary: {fault: [{entry: 2, field: torque, from: 3, to: 1}], any-order: [[1]]}
                """, STARTED + "{\"type\":\"danced\",\"version\":1}\n", STARTED);
        assertThat(run(2))
                .contains(
                        "odd/drill.yaml: 'mistake' is missing",
                        "'colour' is not known",
                        "'no-such', which is no kind of alarm",
                        "'book' ../nowhere.yaml can't be read",
                        "odd/fault.jsonl: Line 2",
                        "'from' is more than 'to'",
                        "'any-order' holds [1]")
                .doesNotContain("Exception");
    }

    @Test
    void aFolderWithoutDrillsIsRefused() {
        assertThat(run(2)).contains("holds a drill.yaml");
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        String nowhere = folder.resolve("nowhere").toString();
        for (List<String> words : List.of(List.of("drills", nowhere), List.of("drills", nowhere, "--variants", "-1"))) {
            assertThat(Gudgeon.run(out, out, words.toArray(String[]::new))).isEqualTo(2);
        }
        assertThat(said.toString()).contains("There is no folder", "--variants is -1");
    }
}
