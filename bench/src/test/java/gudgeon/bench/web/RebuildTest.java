package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.journal.Fact;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A rebuild taken through the pages as a new user would, on a phone's and a laptop's screen. */
class RebuildTest {
    private static final int LAPTOP = 1366;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private Browser second;
    private Visit person;
    private Visit other;

    @BeforeEach
    void start() {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
        second = new Browser();
        person = new Visit(browser, shelf, bench.address());
        other = new Visit(second, shelf, bench.address());
    }

    @AfterEach
    void stop() {
        second.close();
        browser.close();
        bench.close();
        shelf.close();
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void isTakenFromStripDownToAFaultUndoneAndGoesOnElsewhere(int width, int height, String scheme) {
        browser.screen(width, height, scheme);
        second.screen(1366, 768, "light");
        startFromTheFirstArchetype();
        stripTenParts();
        enterAPatternPiston();
        tryToCloseTheCase();
        findAFaultLateAndUndoIt();

        other.open("");
        person.open("");
        assertThat(second.text("main")).isEqualTo(browser.text("main"));
        assertThat(browser.consoleErrors())
                .filteredOn(line -> !line.contains("422"))
                .isEmpty();
    }

    private void startFromTheFirstArchetype() {
        person.openShelf();
        browser.the("name").sendKeys("Lying single no. 12");
        person.button("main", "Start").click();
        browser.waiting().until(d -> browser.driver.getCurrentUrl().contains("/builds/"));
        assertThat(person.build().structure().positions().size()).isGreaterThan(100);
    }

    private void stripTenParts() {
        for (int i = 0; i < 8; i++) {
            person.open("/strip");
            browser.the("remark").sendKeys("seen " + i);
            person.press("main", "Off, and in bag");
        }
        for (String part : List.of("piston", "selector-drum")) {
            person.open("/strip?at=" + part);
            person.press("main", "Off, and in bag");
        }
        person.open("/strip?q=seen 3");
        assertThat(browser.text("main")).contains("seen 3", "bag 4");
        assertThat(person.build().entries().stream().filter(entry -> entry.fact() instanceof Fact.TakenOff))
                .hasSize(10);
        assertThat(person.build().step("close-case").stands())
                .as("the case had to come apart for the drum")
                .isFalse();
    }

    private void enterAPatternPiston() {
        person.open("/engine/piston");
        person.unfold("Enter a part");
        browser.the("part").sendKeys("pattern 1");
        new Select(browser.the("origin")).selectByValue("pattern");
        person.press("main", "Enter it");
        assertThat(person.build().partFor("piston").orElseThrow().name()).isEqualTo("pattern 1");
    }

    private void tryToCloseTheCase() {
        person.open("/assemble?at=close-case");
        assertThat(browser.text("main")).contains("Every gear by hand");
        long before = person.build().size();
        person.button("#done", "Begin this step").click();
        browser.until("queue", "Hold point before 'Join the crankcase halves'");
        assertThat(person.build().size()).isEqualTo(before);
        while (!browser.driver.findElements(By.cssSelector(".held details")).isEmpty()) {
            WebElement fold =
                    browser.driver.findElements(By.cssSelector(".held details")).get(0);
            browser.driver.executeScript("arguments[0].open = true", fold);
            fold.findElement(By.tagName("textarea")).sendKeys("Was all right before it came apart");
            person.press(".held details[open]", "Go on without this check");
        }
        person.press("#done", "Begin this step");
        for (WebElement tick : browser.driver.findElements(By.cssSelector("#done input[type=checkbox]"))) {
            browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", tick);
            tick.click();
        }
        person.press("#done", "Done");
        assertThat(person.build().step("close-case").status()).isEqualTo(StepState.Status.DONE);
    }

    private void findAFaultLateAndUndoIt() {
        person.open("");
        assertThat(browser.text("alarms-list")).contains("selector drum");
        person.unfold("A fault was found");
        new Select(browser.the("fault-at")).selectByValue("selector-forks");
        browser.the("fault-what").sendKeys("Third gear does not go in");
        person.press("details[open]", "Take it down");
        person.open("/undo?of=selector-forks");
        assertThat(browser.text("main")).contains("Join the crankcase halves", "crankcase gasket");
        person.press("main", "It is all off");
        assertThat(person.build().step("close-case").stands()).isFalse();
        assertThat(person.build().place("case-gasket").destroyed()).isTrue();
        assertThat(person.build().openFaults()).isEmpty();
    }

    @Test
    void ticksMadeWhileTheServerIsAwayAreSentLaterOnceAndInOrder() {
        browser.screen(360, 740, "dark");
        startFromTheFirstArchetype();
        person.open("/strip");
        int port = bench.address().getPort();
        bench.close();
        browser.the("remark").sendKeys("while away");
        person.button("main", "Off, and in bag").click();
        browser.until("queue", "1 tick waits");
        long before = person.build().size();
        bench = Bench.start(shelf, new Photos(folder), List.of(), port);
        browser.waiting().until(d -> person.build().size() == before + 1);
        browser.waiting().until(d -> browser.text("queue").isEmpty());
        Fact last = person.build().entries().get((int) before).fact();
        assertThat(last).isInstanceOf(Fact.TakenOff.class);
        assertThat(((Fact.TakenOff) last).remark()).isEqualTo("while away");
    }

    @Test
    void aSecondDeviceIsToldWhatChangedAndNothingIsOverwritten() {
        startFromTheFirstArchetype();
        person.open("/assemble?at=gears-by-hand");
        other.open("/assemble?at=gears-by-hand");
        person.press("main", "Passed");
        long before = person.build().size();
        other.button("main", "Failed").click();
        second.until("queue", "Every gear by hand");
        assertThat(person.build().size()).isEqualTo(before);
        other.button("#queue", "Send mine all the same").click();
        second.waiting().until(d -> person.build().size() == before + 1);
        assertThat(person.build().check("gears-by-hand").status().words()).isEqualTo("failed");
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofAPage")
    void everyPageIsSoundForScreenReadersAndNeedsNoScrollingSideways(int width, int height, String scheme) {
        browser.screen(width, height, scheme);
        startFromTheFirstArchetype();
        for (String part : List.of("piston", "selector-drum")) {
            person.open("/strip?at=" + part);
            person.press("main", "Off, and in bag");
        }
        // each page on one of a build's two screens; the long run looks at all on all
        int turn = width < LAPTOP ? 0 : 1;
        for (String page : List.of(
                "",
                "/strip",
                "/measure",
                "/measure/walk",
                "/measure/instruments",
                "/measure/blank",
                "/measure/type",
                "/fasteners",
                "/fasteners/heap",
                "/fasteners/wrenches",
                "/fasteners/joint/case-joint",
                "/fasteners/joint/case-joint/map",
                "/assemble",
                "/assemble?at=close-case",
                "/assemble?at=crank-end-float",
                "/assemble?at=trial-fit",
                "/parts",
                "/parts/inspect?position=piston",
                "/parts/schedule",
                "/undo?of=piston",
                "/engine",
                "/options",
                "/engine/piston",
                "/book",
                "/prints",
                "/bag?of=1",
                "/bag?of=99",
                "/journal")) {
            if (LongRun.of(turn++ % 2, 0) == 0) {
                person.open(page);
                person.sound(page);
            }
        }
        person.openShelf();
        person.sound("shelf");
        browser.driver.get(bench.address() + "marks");
        person.sound("marks");
    }
}
