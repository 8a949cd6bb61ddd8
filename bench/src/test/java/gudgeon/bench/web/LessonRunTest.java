package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fastening.HoleMeasured;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.lesson.NextTime;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.io.FileHandler;

/** Next time by thumb and by mouse: one lesson accepted, one left out, and the next build begun with the improved book. */
class LessonRunTest {
    private static final List<Fact> TAUGHT = List.of(
            new Fact.TimeSpent("fit-studs", 35),
            new Fact.StepDone("fit-studs", ""),
            new HoleMeasured("head-joint", "head-nut-top-left", "", "31.2 mm", "", ""),
            new JointMapped("head-joint", List.of(), Map.of("head-nut-top-left", new Point(0, 63.4)), "from a photo"),
            new Fact.Measured("piston", "", Map.of("land", "49.58")),
            new Fact.FaultFound("head-gasket", "oil hole blinded"),
            new Fact.Undone("fit-head", "", List.of("head-gasket")));

    @TempDir
    Path folder;

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void acceptedLeftOutAndHandedOn(int width, int height, String scheme) throws Exception {
        Browser browser = new Browser();
        try (Shelf shelf = Shelf.open(folder)) {
            String book = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
            String id = shelf.start("Tarn 98 no. 1187", book, Found.TOGETHER, "bench");
            assertThat(shelf.append(id, entries()).sentences()).isEmpty();
            Bench bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
            try {
                Visit person = new Visit(browser, shelf, bench.address());
                browser.screen(width, height, scheme);
                person.open("/lessons");
                person.sound("next time");
                assertThat(NextTime.of(person.build()).open()).hasSize(4);
                person.press("[id='minutes.fit-studs']", "Accept");
                person.press("[id='stack.head-joint.head-nut-top-left']", "Leave out");
                person.sound("next time, decided");
                FileHandler.copy(
                        browser.driver.getScreenshotAs(OutputType.FILE),
                        Path.of("target", "lessons-" + width + ".png").toFile());
                assertThat(NextTime.of(person.build()).sentence())
                        .isEqualTo("4 lessons: 1 accepted, 1 left out, 2 not decided.");
                browser.the("name").sendKeys("Tarn 98 no. 1203");
                browser.driver.executeScript("document.getElementById('book').scrollIntoView()");
                FileHandler.copy(
                        browser.driver.getScreenshotAs(OutputType.FILE),
                        Path.of("target", "lessons-begin-" + width + ".png").toFile());
                person.button("#begin", "Start").click();
                browser.waiting().until(d -> shelf.builds().size() == 2);
                begun(shelf, id);
            } finally {
                bench.close();
            }
        } finally {
            browser.close();
        }
    }

    private static void begun(Shelf shelf, String id) {
        String next = shelf.builds().stream()
                .map(build -> build.id())
                .filter(each -> !each.equals(id))
                .findFirst()
                .orElseThrow();
        Build begun = shelf.build(next).orElseThrow();
        assertThat(begun.structure().step("fit-studs").orElseThrow().minutes()).isEqualTo(35);
        assertThat(shelf.build(id)
                        .orElseThrow()
                        .structure()
                        .step("fit-studs")
                        .orElseThrow()
                        .minutes())
                .isEqualTo(20);
        assertThat(begun.structure()
                        .joint("head-joint")
                        .flatMap(joint -> joint.hole("head-nut-top-left"))
                        .orElseThrow()
                        .stack())
                .isEmpty();
    }

    private static List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : TAUGHT) {
            entries.add(new Entry("e" + entries.size(), Instant.parse("2026-03-01T10:00:00Z"), "bench", 1, fact));
        }
        return entries;
    }
}
