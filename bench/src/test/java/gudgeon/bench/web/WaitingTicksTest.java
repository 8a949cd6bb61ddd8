package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** A tick that a server is there for and does not take now: it says why, waits on the device, and is sent again by itself. */
class WaitingTicksTest {
    private final Browser browser = new Browser();

    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        browser.close();
    }

    private static String begun(Shelf shelf) {
        return shelf.start("Tarn 98 no. 1187", Archetype.LYING_OVERHEAD_CAM_SINGLE.text(), Found.TOGETHER, "bench");
    }

    private Bench served(Shelf shelf, int port) {
        return Bench.start(shelf, new Photos(folder), List.of(), port);
    }

    @Test
    void aServerThatCannotWriteSaysWhyAndIsAskedAgain() {
        Shelf away = Shelf.open(folder);
        String build = begun(away);
        Bench before = served(away, 0);
        int port = before.address().getPort();
        Visit person = new Visit(browser, away, before.address());
        person.open("/strip");
        browser.the("remark").sendKeys("while it could not write");
        away.close();
        person.button("main", "Off, and in bag").click();
        browser.until("queue", "1 tick waits on this device and is sent again by itself.");
        assertThat(browser.text("queue")).doesNotContain("does not answer").contains("shelf.db");
        before.close();
        try (Shelf back = Shelf.open(folder);
                Bench again = served(back, port)) {
            assertThat(again.address()).hasPort(port);
            browser.waiting().until(d -> back.build(build).orElseThrow().size() == 2);
            browser.waiting().until(d -> browser.text("queue").isEmpty());
            assertThat(back.build(build).orElseThrow().entry(2).fact())
                    .isInstanceOfSatisfying(
                            Fact.TakenOff.class, off -> assertThat(off.remark()).isEqualTo("while it could not write"));
        }
    }

    @Test
    void aDeviceThatAsksTooFastIsToldSoAndAsksAgainLater() throws Exception {
        try (Elsewhere workshop =
                Elsewhere.open(folder, Clock.systemUTC(), Elsewhere.outer(), Optional.empty(), new Rates(5, 60))) {
            String build = begun(workshop.shelf);
            browser.driver.get(workshop.address() + "enter");
            browser.the("code").sendKeys(workshop.codes.issue().digits());
            browser.follow(browser.driver.findElement(By.cssSelector("main form button")));
            Visit person = new Visit(browser, workshop.shelf, workshop.address());
            person.open("/strip");
            browser.driver.executeAsyncScript("""
                    const [button, done] = arguments;
                    Promise.all(Array.from({length: 150}, () => fetch(document.querySelector('link[rel=icon]').href, {cache: 'reload'}))).then(() => {
                        button.click();
                        done();
                    });
                    """, person.button("main", "Off, and in bag"));
            browser.until("queue", "This device asks for more than Gudgeon answers.");
            assertThat(browser.text("queue")).contains("1 tick waits on this device and is sent again by itself.");
            assertThat(workshop.shelf.build(build).orElseThrow().size()).isEqualTo(1);
            browser.waiting()
                    .until(d -> workshop.shelf.build(build).orElseThrow().size() == 2);
        }
    }
}
