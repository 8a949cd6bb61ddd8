package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.find.Ranking;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.CheckPassed;
import gudgeon.rebuild.journal.Fact.Compared;
import gudgeon.rebuild.journal.Fact.Fitted;
import gudgeon.rebuild.journal.Fact.Measured;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Proving.RanIn;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Way;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/**
 * The Tarn 98 with the pattern piston in it goes tight: the cause is found by two readings and a test, the right piston goes in, the
 * cam is read, the engine is signed, run in and handed on, all through the pages.
 */
class ProveRunTest {
    private static final Path BOOK =
            Path.of("..", "examples", "tarn-98.yaml").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private Browser browser;
    private Visit person;
    private Hands hands;
    private String id = "";

    @BeforeEach
    void start() throws IOException {
        shelf = Shelf.open(folder);
        id = shelf.start("Tarn 98 no. 1187", Files.readString(BOOK), Found.TOGETHER, "bench");
        tell(
                new TakenOff("piston", 1, "", "", ""),
                new PartEntered("pattern", "piston", Origin.PATTERN, 1, "looks right"),
                new Measured("piston", "pattern", Map.of("pockets.exhaust.depth", "0.20 ± 0.01")),
                new Compared("piston", "pattern", List.of("skirt diameter"), true, ""),
                new Fitted("piston", "pattern", 1, Way.AS_MARKED, ""));
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        browser = new Browser();
        person = new Visit(browser, shelf, bench.address());
        hands = new Hands(person);
    }

    @AfterEach
    void stop() {
        browser.close();
        bench.close();
        shelf.close();
    }

    private void tell(Fact... facts) {
        List<Entry> entries = new ArrayList<>();
        long seen = shelf.build(id).orElseThrow().size();
        for (Fact fact : facts) {
            entries.add(new Entry(
                    UUID.randomUUID().toString(), Instant.parse("2026-11-01T18:00:00Z"), "bench", seen++, fact));
        }
        Outcome outcome = shelf.append(id, entries);
        assertThat(outcome.sentences()).isEmpty();
    }

    private TrialFit fit() throws Exception {
        AsMeasured parts = AsMeasured.of(person.build()).orElseThrow();
        return TrialFit.withoutCures(parts.geometry(), parts.choice(), LengthUnit.MM);
    }

    private Ranking ranking() {
        Hunt hunt = Hunt.of(person.build(), "tight-spot-1").orElseThrow();
        return Ranking.of(person.build(), hunt);
    }

    @ParameterizedTest
    @MethodSource("gudgeon.bench.web.Screens#ofARun")
    void theFaultIsFoundTheEngineProvedAndHandedOn(int width, int height, String scheme) throws Exception {
        browser.screen(width, height, scheme);
        TrialFit tight = fit();
        begin();
        feel("forward", tight.tightForwardDeg().orElseThrow() + 2);
        feel("backward", tight.tightBackwardDeg().orElseThrow() - 2);
        assertThat(ranking().ranked()).filteredOn(one -> one.chance() > 0.05).hasSizeGreaterThan(1);
        person.sound("search");
        String next = ranking().best().orElseThrow().test().id();
        answerNext();
        assertThat(ranking().ranked().get(0).suspect().id()).isEqualTo("exhaust-on-crown");
        assertThat(ranking().next()).noneMatch(one -> one.test().id().equals(next));
        lookAtTheUndo();
        theRightPistonGoesIn();
        readTheCam();
        signTheStart();
        runIt();
        fetchTheRecord();
        assertThat(browser.consoleErrors())
                .filteredOn(line -> !line.contains("422"))
                .isEmpty();
    }

    private void begin() {
        person.open("/fault");
        person.sound("find the fault");
        person.press("main", "It goes tight as it is turned");
        browser.until("main", "Where it goes tight");
        person.sound("search, empty");
    }

    private void feel(String turning, double deg) {
        WebElement way = browser.driver.findElement(By.cssSelector("input[name=turning][value=" + turning + "]"));
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", way);
        way.click();
        browser.the("angle").sendKeys(Long.toString(Math.round(deg)));
        new Select(browser.the("doubt")).selectByValue("15");
        new Select(browser.the("stroke")).selectByValue("unknown");
        person.press("main", "It goes tight here");
    }

    /** The answer that the true cause brings about. */
    private void answerNext() {
        Ranking before = ranking();
        var test = before.best().orElseThrow().test();
        var truth = before.ranked().stream()
                .map(one -> one.suspect())
                .filter(one -> one.id().equals("exhaust-on-crown"))
                .findFirst()
                .orElseThrow();
        var answer = test.answers().stream()
                .reduce((one, other) -> test.chance(one, truth) >= test.chance(other, truth) ? one : other)
                .orElseThrow();
        WebElement button = browser.driver.findElement(
                By.cssSelector("section[aria-labelledby=next] button[value='" + answer.id() + "']"));
        browser.driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        long size = person.build().size();
        button.click();
        browser.waiting().until(d -> person.build().size() > size);
        person.open("/fault/tight-spot-1");
        assertThat(browser.text("main")).contains("What was seen", "Felt: 2 angles");
    }

