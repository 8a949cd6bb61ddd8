package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.web.page.Mark;
import gudgeon.rebuild.journal.Found;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Eyes that want it larger or tell no colours, a device that is slow, and paper. */
class EveryoneTest {
    private static final List<String> PAGES = List.of(
            "",
            "/strip",
            "/measure",
            "/measure/walk",
            "/options",
            "/parts",
            "/fasteners",
            "/assemble",
            "/assemble?at=fit-piston",
            "/fault",
            "/timing",
            "/start",
            "/start/run-in",
            "/undo?of=piston",
            "/fit",
            "/engine",
            "/engine/piston",
            "/journal",
            "/prints",
            "/record");

    @TempDir
    private Path folder;

    private OpenBench open;
    private Browser browser;
    private Visit person;

    @BeforeEach
    void start() throws IOException {
        open = new OpenBench(folder);
        open.shelf.start(
                "Tarn 98 no. 1187",
                Files.readString(Path.of("..", "examples", "tarn-98.yaml")),
                Found.TOGETHER,
                "bench");
        browser = open.browser;
        person = open.person;
    }

    @AfterEach
    void stop() {
        open.close();
    }

    /**
     * WCAG 2.2: 1.4.4 wants 200 % without loss, 1.4.10 a width of 320 px without scrolling sideways. A zoom of 200 % halves the width of
     * 1366 px; letters alone are made twice as large as a person sets them in the browser. No page shows a mark without shape and word.
     */
    @Test
    void everyPageCanBeMadeTwiceAsLargeAndReadWithoutColours() {
        long marks = 0;
        for (String page : PAGES) {
            browser.screen(683, 700, "light");
            person.open(page);
            assertThat(browser.overhang()).as("%s at 683 px", page).isEmpty();
            browser.screen(320, 700, "light");
            assertThat(browser.overhang()).as("%s at 320 px", page).isEmpty();
            browser.screen(1366, 768, "light");
            browser.driver.executeScript("document.documentElement.style.fontSize = '200%'");
            assertThat(browser.overhang()).as("%s in large letters", page).isEmpty();
            Object bare = browser.driver.executeScript("""
                    return [...document.querySelectorAll('.state')]
                        .filter(e => e.textContent.trim() === '' || e.querySelector('svg.shape path') === null).length;
                    """);
            assertThat(bare).as("marks of %s", page).isEqualTo(0L);
            marks += browser.driver.findElements(By.cssSelector(".state")).size();
        }
        assertThat(marks).isPositive();
    }

    @Test
    void noTwoMarksShareAShapeOrAWord() {
        assertThat(Arrays.stream(Mark.values()).map(Mark::path)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(Mark.values()).map(Mark::word)).doesNotHaveDuplicates();
    }

    /** A touch is answered by the page itself, before the server has spoken: here it can't speak for two seconds. */
    @Test
    void aTouchIsAnsweredBeforeTheServerSpeaks() {
        browser.screen(360, 740, "light");
        person.open("/strip");
        browser.driver.executeCdpCommand("Emulation.setCPUThrottlingRate", Map.of("rate", 6));
        browser.driver.executeCdpCommand("Network.enable", Map.of());
        browser.driver.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", false, "latency", 2000, "downloadThroughput", -1, "uploadThroughput", -1));
        browser.driver.executeScript("""
                const button = [...document.querySelectorAll('main button')].find(b => b.textContent.includes('Off, and in bag'));
                const took = what => sessionStorage.setItem(what, sessionStorage.getItem(what) ?? Date.now());
                button.addEventListener('click', () => took('1 touched'));
                new MutationObserver(() => took('2 shown')).observe(document.getElementById('queue'), {childList: true});
                const ask = window.fetch;
                window.fetch = (...what) => ask(...what).then(reply => { took('3 replied'); return reply; });
                """);
        person.button("main", "Off, and in bag").click();
        browser.waiting().until(d -> times().size() == 3);
        assertThat(times()).isSorted();
    }

    /** When it was touched, when that was seen, when the server replied, in ms. */
    private List<Long> times() {
        Object kept = browser.driver.executeScript(
                "return Object.keys(sessionStorage).sort().map(k => sessionStorage.getItem(k)).join(' ')");
        return Arrays.stream(String.valueOf(kept).split(" "))
                .filter(time -> !time.isEmpty())
                .map(Long::valueOf)
                .toList();
    }

    @Test
    void paperShowsTheContentAndNothingToPress() {
        browser.screen(1366, 768, "light");
        browser.driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        for (String page : List.of("", "/assemble?at=fit-piston", "/undo?of=piston", "/journal", "/measure/blank")) {
            person.open(page);
            assertThat(browser.driver.findElements(By.cssSelector("nav.tabs, .light, .skip, main button")))
                    .as(page)
                    .noneMatch(WebElement::isDisplayed);
            assertThat(browser.the("main").isDisplayed()).isTrue();
        }
    }
}
