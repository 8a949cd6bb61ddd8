package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The map of a joint on a phone: made larger and smaller, and gone over with the keyboard alone. */
class HoleMapTest {
    private static final String JOINT = "/fasteners/joint/cover-right-joint";

    @TempDir
    private Path folder;

    private OpenBench open;
    private Browser browser;
    private Visit person;

    @BeforeEach
    void start() throws IOException {
        open = new OpenBench(folder);
        open.shelf.start(
                "Tarn 98 no. 2043",
                Files.readString(Path.of("..", "examples", "tarn-98.yaml")),
                Found.IN_PIECES,
                "bench");
        browser = open.browser;
        browser.screen(360, 740, "light");
        person = open.person;
        person.open(JOINT);
    }

    @AfterEach
    void stop() {
        open.close();
    }

    private double width() {
        return Double.parseDouble(browser.driver
                .findElement(By.cssSelector(".hole-map svg"))
                .getCssValue("width")
                .replace("px", ""));
    }

    @Test
    void largerAndSmallerChangeTheDrawingAndNeverThePage() {
        double whole = width();
        WebElement larger = person.button("main", "Larger");
        larger.sendKeys(Keys.ENTER);
        larger.click();
        assertThat(width() / whole).isBetween(2.4, 3.1);
        larger.click();
        assertThat(browser.driver.findElement(By.cssSelector(".zoom output")).getText())
                .as("three times is as large as it gets")
                .isEqualTo("300 %");
        person.sound("map, larger");
        WebElement smaller = person.button("main", "Smaller");
        smaller.sendKeys(Keys.ENTER);
        smaller.sendKeys(Keys.SPACE);
        smaller.click();
        assertThat(width()).isEqualTo(whole);
    }

    @Test
    void theKeyboardGoesFromHoleToHoleInTheirOrderAndOpensOne() {
        person.button("main", "Smaller").sendKeys(Keys.TAB, Keys.TAB);
        WebElement first = browser.driver.switchTo().activeElement();
        first.sendKeys(Keys.TAB);
        WebElement second = browser.driver.switchTo().activeElement();
        assertThat(first.getAccessibleName()).contains("number 1");
        assertThat(second.getAccessibleName()).contains("number 2");
        String hole = String.valueOf(second.getDomAttribute("data-hole"));
        second.sendKeys(Keys.ENTER);
        browser.until("hole", "Hole " + hole);
    }
}
