package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.InstrumentKind;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The pad on a phone: pressed, asked about slips, and kept while the server is away. */
class MeasurePadTest {
    private static final String WALK = "/measure/walk?dimension=bore&piece=1&at=middle,+along+the+pin";
    private static final int GLOVE_PX = 64;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private String id;

    @BeforeEach
    void start() throws IOException {
        shelf = Shelf.open(folder);
        try (InputStream book = Objects.requireNonNull(Bench.class.getResourceAsStream("/demo/tarn-98.yaml"))) {
            String text = new String(book.readAllBytes(), StandardCharsets.UTF_8);
            id = shelf.start("Tarn 98 no. 2043", text, Found.IN_PIECES, "bench");
        }
        tell(
                "gauge",
                new InstrumentKept(
                        "bore gauge",
                        InstrumentKind.BORE_GAUGE,
                        "35 to 60 mm",
                        "0.001 mm",
                        "0.004 mm",
                        Optional.empty(),
                        ""));
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
    }

    @AfterEach
    void stop() {
        browser.close();
        bench.close();
        shelf.close();
    }

    private void tell(String key, Fact fact) {
        shelf.append(id, List.of(new Entry("pad-" + key, Instant.EPOCH, "bench", 1, fact)));
    }

    private Build build() {
        return shelf.build(id).orElseThrow();
    }

    private List<String> readings() {
        return build().readings("bore", "").stream()
                .map(told -> told.fact().value())
                .toList();
    }

    private void open(String page) {
        browser.driver.get(bench.address() + "builds/" + id + page);
    }

    private WebElement key(String key) {
        return browser.driver.findElement(By.cssSelector(".keys [data-key='" + key + "']"));
    }

    private void press(String number) {
        number.chars()
                .mapToObj(digit -> digit == '.' ? "point" : Character.toString(digit))
                .forEach(digit -> key(digit).click());
    }

    private void keep() {
        browser.driver.findElement(By.cssSelector(".keys .keep")).click();
    }

    private void untilRead(String... values) {
        browser.waiting()
                .withMessage(() -> "readings " + readings() + "; the page says: " + browser.text("queue"))
                .until(d -> readings().equals(List.of(values)));
    }

    @Test
    void aGlovedThumbReadsPlaceAfterPlaceWithoutScrolling() {
        browser.screen(360, 740, "dark");
        open(WALK);
        for (WebElement key : browser.driver.findElements(By.cssSelector(".keys button"))) {
            assertThat(key.getSize().getWidth()).as(key.getText()).isGreaterThanOrEqualTo(GLOVE_PX);
            assertThat(key.getSize().getHeight()).as(key.getText()).isGreaterThanOrEqualTo(GLOVE_PX);
        }
        assertThat(browser.driver.executeScript(
                        "return document.querySelector('.keys .keep').getBoundingClientRect().bottom"
                                + " <= document.querySelector('.tabs').getBoundingClientRect().top"))
                .as("the whole pad is in sight")
                .isEqualTo(true);
        press("50.0129");
        key("back").click();
        keep();
        untilRead("50.012 mm");
        browser.until("last", "fifty point zero one two millimetres");
        browser.until("what", "bore");
        assertThat(browser.text("main")).contains("middle, across the pin");
        assertThat(browser.consoleErrors()).isEmpty();
    }

    @Test
    void aSlipIsAskedInThePageAndTheAnswerIsKept() {
        browser.screen(360, 740, "light");
        open(WALK);
        press("1.9698");
        keep();
        browser.until("queue", "1.9698 in is meant");
        assertThat(readings()).isEmpty();
        browser.driver.findElements(By.cssSelector("#queue button")).get(0).click();
        untilRead("1.9698 in");
    }

    @Test
    void readAgainLeavesThePadAsItWas() {
        open(WALK);
        press("1.9698");
        keep();
        browser.until("queue", "Read it again");
        browser.driver.findElements(By.cssSelector("#queue button")).get(2).click();
        assertThat(browser.text("queue")).isEmpty();
        browser.the("value").clear();
        key("unit").click();
        press("1.9698");
        keep();
        untilRead("1.9698 in");
    }

    @Test
    void aReadingIsKeptOnTheDeviceWhileTheServerIsAway() {
        open(WALK);
        int port = bench.address().getPort();
        bench.close();
        press("50.012");
        keep();
        browser.until("queue", "waits on this device");
        bench = Bench.start(shelf, new Photos(folder), List.of(), port);
        untilRead("50.012 mm");
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void theSheetWithItsWorkingsIsSoundForScreenReaders(int width, int height, String scheme) {
        int n = 0;
        for (String at :
                build().structure().dimension("bore").orElseThrow().places().all()) {
            String value = n % 2 == 0 ? "50.061 mm" : "50.058 mm";
            tell("r" + n, new ReadingTaken("bore", "", 1, at, value, "bore gauge", OptionalDouble.empty(), ""));
            n++;
        }
        browser.screen(width, height, scheme);
        for (String page :
                List.of("/measure", "/measure?of=barrel", WALK, "/measure/instruments", "/measure/type?of=barrel")) {
            open(page);
            browser.driver.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
            List<String> violations = browser.violations();
            assertThat(violations).as("%s: %s", page, violations).isEmpty();
            assertThat(browser.driver.executeScript(
                            "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                    .as("%s needs no scrolling sideways", page)
                    .isEqualTo(true);
        }
    }
}
