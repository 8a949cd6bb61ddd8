package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;

/** A laptop and a phone in two browsers: the whole way in and out again. */
class DeviceRunTest {
    private static final Path SCREENS = Path.of("target", "screens");

    @TempDir
    private Path folder;

    @Test
    void aPhoneIsLetInWritesIsPutOutAndIsRefused() throws Exception {
        try (Elsewhere workshop = Elsewhere.open(folder, Clock.systemUTC());
                Browser laptop = new Browser();
                Browser phone = new Browser()) {
            String build = workshop.shelf.start(
                    "Tarn 98 no. 1187",
                    Files.readString(Path.of("..", "examples", "tarn-98.yaml")),
                    Found.TOGETHER,
                    "bench");
            laptop.screen(1366, 768, "light");
            phone.screen(360, 740, "light");
            Visit atLaptop = new Visit(laptop, workshop.shelf, workshop.bench.address());
            Visit atPhone = new Visit(phone, workshop.shelf, workshop.address());

            phone.driver.get(workshop.address() + "builds/" + build + "/journal");
            assertThat(phone.driver.getTitle()).contains("Enter the code");
            atPhone.sound("the page that asks for the code");
            phone.picture(SCREENS.resolve("enter-360.png"), 360, 740);

            laptop.driver.get(workshop.bench.address().toString());
            laptop.follow(laptop.driver.findElement(By.linkText("Devices")));
            atLaptop.sound("devices without a code");
            laptop.follow(atLaptop.button("main", "Show a code"));
            String code =
                    laptop.driver.findElement(By.cssSelector(".step-name")).getText();
            atLaptop.sound("devices with a code");
            laptop.picture(SCREENS.resolve("devices-1366.png"), 1366, 900);
            laptop.screen(360, 740, "dark");
            atLaptop.sound("devices on a narrow screen, dark");
            laptop.picture(SCREENS.resolve("devices-360.png"), 360, 1200);

            phone.the("code").sendKeys("00000000");
            enter(phone, "Ann's phone");
            assertThat(phone.driver.findElement(By.cssSelector(".refusal")).getText())
                    .contains("not the code");
            atPhone.sound("a wrong code");
            phone.the("code").clear();
            phone.the("code").sendKeys(code);
            enter(phone, "Ann's phone");
            assertThat(phone.driver.getCurrentUrl()).as("where it wanted to go").endsWith("/journal");

            atPhone.open("");
            atPhone.unfold("note");
            phone.driver.findElement(By.cssSelector("form [name=text]")).sendKeys("Circlip found under the bench.");
            atPhone.press("details[open]", "");
            assertThat(workshop.shelf.build(build).orElseThrow().entry(2).device())
                    .isEqualTo("Ann's phone");

            laptop.driver.get(workshop.bench.address() + "devices");
            assertThat(laptop.driver.findElement(By.tagName("main")).getText()).contains("Ann's phone");
            laptop.picture(SCREENS.resolve("devices-let-in-360.png"), 360, 1200);
            atLaptop.sound("devices with one let in");
            laptop.follow(atLaptop.button("main", "Put out"));

            phone.driver.get(workshop.address() + "builds/" + build);
            assertThat(phone.driver.getTitle()).contains("Enter the code");
            assertThat(phone.consoleErrors().stream().filter(error -> error.contains("Content Security Policy")))
                    .isEmpty();
        }
    }

    private static void enter(Browser phone, String name) {
        phone.the("name").clear();
        phone.the("name").sendKeys(name);
        phone.follow(phone.driver.findElement(By.cssSelector("main form button")));
    }
}
