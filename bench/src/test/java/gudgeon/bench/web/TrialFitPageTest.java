package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The Trial fit page's main job, in a browser, on a phone's and a laptop's screen. */
class TrialFitPageTest {
    private static final Path EXAMPLE = Path.of("../examples/tarn-98.yaml");
    private static final String DEPTH = "size-pistons-pattern-pockets-exhaust-depth";

    @TempDir
    private static Path folder;

    private static Shelf shelf;
    private static Bench bench;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        try (InputStream in = Files.newInputStream(EXAMPLE)) {
            BookReading.Read read = (BookReading.Read) new EngineBookReader().read(in);
            shelf = Shelf.open(folder);
            bench = Bench.start(
                    shelf,
                    new Photos(folder),
                    List.of(new NamedBook("tarn-98", read.book().geometry().orElseThrow())),
                    0);
        }
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
        shelf.close();
    }

    private static void open(String query) {
        browser.driver.get(bench.address() + "books/tarn-98/fit" + query);
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "1366, 768"})
    void refusesThePatternPistonAndLetsTheOriginalPass(int width, int height) {
        browser.screen(width, height, "light");
        open("?piston=pattern");
        assertThat(browser.text("verdict")).contains("it touches", "exhaust");
        assertThat(browser.text("cures")).contains("works");
        assertThat(sideways()).as("the page needs no scrolling sideways").isTrue();

        new Select(browser.the("piston")).selectByValue("original");
        browser.until("verdict-sentence", "everything clears");
        assertThat(browser.text("say")).as("told to a screen reader").contains("everything clears");
        assertThat(browser.driver.getCurrentUrl()).contains("piston=original");
        assertThat(browser.text("cures")).contains("Nothing needs a cure");
        assertThat(browser.consoleErrors()).isEmpty();
        assertThat(browser.loaded())
                .isNotEmpty()
                .allMatch(address -> address.startsWith(bench.address().toString()));
    }

    private static boolean sideways() {
        return Boolean.TRUE.equals(browser.driver.executeScript(
                "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "1366, 768"})
    void saysWhatIsWrongWithASizeAndLosesNothing(int width, int height) {
        browser.screen(width, height, "light");
        open("?piston=pattern&teeth=0&size.valves.exhaust.margin=1.25");
        browser.driver.executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
        WebElement depth = browser.the(DEPTH);
        String booked = String.valueOf(depth.getDomAttribute("data-booked"));
        type(depth, "three and a bit");
        browser.until("fault-" + DEPTH, "is not");
        assertThat(browser.the(DEPTH).getDomProperty("value")).isEqualTo("three and a bit");
        assertThat(browser.the("size-valves-exhaust-margin").getDomProperty("value"))
                .isEqualTo("1.25");
        assertThat(browser.text("verdict")).contains("One entry could not be used");

        type(browser.the(DEPTH), "0.25 in");
        browser.waiting().until(d -> browser.text("fault-" + DEPTH).isEmpty());
        browser.until("mark-" + DEPTH, "changed, book " + booked);
        assertThat(browser.text("verdict")).doesNotContain("The exhaust valve and the crown touch");

        browser.the("mark-" + DEPTH).findElement(By.tagName("button")).click();
        browser.until("verdict-sentence", "it touches");
        assertThat(browser.the(DEPTH).getDomProperty("value")).isEqualTo(booked);
        assertThat(browser.text("mark-" + DEPTH)).isEmpty();
    }

    private static void type(WebElement field, String text) {
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
    }

    @Test
    void saysWhenSizesContradictEachOtherAndRecovers() {
        browser.screen(1366, 768, "light");
        open("?piston=original&size.crank.rod=20");
        assertThat(browser.text("verdict")).contains("can’t be tried", "Put a changed size back");
        browser.driver.findElement(By.cssSelector("button[name=back]")).click();
        browser.until("verdict-sentence", "everything clears");
        assertThat(browser.text("section-note")).contains("exhaust valve");
    }

    @Test
    void turnsTheEngineByKeyboard() {
        browser.screen(1366, 768, "light");
        open("?piston=original&at=300");
        String section = section();
        browser.the("turn").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.PAGE_UP);
        assertThat(browser.text("angle")).isEqualTo("312.0°");
        assertThat(browser.driver
                        .findElement(By.cssSelector("#plot-exhaust .cursor"))
                        .getDomAttribute("x1"))
                .isEqualTo("312");
        assertThat(section()).as("the section has moved").isNotEqualTo(section);
        browser.driver.findElement(By.cssSelector("button[data-by='0.1']")).click();
        assertThat(browser.text("angle")).isEqualTo("312.1°");
        assertThat(browser.the("turn").getDomAttribute("aria-valuetext")).contains("312.1 degrees", "exhaust lift");
    }

    private static String section() {
        return String.valueOf(browser.the("section").getDomProperty("innerHTML"));
    }

    @Test
    void showsInchesAndKeepsWhatWasTypedInMillimetres() {
        browser.screen(1366, 768, "light");
        open("?piston=pattern&size.valves.exhaust.margin=1.25");
        browser.the("units-inch").click();
        browser.until("gaps", "0.0394 in");
        assertThat(browser.text("gaps")).doesNotContain(" mm");
        assertThat(browser.text("verdict-sentence")).contains(" in ").doesNotContain(" mm");
        assertThat(browser.the("size-valves-exhaust-margin").getDomProperty("value"))
                .isEqualTo("1.25 mm");
    }

    @Test
    void triesThePistonTurnedByHalfATurn() {
        browser.screen(360, 740, "light");
        open("?piston=original");
        browser.the("turned").click();
        browser.until("verdict-sentence", "turned by half a turn");
        assertThat(browser.text("verdict-sentence")).doesNotContain("everything clears");
        assertThat(browser.text("verdict-sentence")).contains("touch");
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "1366, 768"})
    void comparesTwoPistons(int width, int height) {
        browser.screen(width, height, "light");
        open("?piston=original");
        new Select(browser.the("other")).selectByValue("pattern");
        browser.until("compared", "The piston 'pattern' differs from 'original' in");
        assertThat(browser.text("compare")).contains("exhaust pocket depth", "different");
        assertThat(sideways()).as("the page needs no scrolling sideways").isTrue();
        assertThat(browser.violations()).isEmpty();
    }

    @Test
    void settlesTheDoubtByDrawing() {
        browser.screen(1366, 768, "light");
        open("?piston=pattern");
        browser.driver.findElement(By.cssSelector("button[name=settle]")).click();
        browser.until("settled", "draws");
        assertThat(browser.text("settled")).contains("bore gap of the exhaust");
    }

    @Test
    void showsItInTheRound() {
        browser.screen(1366, 768, "light");
        open("?piston=pattern");
        browser.driver.executeScript("document.getElementById('solid').scrollIntoView()");
        browser.waiting()
                .until(d -> !d.findElements(By.cssSelector("#solid canvas")).isEmpty());
        assertThat(browser.text("solid-note")).contains("exhaust valve red, metal in metal");
        browser.the("solid").sendKeys(Keys.ARROW_LEFT);
        assertThat(browser.consoleErrors()).isEmpty();
        assertThat(browser.loaded()).anyMatch(address -> address.endsWith("three.module.min.js"));
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofAPage")
    void isAccessible(int width, int height, String scheme) {
        browser.screen(width, height, scheme);
        for (String query : List.of("?piston=pattern&teeth=x&size.valves.exhaust.margin=1.25", "?piston=original")) {
            open(query);
            List<String> violations = browser.violations();
            assertThat(violations).as(() -> violations.toString()).isEmpty();
        }
    }

    @Test
    void hasThumbSizedTargets() {
        browser.screen(360, 740, "light");
        open("?piston=pattern");
        Object small = browser.driver.executeScript("return [...document.querySelectorAll('main button, main select,"
                + " main input[type=text], main input[type=range], main summary, main label.tick, .switch label')]"
                + ".filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5)"
                + ".map(e => e.outerHTML.slice(0, 80))");
        assertThat((List<?>) small).isEmpty();
    }

    /** Makes the README's pictures: {@code mvn -pl bench -am test -Dtest=TrialFitPageTest -Dgudgeon.images=../docs/images}. */
    @Test
    @EnabledIfSystemProperty(named = "gudgeon.images", matches = ".+")
    void makesThePictures() throws IOException {
        Path folder = Path.of(System.getProperty("gudgeon.images", ""));
        browser.screen(1366, 768, "light");
        open("?piston=pattern");
        browser.picture(folder.resolve("trial-fit.png"), 1366, 900);
        browser.screen(360, 740, "dark");
        open("?piston=pattern");
        browser.picture(folder.resolve("trial-fit-phone.png"), 360, 1200);
    }
}
