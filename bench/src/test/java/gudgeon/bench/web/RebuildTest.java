package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import gudgeon.rebuild.build.Build;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A rebuild taken through the pages as a new user would, on a phone's and a laptop's screen. */
class RebuildTest {
    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private Browser second;

    @BeforeEach
    void start() {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
        second = new Browser();
    }

    @AfterEach
    void stop() {
        second.close();
        browser.close();
        bench.close();
        shelf.close();
    }

    private Build build() {
        return shelf.build(shelf.builds().get(0).id()).orElseThrow();
    }

    private String address(String page) {
        return bench.address() + "builds/" + shelf.builds().get(0).id() + page;
    }

    private void open(String page) {
        browser.driver.get(address(page));
    }

    /** Presses the button with that word inside an element, and waits until the journal has grown. */
    private void press(Browser in, String selector, String word) {
        long before = build().size();
        button(in, selector, word).click();
        in.waiting()
                .withMessage(() -> "an entry after " + word + "; the page says: " + in.text("queue"))
                .until(d -> build().size() > before);
        in.waiting()
                .until(d -> in.driver.findElements(By.cssSelector("form.kept")).isEmpty());
    }

    private static WebElement button(Browser in, String selector, String word) {
        WebElement button = in.driver.findElements(By.cssSelector(selector + " button")).stream()
                .filter(each -> each.isDisplayed() && each.getText().contains(word))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button '" + word + "' on " + in.driver.getCurrentUrl()));
        in.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        return button;
    }

