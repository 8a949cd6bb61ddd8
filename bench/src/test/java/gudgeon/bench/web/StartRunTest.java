package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.alarm.Alarms;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.start.StartList;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.io.FileHandler;

/** The first start by thumb and by mouse: ticked, signed with a reason, and run in. */
class StartRunTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void tickedSignedAndRun(int width, int height, String scheme) throws Exception {
        Browser browser = new Browser();
        try (Shelf shelf = Shelf.open(folder)) {
            String book = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
            shelf.start("Tarn 98 no. 1187", book, Found.TOGETHER, "bench");
            Bench bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
            try {
                Visit person = new Visit(browser, shelf, bench.address());
                browser.screen(width, height, scheme);
                person.open("/start");
                person.sound("first start");
                int before = holding(person);
                person.press("form:has(input[value=extinguisher])", "Good");
                assertThat(holding(person)).isEqualTo(before - 1);
                browser.the("by").sendKeys("the fitter");
                browser.the("reason").sendKeys("Only to hear it.");
                person.press("#signature", "Sign all the same");
                person.sound("first start, signed");
                person.open("/start/run-in");
                person.sound("running in");
                FileHandler.copy(
                        browser.driver.getScreenshotAs(OutputType.FILE),
                        Path.of("target", "run-in-" + width + ".png").toFile());
                person.open("");
                person.sound("today");
                person.open("/start");
                FileHandler.copy(
                        browser.driver.getScreenshotAs(OutputType.FILE),
                        Path.of("target", "start-" + width + ".png").toFile());
            } finally {
                bench.close();
            }
        } finally {
            browser.close();
        }
    }

    private static int holding(Visit person) {
        return StartList.of(person.build(), Alarms.of(person.build())).holding().size();
    }
}
