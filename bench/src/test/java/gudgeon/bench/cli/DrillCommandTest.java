package gudgeon.bench.cli;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.drill.Outcome;
import gudgeon.store.drill.Drill;
import gudgeon.store.drill.DrillReader;
import gudgeon.store.drill.DrillReading;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drill made of a journal, and judged as those that come with Gudgeon are. */
class DrillCommandTest {
    private static final String JOURNAL = """
            {"type":"started","version":1,"found":"in-pieces"}
            {"type":"piled","version":1,"kind":"35 long","thread":"M6","length":"35 mm","count":3}
            {"type":"hole-given","version":1,"joint":"cover-right-joint","hole":"cover-right-top","kind":"","thread":"M6","length":"45 mm"}
            {"type":"fault-found","version":1,"where":"cover-right","what":"a screw bottomed"}
            {"type":"hole-given","version":1,"joint":"cover-right-joint","hole":"cover-right-top","kind":"","thread":"M6","length":"35 mm"}
            """;

    @TempDir
    private Path folder;

    private Path journal = Path.of("");

    @BeforeEach
    void write() throws IOException {
        journal = folder.resolve("journal.jsonl");
        Files.writeString(journal, JOURNAL);
    }

    private String run(int code, String... more) {
        StringWriter said = new StringWriter();
        PrintWriter out = new PrintWriter(said, true);
        String[] fixed = {
            "drill", "--book", Path.of("..", "examples", "tarn-98.yaml").toString(), "--journal", journal.toString()
        };
        String[] all = new String[fixed.length + more.length];
        System.arraycopy(fixed, 0, all, 0, fixed.length);
        System.arraycopy(more, 0, all, fixed.length, more.length);
        assertThat(Gudgeon.run(out, out, all)).as(said.toString()).isEqualTo(code);
        return said.toString();
    }

    @Test
    void theMistakeIsCaughtAndItsTwinIsSilent() {
        Path made = folder.resolve("screw");
        String said = run(0, made.toString(), "--shown", "3", "--mistake", "3", "--says", "A \"long\" screw.");
        assertThat(said).contains("holds the drill");
        Drill drill = ((DrillReading.Read) new DrillReader().read(folder, made)).drill();
        assertThat(drill.mistake()).isEqualTo("A \"long\" screw.");
        assertThat(drill.expected().kind()).isEqualTo("fastener-too-long");
        assertThat(drill.expected().outcome(drill.asWritten().playedFault(new Alarms())))
                .isEqualTo(Outcome.CAUGHT);
        assertThat(drill.asWritten().playedSound(new Alarms()).turns())
                .allSatisfy(turn -> assertThat(turn.raised()).isEmpty());
        assertThat(said).doesNotContain("Exception");
    }

    @Test
    void whatIsNoMistakeIsRefused() {
        String target = folder.resolve("none").toString();
        assertThat(run(2, target, "--shown", "2", "--mistake", "2", "--says", "x"))
                .contains("No alarm stands");
        assertThat(run(2, target, "--shown", "99", "--mistake", "100", "--says", "x"))
                .contains("Entry 99 is not in the journal", "Entry 100 comes after");
        run(0, folder.resolve("twice").toString(), "--shown", "3", "--mistake", "3", "--says", "x");
        assertThat(run(2, folder.resolve("twice").toString(), "--shown", "3", "--mistake", "3", "--says", "x"))
                .contains("is there already");
    }
}
