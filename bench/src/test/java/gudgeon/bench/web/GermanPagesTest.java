package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.rebuild.journal.Found;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** The bench read in German: chosen on a page, asked for by a browser, on paper, and by a person who works with it. */
class GermanPagesTest {
    private static final List<String> PAGES = List.of(
            "/fit",
            "",
            "/strip",
            "/measure",
            "/measure/walk",
            "/measure/instruments",
            "/options",
            "/parts",
            "/parts/schedule",
            "/fasteners",
            "/assemble",
            "/assemble?at=fit-piston",
            "/fault",
            "/timing",
            "/start",
            "/start/run-in",
            "/undo?of=piston",
            "/engine",
            "/engine/piston",
            "/journal",
            "/prints",
            "/record",
            "/fit");

    @TempDir
    private Path folder;

    private OpenBench open;

    @BeforeEach
    void start() throws IOException {
        open = new OpenBench(folder);
        open.shelf.start(
                "Tarn 98 no. 1187",
                Files.readString(Path.of("..", "examples", "tarn-98.yaml")),
                Found.TOGETHER,
                "bench");
    }

    @AfterEach
    void stop() {
        open.close();
    }

    private void chooseGerman() {
        open.person.openShelf();
        open.browser.follow(open.person.button(".foot", "Deutsch"));
        assertThat(open.browser.driver.findElement(By.tagName("html")).getDomAttribute("lang"))
                .isEqualTo("de");
    }

    @Test
    void everyPageFitsTheScreenInGermanWhoseWordsAreLonger() throws IOException {
        open.browser.screen(360, 740, "light");
        chooseGerman();
        int number = 0;
        for (String page : PAGES) {
            open.person.open(page);
            assertThat(open.browser.overhang())
                    .as("%s needs no scrolling sideways at 360 px", page)
                    .isEmpty();
            // the rules for screen readers are held on each page in English; here on those that words of another length
            // may upset
            if (number++ % LongRun.of(6, 1) == 0) {
                assertThat(open.browser.violations()).as(page).isEmpty();
            }
            if (LongRun.of(0, 1) == 1 || page.equals("") || page.equals("/assemble") || page.equals("/measure")) {
                open.browser.picture(
                        Path.of("target", "screens", "german" + page.replaceAll("\\W", "-") + ".png"), 360, 1400);
            }
        }
        assertThat(open.browser.consoleErrors()).isEmpty();
    }

    @Test
    void aPartIsTakenOffAndABadReadingRefusedInGerman() {
        open.browser.screen(360, 740, "light");
        chooseGerman();
        open.person.open("/strip");
        assertThat(open.browser.text("main")).contains("Kommt als nächstes ab", "Beutel oder Schale");
        open.browser.the("remark").sendKeys("Kommt so: Passed, 0.5 mm Spiel.");
        open.person.press("main", "Ab, und im Beutel");
        open.person.open("/journal");
        assertThat(open.browser.text("main"))
                .as("what the person wrote stays as it was written")
                .contains("Abgebaut:", "Kommt so: Passed, 0.5 mm Spiel.");
        open.person.open("/timing");
        open.browser.the("opening").sendKeys("bald");
        open.browser.the("closing").sendKeys("400 abdc");
        open.person.button("section[aria-labelledby=cam]", "Aufschreiben").click();
        open.browser
                .waiting()
                .withMessage(() -> "a refusal; the page says: " + open.browser.text("queue"))
                .until(d -> open.browser.text("queue").contains("bald"));
        assertThat(open.browser.text("queue")).doesNotContain("Write", " is ");
    }

    @Test
    void aBrowserIsAnsweredInTheLanguageItAsksForAndAChoiceComesFirst() throws Exception {
        assertThat(get("", "Accept-Language", "de-AT, en;q=0.5")).contains("lang=\"de\"", "Regal");
        assertThat(get("", "Accept-Language", "fr")).contains("lang=\"en\"", "Shelf");
        assertThat(get("", "Accept-Language", "de", "Cookie", "language=en")).contains("lang=\"en\"");
        assertThat(get("nowhere", "Cookie", "language=de")).contains("Eine solche Seite gibt es nicht");
        assertThat(get("handbook/strip", "Cookie", "language=de")).contains("Bevor ein Schlüssel angesetzt wird");
        assertThat(get("", "Cookie", "language=../../x")).contains("lang=\"en\"");
    }

    @Test
    void theTorqueSheetComesOutInGerman() throws Exception {
        String id = open.shelf.builds().get(0).id();
        HttpResponse<byte[]> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address("builds/" + id + "/print/torque"))
                                .header("Cookie", "language=de")
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        try (PDDocument sheet = Loader.loadPDF(answer.body())) {
            assertThat(new PDFTextStripper().getText(sheet))
                    .contains("Momentenblatt", "Das Handbuch des Herstellers geht vor.")
                    .doesNotContain("The maker");
        }
    }

    private String get(String path, String... headers) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address(path)).headers(headers).build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8))
                .body();
    }

    private URI address(String path) {
        return open.person.address().resolve(path);
    }
}
