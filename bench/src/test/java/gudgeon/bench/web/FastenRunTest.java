package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.bench.print.fasten.MeasuredBack;
import gudgeon.bench.print.fasten.MeasuredBack.Ring;
import gudgeon.bench.print.fasten.MeasuredBack.Sheet;
import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Point;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Tightness;
import gudgeon.rebuild.journal.Fastening.JointMapped;
import gudgeon.rebuild.journal.Fastening.Tightened;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/**
 * A crankcase cover with eleven screws of five lengths in one heap, closed through the pages as a new user would, on a phone's and a
 * laptop's screen: one screw is missing, one is too long for its blind hole.
 */
class FastenRunTest {
    private static final Path BOOK =
            Path.of("..", "examples", "tarn-98.yaml").toAbsolutePath().normalize();

    private static final String COVER = "cover-right-joint";
    private static final String JOINT = "/fasteners/joint/" + COVER;
    private static final String STEP = "/assemble?at=fit-cover-right";

    /** A finger on a photo of 1600 points across finds a point within this, in mm: it is about half a millimetre a point of a phone. */
    private static final double TOUCH_MM = 1.0;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private Visit person;

    @BeforeEach
    void start() {
        browser = new Browser();
        open(0);
    }

    private void open(int port) {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), port);
        person = new Visit(browser, shelf, bench.address());
    }

    private void close() {
        bench.close();
        shelf.close();
    }

    @AfterEach
    void stop() {
        browser.close();
        close();
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void aCoverIsPhotographedMappedAllottedTightenedAndItsCardPrinted(int width, int height, String scheme)
            throws Exception {
        browser.screen(width, height, scheme);
        startWithTheTarnInPieces();
        countTheHeap();
        photographAndMap();
        readWhichGoesWhere();
        sayWhichWrench();
        beginTheStep();
        int passes = tightness().passes().size();
        assertThat(passes).isGreaterThan(1);
        pass(1, 11);
        pass(2, 3);
        comeBackAnotherDay();
        pass(2, 8);
        for (int pass = 3; pass <= passes; pass++) {
            pass(pass, 11);
        }
        seeItIsTight();
        measureTheCard();
        assertThat(browser.consoleErrors())
                .filteredOn(line -> !line.contains("422"))
                .isEmpty();
    }

    private Joint book() {
        return person.build().structure().joint(COVER).orElseThrow();
    }

    private Tightness tightness() {
        return Tightness.of(JointNow.of(person.build(), COVER).orElseThrow());
    }

    private void startWithTheTarnInPieces() {
        person.openShelf();
        browser.the("name").sendKeys("Tarn 98 no. 2043");
        browser.the("book").sendKeys(BOOK.toString());
        WebElement inPieces = browser.driver.findElement(By.cssSelector("input[name=found][value=in-pieces]"));
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", inPieces);
        inPieces.click();
        person.button("main", "Start").click();
        browser.waiting().until(d -> browser.driver.getCurrentUrl().contains("/builds/"));
    }

    private void countTheHeap() {
        person.open("/fasteners/heap");
        person.sound("heap, empty");
        kind("short", "30 mm", 3);
        kind("middle", "35 mm", 2);
        kind("long", "40 mm", 2);
        kind("dowel screw", "45 mm", 2);
        kind("longest", "55 mm", 1);
        kind("stray", "50 mm", 1);
        assertThat(browser.text("main")).contains("stray");
        person.sound("heap");
    }

    private void kind(String name, String length, int count) {
        person.open("/fasteners/heap");
        browser.the("kind").sendKeys(name);
        browser.the("thread").sendKeys("M6");
        browser.the("length").sendKeys(length);
        WebElement field = browser.the("count");
        field.clear();
        field.sendKeys(Integer.toString(count));
        browser.the("strength").sendKeys("8.8");
        person.press("main", "Into the list");
    }

    private void photographAndMap() throws IOException {
        Path photo = folder.resolve("cover.png");
        CoverPhoto.take(
                photo,
                book().outline(),
                book().holes().stream().map(hole -> hole.at().orElseThrow()).toList());
        person.open(JOINT + "/map");
        browser.the("photo").sendKeys(photo.toString());
        person.press("main", "Keep the photo");
        browser.driver
                .findElement(By.cssSelector(".photos a[href*='/map?photo=']"))
                .click();
        browser.waiting()
                .until(d ->
                        !d.findElements(By.cssSelector("[data-photo].scripted")).isEmpty());
        person.sound("marking");
        new Select(browser.the("sheet")).selectByVisibleText("A4 on its side");
        WebElement larger = person.button("[data-marking]", "Larger");
        larger.click();
        larger.click();
        focus("corner-top-left");
        CoverPhoto.SHEET.forEach(this::touch);
        book().holes().forEach(hole -> touch(hole.at().orElseThrow()));
        focus("marked-outline");
        book().outline().forEach(this::touch);
        browser.driver.executeScript("document.querySelector('#apart-one').closest('details').open = true");
        new Select(browser.the("apart-one")).selectByVisibleText("cover-right-front-dowel");
        new Select(browser.the("apart-other")).selectByVisibleText("cover-right-rear-dowel");
        browser.the("apart").sendKeys("151.1 mm");
        person.press("[data-marking]", "Make the map");
        assertThat(browser.text("main")).contains("residual", "by the photo and 151.1 mm measured");
        JointMapped mapped = person.build().told(JointMapped.class).get(0).fact();
        assertThat(mapped.outline()).hasSameSizeAs(book().outline());
        book().holes().forEach(hole -> {
            Point truth = hole.at().orElseThrow();
            Point found = Objects.requireNonNull(mapped.holes().get(hole.id()));
            assertThat(found.x()).as(hole.id()).isCloseTo(truth.x(), within(TOUCH_MM));
            assertThat(found.y()).as(hole.id()).isCloseTo(truth.y(), within(TOUCH_MM));
        });
        person.sound("joint");
    }

    private void focus(String field) {
        browser.driver.executeScript("arguments[0].focus()", browser.the(field));
    }

    /** Touches a point of the photo, after it was moved into sight. */
    private void touch(Point point) {
        Point2D seen = CoverPhoto.seen(point);
        Object where = browser.driver.executeScript("""
                const svg = document.querySelector('[data-photo] svg'), map = svg.parentElement;
                const at = () => new DOMPoint(arguments[0], arguments[1]).matrixTransform(svg.getScreenCTM());
                map.scrollIntoView({block: 'center', behavior: 'instant'});
                const box = map.getBoundingClientRect(), far = at();
                map.scrollBy({left: far.x - box.left - box.width / 2, top: far.y - box.top - box.height / 2, behavior: 'instant'});
                return [at().x, at().y];
                """, seen.getX(), seen.getY());
        List<?> place = (List<?>) Objects.requireNonNull(where);
        new Actions(browser.driver)
                .moveToLocation(rounded(place.get(0)), rounded(place.get(1)))
                .click()
                .perform();
    }

    private static int rounded(Object number) {
        return (int) Math.round(((Number) number).doubleValue());
    }

    private void readWhichGoesWhere() {
        person.open(JOINT);
        String page = browser.text("main");
        assertThat(page)
                .contains("Nothing in the heap is right for")
                .contains("Keep stray out of")
                .contains("cover-right-top")
                .contains("it bottoms before it clamps")
                .contains("Buy 1 of M6, 35 mm long")
                .contains("cover-right-strainer takes longest, and nothing else")
                .contains("1 of stray");
        person.sound("joint with heap");
        person.open("/fasteners");
        person.sound("fasteners");
        person.open("/fasteners/heap?change=middle");
        WebElement field = browser.the("count");
        field.clear();
        field.sendKeys("3");
        person.press("main", "Into the list");
        person.open(JOINT);
        assertThat(browser.text("main")).doesNotContain("Nothing in the heap is right for");
    }

    private void sayWhichWrench() {
        person.open("/fasteners/wrenches");
        browser.the("wrench").sendKeys("small click");
        browser.the("range").sendKeys("2 to 20 N.m");
        browser.the("step").sendKeys("0.1 N.m");
        person.press("main", "Keep it");
        assertThat(browser.text("main")).contains("can be trusted from 4 N·m to 20 N·m");
        person.sound("wrenches");
        person.open(JOINT);
        new Select(browser.the("wrench")).selectByValue("small click");
        browser.the("setting").sendKeys("9 N.m");
        person.press("details[open]", "Take this wrench");
    }

    /** The engine was found in pieces, so the hold points before the cover are knowingly passed over. */
    private void beginTheStep() {
        person.open(STEP);
        while (!browser.driver.findElements(By.cssSelector(".held li")).isEmpty()) {
            person.unfold("Go on without it");
            browser.driver
                    .findElement(By.cssSelector(".held details[open] textarea"))
                    .sendKeys("a cover alone, to try");
            person.press(".held details[open]", "Go on without this check");
            person.open(STEP);
        }
        person.press("#done", "Begin this step");
        person.sound("assemble with a map");
        WebElement touch = browser.driver.findElement(By.cssSelector("[data-touch]"));
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", touch);
        if (!touch.isSelected()) {
            touch.click();
        }
    }

    /** Tightens so many holes in a pass, each by touching it on the map. */
    private void pass(int pass, int holes) {
        person.open(STEP);
        for (int i = 0; i < holes; i++) {
            Tightness.Next next = tightness().next().orElseThrow();
            assertThat(next.pass().number()).isEqualTo(pass);
            long before = person.build().size();
            WebElement hole = browser.driver.findElement(By.cssSelector("[data-hole='" + next.hole() + "'] circle"));
            browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", hole);
            hole.click();
            browser.waiting()
                    .withMessage(() -> next.hole() + " ticked; the page says: " + browser.text("queue"))
                    .until(d -> person.build().size() > before);
            browser.waiting()
                    .until(d -> browser.text("main").contains(tightness().sentence()));
        }
        List<Tightened> told = person.build().told(Tightened.class).stream()
                .map(one -> one.fact())
                .filter(one -> one.pass() == pass)
                .toList();
        assertThat(told).extracting(Tightened::wrench).containsOnly("small click");
    }

    private void comeBackAnotherDay() {
        browser.driver.get("about:blank");
        int port = bench.address().getPort();
        close();
        open(port);
        person.open("");
        assertThat(browser.text("main")).contains("Half tightened", "3 of 11 holes have had pass 2");
        person.sound("today, half tightened");
        person.open(STEP);
        assertThat(browser.text("main")).contains("3 of 11 holes have had pass 2");
        assertThat(browser.driver.findElement(By.cssSelector("[data-touch]")).isSelected())
                .as("the person's way of ticking is kept")
                .isTrue();
    }

    private void seeItIsTight() {
        assertThat(tightness().isTight()).isTrue();
        person.open(JOINT);
        assertThat(browser.text("main")).contains("All passes are done.");
        person.sound("joint, tight");
    }

    private void measureTheCard() throws Exception {
        String link = String.valueOf(browser.driver
                .findElement(By.cssSelector("a[href*='/print/card/" + COVER + "']"))
                .getDomProperty("href"));
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(link)).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        List<Sheet> sheets = MeasuredBack.sheets(answer.body());
        assertThat(sheets).as("the card, and the list of its screws").hasSize(2);
        assertThat(sheets.get(0).strokes())
                .anySatisfy(stroke -> assertThat(stroke.length()).isCloseTo(100, within(0.05)));
        Map<String, Point> mapped =
                person.build().told(JointMapped.class).get(0).fact().holes();
        List<Ring> rings = sheets.get(0).rings();
        assertThat(rings).hasSizeGreaterThanOrEqualTo(mapped.size());
        Point one = Objects.requireNonNull(mapped.get("cover-right-front-dowel"));
        Point other = Objects.requireNonNull(mapped.get("cover-right-rear-dowel"));
        double apart = Math.hypot(one.x() - other.x(), one.y() - other.y());
        assertThat(rings)
                .anySatisfy(ring -> assertThat(rings)
                        .anySatisfy(far -> assertThat(Math.hypot(ring.x() - far.x(), ring.y() - far.y()))
                                .isCloseTo(apart, within(0.05))));
        assertThat(sheets.get(0).text()).contains("Tarn 98 no. 2043", "100 mm");
    }
}
