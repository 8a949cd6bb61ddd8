package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A worn top end measured, decided on and bought for through the pages, as a new user would, on a phone's and a laptop's screen. */
class MeasureRunTest {
    private static final Path BOOK =
            Path.of("..", "examples", "tarn-98.yaml").toAbsolutePath().normalize();

    /** What the bore gauge shows, at three heights along the pin and across it: worn most at the top, across. */
    private static final List<String> WORN = List.of("50.062", "50.086", "50.042", "50.053", "50.017", "50.022");

    private static final String SELLER = "Merrow & Tull counter";

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private Visit person;

    @BeforeEach
    void start() {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
        person = new Visit(browser, shelf, bench.address());
    }

    @AfterEach
    void stop() {
        browser.close();
        bench.close();
        shelf.close();
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void aWornTopEndIsMeasuredPlannedBoughtRefusedComparedAndDated(int width, int height, String scheme) {
        browser.screen(width, height, scheme);
        startWithTheTarnInPieces();
        sayWhatIsMeasuredWith();
        measureTheSkirtWithTheVernier();
        clearItWithTheMicrometer();
        measureTheBore();
        planTheBore();
        decideOnTheParts();
        orderThreeParts();
        takeInOneShort();
        refuseThePatternPiston();
        askTheMachinistForTheBoreOfAnother();
        compareTheLargerTopEnd();
        seeTheDateMove();
        assertThat(browser.consoleErrors())
                .filteredOn(line -> !line.contains("422"))
                .isEmpty();
    }

    /** Makes the README's picture: {@code mvn -pl bench -am test -Dtest=MeasureRunTest -Dgudgeon.images=../docs/images}. */
    @Test
    @EnabledIfSystemProperty(named = "gudgeon.images", matches = ".+")
    void makesThePicture() throws IOException {
        browser.screen(1366, 768, "light");
        startWithTheTarnInPieces();
        sayWhatIsMeasuredWith();
        measureTheSkirtWithTheVernier();
        measureTheBore();
        browser.picture(Path.of(System.getProperty("gudgeon.images", "")).resolve("measure.png"), 1366, 900);
    }

    private void startWithTheTarnInPieces() {
        person.openShelf();
        browser.the("name").sendKeys("Tarn 98 no. 2043");
        browser.the("book").sendKeys(BOOK.toString());
        choose("input[name=found][value=in-pieces]");
        person.button("main", "Start").click();
        browser.waiting().until(d -> browser.driver.getCurrentUrl().contains("/builds/"));
        person.open("/measure");
        assertThat(browser.text("main")).contains("No instrument is known yet");
        person.sound("measure, empty");
    }

    private void sayWhatIsMeasuredWith() {
        instrument("vernier", "calliper", "0 to 150 mm", "0.02 mm", "0.03 mm");
        instrument("micrometer", "micrometer", "25 to 50 mm", "0.001 mm", "0.004 mm");
        instrument("larger micrometer", "micrometer", "50 to 75 mm", "0.001 mm", "0.005 mm");
        instrument("bore gauge", "bore_gauge", "35 to 60 mm", "0.001 mm", "0.004 mm");
        assertThat(browser.text("own")).isEqualTo("What you measure with");
        assertThat(browser.text("main")).contains("0 to 150 mm, reads to 0.02 mm, errs by at most 0.03 mm");
        person.sound("instruments");
    }

    private void instrument(String name, String kind, String range, String resolution, String error) {
        person.open("/measure/instruments");
        browser.the("name").sendKeys(name);
        new Select(browser.the("kind")).selectByValue(kind);
        browser.the("range").sendKeys(range);
        browser.the("resolution").sendKeys(resolution);
        browser.the("error").sendKeys(error);
        person.press("main", "Keep it");
    }

    private void measureTheSkirtWithTheVernier() {
        person.open("/measure/walk?dimension=piston-skirt");
        new Select(browser.the("instrument")).selectByValue("vernier");
        assertThat(browser.text("warning")).as("too coarse is said before").isNotEmpty();
        pad("49.94");
        person.press("#pad", "read here again");
        browser.until("last", "forty-nine point nine four millimetres");
        person.sound("walk");
        person.open("/measure?of=piston");
        assertThat(skirt())
                .contains(
                        "unproven: 49.940 ± 0.036 mm", "at least 49.92 mm", "Read the piston skirt with the micrometer")
                .doesNotContain("out of limits");
        person.sound("measure, unproven");
    }

    private void clearItWithTheMicrometer() {
        for (String reading : List.of("49.936", "49.935", "49.937")) {
            person.open("/measure/walk?dimension=piston-skirt");
            new Select(browser.the("instrument")).selectByValue("micrometer");
            assertThat(browser.text("warning")).isEmpty();
            browser.the("value").sendKeys(reading);
            person.press("#pad", "read here again");
        }
        person.open("/measure?of=piston");
        assertThat(skirt()).contains("in limits", "worn").doesNotContain("unproven");
    }

    /** What the sheet says of the piston's skirt. */
    private String skirt() {
        return browser.the("of-piston-piston-skirt")
                .findElement(By.xpath("./ancestor::li[1]"))
                .getText();
    }

    private void pad(String number) {
        number.chars()
                .mapToObj(digit -> digit == '.' ? "point" : Character.toString(digit))
                .forEach(key -> browser.driver
                        .findElement(By.cssSelector(".keys [data-key='" + key + "']"))
                        .click());
    }

    private void measureTheBore() {
        person.open("/measure/type?of=barrel");
        new Select(browser.the("with-bore")).selectByValue("bore gauge");
        for (int place = 0; place < WORN.size(); place++) {
            browser.the("reading.bore.1." + place).sendKeys(WORN.get(place));
        }
        person.press("#sheet", "Keep them");
        person.open("/measure");
        assertThat(browser.the("first").findElement(By.xpath("..")).getText())
                .contains("out of limits", "bore", "clearance of the piston in the bore");
        person.sound("measure");
    }

    private void planTheBore() {
        person.open("/measure/bore");
        assertThat(browser.text("main"))
                .contains("+0.25 mm", "+0.50 mm", "cleans up", "The maker's manual comes first")
                .contains("No new piston is in hand: a finished size can be asked for only once it is measured.");
        person.sound("bore plan");
    }

    private void decideOnTheParts() {
        person.open("/options");
        WebElement piston = browser.driver.findElement(By.id("why-piston"));
        browser.driver.executeScript("arguments[0].closest('details').open = true", piston);
        piston.sendKeys("It goes with the bore");
        person.press("details[open]", "Replace");
        assertThat(browser.text("main")).contains("It goes with the bore");
    }

    private void orderThreeParts() {
        offer("piston", "pattern piston +0.50", "pattern", "41.50 EUR");
        offer("gudgeon-circlips", "circlips", "original", "0.80 EUR");
        offer("base-gasket", "base gasket", "original", "1.20 EUR");
        person.sound("parts");
        WebElement order = browser.driver.findElement(By.xpath("//form[h3[contains(., '" + SELLER + "')]]"));
        order.findElements(By.cssSelector("input[name=line]")).forEach(this::tick);
        WebElement promised = order.findElement(By.name("promised"));
        browser.driver.executeScript(
                "arguments[0].value = arguments[1]",
                promised,
                LocalDate.now(ZoneId.systemDefault()).plusDays(5).toString());
        order.findElement(By.name("postage")).sendKeys("6.90 EUR");
        person.press(
                "form[aria-labelledby='" + order.getDomAttribute("aria-labelledby") + "']", "Ordered what is ticked");
        assertThat(browser.text("main")).contains("Order 1", "To come").contains("51.20 EUR");
    }

    private void offer(String position, String part, String origin, String price) {
        person.open("/parts");
        person.unfold("Somebody offers a part");
        new Select(browser.the("offer-position")).selectByValue(position);
        browser.the("offer-from").sendKeys(SELLER);
        browser.the("offer-part").sendKeys(part);
        new Select(browser.the("offer-origin")).selectByValue(origin);
        browser.the("offer-price").sendKeys(price);
        browser.the("offer-likely").sendKeys("5");
        person.press("details[open]", "Take the offer down");
    }

    private void takeInOneShort() {
        person.open("/parts");
        WebElement arrival = browser.driver.findElement(By.cssSelector("form[aria-label='Came in of order 1']"));
        arrival.findElements(By.cssSelector("input[name=line]")).forEach(this::tick);
        WebElement circlips = arrival.findElement(By.name("count.gudgeon-circlips"));
        circlips.clear();
        circlips.sendKeys("1");
        person.press("form[aria-label='Came in of order 1']", "Came in");
        assertThat(browser.text("main")).contains("1 of 2 came; 1 short.", "What to write to " + SELLER);
        person.open("");
        assertThat(browser.text("alarms-list")).contains("gudgeon pin circlips: 1 of 2 came; 1 short.");
        person.sound("today");
    }

    private void refuseThePatternPiston() {
        person.open("/parts/inspect?position=piston");
        person.press("main", "Enter it");
        browser.until("main", "not all compared");
        person.sound("inspect");
        found("compression height", "26.42", "vernier");
        found("depth of the exhaust valve pocket", "1.30", "vernier");
        person.press("main", "Take down what I found");
        browser.until("outcome", "does not agree");
        person.unfold("What to write to " + SELLER);
        assertThat(browser.the("letter").getDomProperty("value"))
                .contains("Compression height: wanted 26.95 mm to 27.05 mm, found 26.42 mm.")
                .contains("Depth of the exhaust valve pocket: wanted 1.95 mm to 2.05 mm, found 1.3 mm.");
        person.sound("inspect, refused");
        choose("input[name=returned]");
        browser.the("refuse-refund").sendKeys("41.50 EUR");
        person.press("main", "Refuse it");
        assertThat(browser.text("main")).contains("1 went back.");
    }

    private void askTheMachinistForTheBoreOfAnother() {
        person.open("/parts/inspect?position=piston");
        person.unfold("Enter a part");
        WebElement name = browser.the("part");
        name.clear();
        name.sendKeys("original +0.50");
        new Select(browser.the("origin")).selectByValue("original");
        person.press("main", "Enter it");
        found("piston skirt", "50.470", "larger micrometer");
        person.press("main", "Take down what I found");
        person.open("/measure/bore");
        assertThat(browser.text("main"))
                .contains("Bore and hone to 50.500 mm", "/ -0, measured at 20 °C", "leave the rest to the hone")
                .doesNotContain("No new piston is in hand");
    }

    private void found(String size, String value, String instrument) {
        WebElement line = browser.driver.findElement(By.xpath("//li[p[strong[.='" + size + "']]]"));
        line.findElement(By.cssSelector("input[type=text]")).sendKeys(value);
        new Select(line.findElement(By.tagName("select"))).selectByValue(instrument);
    }

    private void compareTheLargerTopEnd() {
        person.open("/options");
        person.press("form:has([value=tarn-125])", "Take it up");
        String page = browser.text("main");
        assertThat(page).contains("Parts of the Tarn 125", "cm³", "Does not go together", "case mouth");
        assertThat(page).as("what the law says").contains("law");
        person.sound("options");
    }

    private void seeTheDateMove() {
        LocalDate slow = endWith("2");
        LocalDate quick = endWith("12");
        assertThat(quick).as("more hours a week").isBefore(slow);
        person.sound("schedule");
    }

    /** The day by which it is as likely as not done with so many hours a week. */
    private LocalDate endWith(String hours) {
        person.open("/parts/schedule");
        WebElement field = browser.the("hours");
        field.clear();
        field.sendKeys(hours);
        person.press("main", "Set");
        assertThat(browser.text("main")).contains(hours + " h a week");
        Matcher day =
                Pattern.compile("As likely as not by\\s*(\\d{4}-\\d\\d-\\d\\d)").matcher(browser.text("main"));
        assertThat(day.find()).isTrue();
        return LocalDate.parse(day.group(1));
    }

    private void choose(String selector) {
        tick(browser.driver.findElement(By.cssSelector(selector)));
    }

    private void tick(WebElement box) {
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", box);
        if (!box.isSelected()) {
            box.click();
        }
    }
}