    private void lookAtTheUndo() {
        person.open("/fault/tight-spot-1");
        person.press(".suspects", "Look at this one");
        assertThat(browser.text("main")).contains("to be looked at");
        WebElement way = browser.driver.findElement(By.cssSelector(".suspects a[href*='/undo?of=']"));
        String link = String.valueOf(way.getDomProperty("href"));
        browser.driver.get(link);
        assertThat(browser.text("main")).contains("Comes off, in this order");
        person.open("/fault/tight-spot-1");
        new Select(browser.the("suspect"))
                .selectByValue(ranking().ranked().get(0).suspect().id());
        browser.the("what").sendKeys("a bright mark in the exhaust pocket");
        person.press("main", "End the search");
        assertThat(browser.text("main")).contains("How it ended", "a bright mark in the exhaust pocket");
        person.sound("search, over");
    }

    private void theRightPistonGoesIn() throws Exception {
        person.open("/undo?of=piston");
        browser.the("why").sendKeys("the exhaust pocket is too shallow");
        person.press("main", "It is all off");
        assertThat(person.build().step("fit-piston").stands()).isFalse();
        person.open("/engine/piston");
        person.unfold("Enter a part");
        browser.the("part").sendKeys("original");
        new Select(browser.the("origin")).selectByValue("original");
        person.press("main", "Enter it");
        person.unfold("Measure original");
        WebElement pocket = browser.the("size-pockets.exhaust.depth");
        pocket.clear();
        pocket.sendKeys("2.00 ± 0.01");
        person.press("main", "Take the sizes down");
        hands.bringNewParts();
        assertThat(hands.workUntil("first-start")).contains("fit-piston", "piston-compared", "trial-fit");
        assertThat(fit().tightForwardDeg()).isEmpty();
    }

    private void readTheCam() {
        person.open("/timing");
        person.sound("timing, empty");
        browser.the("forward").sendKeys("325.5");
        browser.the("backward").sendKeys("35.5");
        person.press("main", "Take both down");
        person.open("/timing");
        // the inlet's centre is 104 degrees after overlap; at 0.97 mm less its clearance it is open 240 degrees
        lobe("inlet", "16 btdc", "44 abdc");
        assertThat(browser.text("main")).contains("Inlet valve", "What it rests on");
        browser.the("value").sendKeys("25 btdc");
        person.press("section[aria-labelledby=spark]", "Take it down");
        assertThat(browser.text("main")).contains("Checks that read by it", "points open");
        person.sound("timing");
        int told = checksTold();
        person.press("section[aria-labelledby=checks]", "Use it as the reading");
        assertThat(checksTold()).isEqualTo(told + 1);
        person.open("/timing");
        long before = person.build().size();
        browser.the("opening").sendKeys("soon");
        browser.the("closing").sendKeys("400 abdc");
        person.button("section[aria-labelledby=cam]", "Take it down").click();
        browser.waiting()
                .withMessage(() -> "a refusal; the page says: " + browser.text("queue"))
                .until(d -> !browser.text("queue").isEmpty());
        assertThat(person.build().size()).as("nothing was taken down").isEqualTo(before);
    }

    private int checksTold() {
        return person.build().told(CheckPassed.class).size()
                + person.build().told(Fact.CheckFailed.class).size();
    }

    private void lobe(String valve, String opening, String closing) {
        new Select(browser.the("valve")).selectByVisibleText(valve);
        browser.the("opening").sendKeys(opening);
        browser.the("closing").sendKeys(closing);
        person.press("section[aria-labelledby=cam]", "Take it down");
    }

    private void signTheStart() {
        person.open("/start");
        browser.the("by").sendKeys("Ida Quell");
        browser.the("reason").sendKeys("shown to a friend on the bench, without petrol");
        person.press("main", "Sign all the same");
        StartSigned signed = person.build().told(StartSigned.class).get(0).fact();
        assertThat(signed.open()).isNotEmpty();
        assertThat(signed.reason()).contains("without petrol");
    }

    private void runIt() {
        hands.fit("first-start");
        person.open("/start/run-in");
        person.sound("running in");
        browser.the("minutes").sendKeys("10");
        browser.the("found").sendKeys("no leaks, plug light brown");
        person.press("main", "Take the run down");
        RanIn ran = person.build().told(RanIn.class).get(0).fact();
        assertThat(ran.minutes()).isEqualTo(10);
    }

    private void fetchTheRecord() throws Exception {
        person.open("/record");
        person.sound("record");
        person.button("main", "Make the record").click();
        browser.waiting().until(d -> browser.text("main").contains("Fetch the"));
        person.sound("record, ready");
        String link = String.valueOf(browser.driver
                .findElement(By.cssSelector("a[href$='/record/file']"))
                .getDomProperty("href"));
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(link)).build(), HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).isEqualTo(200);
        try (PDDocument document = Loader.loadPDF(answer.body())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains(
                            "Build record: Tarn 98 no. 1187",
                            "bright mark in the exhaust pocket",
                            "without petrol",
                            "plug light brown")
                    .contains("gudgeon pin circlips")
                    .doesNotContain("Ida Quell");
        }
    }
}