    private static void unfold(Browser in, String summary) {
        WebElement fold = in.driver.findElements(By.tagName("summary")).stream()
                .filter(each -> each.getText().contains(summary))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no fold '" + summary + "'"));
        in.driver.executeScript("arguments[0].parentElement.open = true", fold);
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "1366, 768"})
    void isTakenFromStripDownToAFaultUndoneAndGoesOnElsewhere(int width, int height) {
        browser.screen(width, height, "light");
        second.screen(1366, 768, "light");
        startFromTheFirstArchetype();
        stripTenParts();
        enterAPatternPiston();
        tryToCloseTheCase();
        findAFaultLateAndUndoIt();

        second.driver.get(address(""));
        open("");
        assertThat(second.text("main")).isEqualTo(browser.text("main"));
        assertThat(browser.consoleErrors())
                .filteredOn(line -> !line.contains("422"))
                .isEmpty();
    }

    private void startFromTheFirstArchetype() {
        browser.driver.get(bench.address().toString());
        browser.the("name").sendKeys("Lying single no. 12");
        button(browser, "main", "Start").click();
        browser.waiting().until(d -> browser.driver.getCurrentUrl().contains("/builds/"));
        assertThat(build().structure().positions().size()).isGreaterThan(100);
    }

    private void stripTenParts() {
        for (int i = 0; i < 8; i++) {
            open("/strip");
            browser.the("remark").sendKeys("seen " + i);
            press(browser, "main", "Off, and in bag");
        }
        for (String part : List.of("piston", "selector-drum")) {
            open("/strip?at=" + part);
            press(browser, "main", "Off, and in bag");
        }
        open("/strip?q=seen 3");
        assertThat(browser.text("main")).contains("seen 3", "bag 4");
        assertThat(build().entries().stream().filter(entry -> entry.fact() instanceof Fact.TakenOff))
                .hasSize(10);
        assertThat(build().step("close-case").stands())
                .as("the case had to come apart for the drum")
                .isFalse();
    }

    private void enterAPatternPiston() {
        open("/engine/piston");
        unfold(browser, "Enter a part");
        browser.the("part").sendKeys("pattern 1");
        new Select(browser.the("origin")).selectByValue("pattern");
        press(browser, "main", "Enter it");
        assertThat(build().partFor("piston").orElseThrow().name()).isEqualTo("pattern 1");
    }

    private void tryToCloseTheCase() {
        open("/assemble?at=close-case");
        assertThat(browser.text("main")).contains("Every gear by hand");
        long before = build().size();
        button(browser, "#done", "Begin this step").click();
        browser.until("queue", "Hold point before 'Join the crankcase halves'");
        assertThat(build().size()).isEqualTo(before);
        while (!browser.driver.findElements(By.cssSelector(".held details")).isEmpty()) {
            WebElement fold =
                    browser.driver.findElements(By.cssSelector(".held details")).get(0);
            browser.driver.executeScript("arguments[0].open = true", fold);
            fold.findElement(By.tagName("textarea")).sendKeys("Was all right before it came apart");
            press(browser, ".held details[open]", "Go on without this check");
        }
        press(browser, "#done", "Begin this step");
        for (WebElement tick : browser.driver.findElements(By.cssSelector("#done input[type=checkbox]"))) {
            browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", tick);
            tick.click();
        }
        press(browser, "#done", "Done");
        assertThat(build().step("close-case").status()).isEqualTo(StepState.Status.DONE);
    }

    private void findAFaultLateAndUndoIt() {
        open("");
        assertThat(browser.text("alarms-list")).contains("selector drum");
        unfold(browser, "A fault was found");
        new Select(browser.the("fault-at")).selectByValue("selector-forks");
        browser.the("fault-what").sendKeys("Third gear does not go in");
        press(browser, "details[open]", "Take it down");
        open("/undo?of=selector-forks");
        assertThat(browser.text("main")).contains("Join the crankcase halves", "crankcase gasket");
        press(browser, "main", "It is all off");
        assertThat(build().step("close-case").stands()).isFalse();
        assertThat(build().place("case-gasket").destroyed()).isTrue();
        assertThat(build().openFaults()).isEmpty();
    }

    @Test
    void ticksMadeWhileTheServerIsAwayAreSentLaterOnceAndInOrder() {
        browser.screen(360, 740, "dark");
        startFromTheFirstArchetype();
        open("/strip");
        int port = bench.address().getPort();
        bench.close();
        browser.the("remark").sendKeys("while away");
        button(browser, "main", "Off, and in bag").click();
        browser.until("queue", "1 tick waits");
        long before = build().size();
        bench = Bench.start(shelf, new Photos(folder), List.of(), port);
        browser.waiting().until(d -> build().size() == before + 1);
        browser.waiting().until(d -> browser.text("queue").isEmpty());
        Fact last = build().entries().get((int) before).fact();
        assertThat(last).isInstanceOf(Fact.TakenOff.class);
        assertThat(((Fact.TakenOff) last).remark()).isEqualTo("while away");
    }

    @Test
    void aSecondDeviceIsToldWhatChangedAndNothingIsOverwritten() {
        startFromTheFirstArchetype();
        open("/assemble?at=gears-by-hand");
        second.driver.get(address("/assemble?at=gears-by-hand"));
        press(browser, "main", "Passed");
        long before = build().size();
        button(second, "main", "Failed").click();
        second.until("queue", "Every gear by hand");
        assertThat(build().size()).isEqualTo(before);
        button(second, "#queue", "Send mine all the same").click();
        second.waiting().until(d -> build().size() == before + 1);
        assertThat(build().check("gears-by-hand").status().words()).isEqualTo("failed");
    }

    @ParameterizedTest
    @CsvSource({"360, 740, light", "360, 740, dark", "1366, 768, light"})
    void everyPageIsSoundForScreenReadersAndNeedsNoScrollingSideways(int width, int height, String scheme) {
        browser.screen(width, height, scheme);
        startFromTheFirstArchetype();
        for (String part : List.of("piston", "selector-drum")) {
            open("/strip?at=" + part);
            press(browser, "main", "Off, and in bag");
        }
        for (String page : List.of(
                "",
                "/strip",
                "/measure",
                "/measure/walk",
                "/measure/instruments",
                "/measure/blank",
                "/measure/type",
                "/assemble",
                "/assemble?at=close-case",
                "/assemble?at=crank-end-float",
                "/assemble?at=trial-fit",
                "/undo?of=piston",
                "/engine",
                "/options",
                "/engine/piston",
                "/book",
                "/journal")) {
            open(page);
            sound(page);
        }
        browser.driver.get(bench.address().toString());
        sound("shelf");
        browser.driver.get(bench.address() + "marks");
        sound("marks");
    }

    private void sound(String page) {
        Results results = new AxeBuilder().analyze(browser.driver);
        assertThat(results.getViolations())
                .as("%s: %s", page, results.getViolations())
                .isEmpty();
        assertThat(browser.driver.executeScript(
                        "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                .as("%s needs no scrolling sideways", page)
                .isEqualTo(true);
    }
}
