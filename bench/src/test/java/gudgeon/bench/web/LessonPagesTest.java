package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Next time, told by forms without a script. */
class LessonPagesTest {
    @TempDir
    Path folder;

    @Test
    void theBookIsGivenBackAsItWasUntilSomethingIsAccepted() throws Exception {
        String book = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        try (ServedBuild served = new ServedBuild(folder, book, Found.TOGETHER)) {
            assertThat(served.page("/lessons")).contains("nothing yet that its engine book does not say");
            served.tell(
                    "type", "hole-measured", "joint", "head-joint", "hole", "head-nut-top-left", "stack", "31.2 mm");
            assertThat(served.page("/lessons")).contains("stack.head-joint.head-nut-top-left", "comes: </span>");
            assertThat(served.page("/lessons/book.yaml")).isEqualTo(book);
            served.tell("type", "lesson-decided", "lesson", "stack.head-joint.head-nut-top-left", "accepted", "yes");
            assertThat(served.page("/lessons/book.yaml"))
                    .isEqualTo(
                            book.replace(
                                    "{id: head-nut-top-left, at: [0, 64], thread: M7, class: \"8.8\", kind: stud, into: aluminium, through: true}",
                                    "{id: head-nut-top-left, at: [0, 64], thread: M7, class: \"8.8\", kind: stud, into: aluminium, through: true, stack: 31.2 mm}"));
        }
    }

    @Test
    void aBuildWithoutANameIsNotBegun() throws Exception {
        String book = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        try (ServedBuild served = new ServedBuild(folder, book, Found.TOGETHER)) {
            assertThat(served.post("/lessons/next", "name", "").statusCode()).isEqualTo(422);
        }
    }
}
