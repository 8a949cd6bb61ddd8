package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Handing.LessonDecided;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a build taught, at the command line. */
class LessonsCommandTest {
    private static final Path BOOK = Path.of("../examples/tarn-98.yaml");

    @TempDir
    Path folder;

    private Path journal() throws Exception {
        return Files.writeString(folder.resolve("journal.jsonl"), """
                {"type": "time-spent", "version": 1, "on": "fit-studs", "minutes": 35}
                {"type": "step-done", "version": 1, "step": "fit-studs"}
                {"type": "hole-measured", "version": 1, "joint": "head-joint", "hole": "head-nut-top-left", "stack": "31.2 mm"}
                {"type": "measured", "version": 1, "position": "piston", "sizes": {"land": "49.58"}}
                """);
    }

    @Test
    void theDifferenceIsPrintedAndOnlyWhatIsAcceptedIsWritten() throws Exception {
        Path improved = folder.resolve("improved.yaml");
        Terminal said = run(
                "lessons",
                "--book",
                BOOK,
                "--journal",
                journal(),
                "--write",
                improved,
                "--accept",
                "minutes.fit-studs");
        assertThat(said.err()).isEmpty();
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .startsWith("2 lessons: 1 accepted, 0 left out, 1 not decided.")
                .contains("minutes.fit-studs (goes in)", "  -     minutes: 20", "  +     minutes: 35")
                .contains("stack.head-joint.head-nut-top-left (not decided)")
                .contains("Not offered:", "Sizes of the piston that came off");
        List<String> before = Files.readAllLines(BOOK);
        List<String> after = Files.readAllLines(improved);
        assertThat(after).hasSameSizeAs(before);
        int changed = 0;
        for (int i = 0; i < before.size(); i++) {
            changed += before.get(i).equals(after.get(i)) ? 0 : 1;
        }
        assertThat(changed).isEqualTo(1);
        assertThat(run("check", improved).code()).isEqualTo(run("check", BOOK).code());
        assertThat(run("lessons", "--book", BOOK, "--write", improved).err()).contains("is there already");
    }

    @Test
    void asJson() throws Exception {
        JsonNode json = new ObjectMapper()
                .readTree(run("lessons", "--book", BOOK, "--journal", journal(), "--json")
                        .out());
        assertThat(json.at("/lessons").findValuesAsText("id"))
                .containsExactly("stack.head-joint.head-nut-top-left", "minutes.fit-studs");
        assertThat(json.at("/lessons/1/accepted").isNull()).isTrue();
        assertThat(json.at("/lessons/1/entries/0").asInt()).isEqualTo(1);
        assertThat(json.at("/lessons/1/changes/0/put/0").asText()).isEqualTo("    minutes: 35");
        assertThat(json.at("/withheld/0/why").asText()).contains("that part's own");
    }

    @Test
    void whatIsAcceptedOfABuildOnTheShelfIsKeptInItsJournal() throws Exception {
        Path data = folder.resolve("data");
        String id;
        try (Shelf shelf = Shelf.open(data)) {
            id = shelf.start("Tarn 98", Files.readString(BOOK), Found.TOGETHER, "bench");
            shelf.append(
                    id,
                    List.of(
                            entry("a", new Fact.TimeSpent("fit-studs", 35)),
                            entry("b", new Fact.StepDone("fit-studs", ""))));
        }
        assertThat(run("lessons", id, "--data", data, "--accept", "nothing").err())
                .contains("no lesson nothing");
        assertThat(run("lessons", id, "--data", data).code()).isEqualTo(1);
        assertThat(run("lessons", id, "--data", data, "--accept", "minutes.fit-studs")
                        .code())
                .isZero();
        try (Shelf shelf = Shelf.open(data)) {
            assertThat(shelf.build(id).orElseThrow().told(LessonDecided.class)).hasSize(1);
        }
        assertThat(run("lessons", id, "--data", data).out()).contains("1 lesson: 1 accepted");
    }

    private static Entry entry(String key, Fact fact) {
        return new Entry(key, Instant.parse("2026-03-01T10:00:00Z"), "bench", 1, fact);
    }
}
