package gudgeon.bench.web;

import com.deque.html.axecore.providers.EmbeddedResourceAxeProvider;
import gudgeon.bench.LongRun;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.logging.Level;
import javax.naming.OperationNotSupportedException;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Debian's Chromium without a window, as the page tests use it. */
final class Browser implements AutoCloseable {
    private static final String CHROMIUM = "/usr/bin/chromium";
    private static final String DRIVER = "/usr/bin/chromedriver";

    private static final String RULES = rules();

    private static final List<String> MORE_ROWS =
            List.of("li:nth-child(n+6)", "tr:nth-child(n+6)", "option:nth-child(n+6)");

    /** Browsers without an owner: starting one takes seconds, so they are handed on from test to test and end with the process. */
    private static final Deque<ChromeDriver> IDLE = new ConcurrentLinkedDeque<>();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> IDLE.forEach(ChromeDriver::quit)));
    }

    final ChromeDriver driver;

    Browser() {
        ChromeDriver idle = IDLE.poll();
        driver = idle == null ? started() : idle;
    }

    private static ChromeDriver started() {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--enable-unsafe-swiftshader",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--hide-scrollbars",
                "--user-data-dir=" + newFolder());
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(DRIVER))
                .build();
        return new ChromeDriver(service, options);
    }

    private static String rules() {
        try {
            return new EmbeddedResourceAxeProvider().getScript();
        } catch (IOException | OperationNotSupportedException e) {
            throw new IllegalStateException("the script with the rules for screen readers is not there", e);
        }
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("gudgeon-browser");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes on the size of a screen and a colour scheme: "light" or "dark". */
    void screen(int width, int height, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 500));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    /** The element with that id. */
    WebElement the(String id) {
        return driver.findElement(By.id(id));
    }

    /** Text of the element with that id as it now stands in the page, empty where there is none. */
    String text(String id) {
        Object text = driver.executeScript("return document.getElementById(arguments[0])?.textContent ?? ''", id);
        return String.valueOf(text).strip();
    }

    /** Waits until the text of the element with that id holds a text. */
    void until(String id, String text) {
        waiting()
                .withMessage(() -> "'" + text + "' in #" + id + ", which says: " + text(id))
                .until(d -> text(id).contains(text));
    }

    /** Presses what leads to another page or to this one anew, and waits until the page that was open is gone. */
    void follow(WebElement pressed) {
        WebElement page = driver.findElement(By.tagName("html"));
        pressed.click();
        waiting().until(ExpectedConditions.stalenessOf(page));
    }

    WebDriverWait waiting() {
        return new WebDriverWait(driver, Duration.ofSeconds(30), Duration.ofMillis(50));
    }

    /**
     * Where the open page breaks a rule for screen readers, or tells colours apart too little. Of lists and tables every build looks at
     * the first rows, which the others are made like; the long run looks at all. Rules are run in the page itself: no page has a frame,
     * and the library's way through frames costs three times as much.
     */
    List<String> violations() {
        driver.executeScript(RULES);
        Object found = driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                const context = {include: [['html']], exclude: arguments[0].map(selector => [selector])};
                const told = rule => `${rule.id}, ${rule.help}: ${rule.nodes.map(node => node.html).join(' | ')}`;
                axe.run(context, {resultTypes: ['violations']})
                    .then(results => done(results.violations.map(told)), fault => done([`rules could not be run: ${fault}`]));
                """, LongRun.of(1, 0) == 1 ? MORE_ROWS : List.of());
        return found instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of("no answer");
    }

    /** What stands out beyond the page's width, by its tag and class; empty where nothing does. */
    String overhang() {
        return String.valueOf(driver.executeScript("""
                const wide = document.documentElement.clientWidth;
                if (document.documentElement.scrollWidth <= wide) return '';
                const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
                const out = [];
                for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
                    const range = document.createRange();
                    range.selectNodeContents(text);
                    if (range.getBoundingClientRect().right > wide + 1 && !text.parentElement.closest('.unseen')) out.push(text.parentElement.tagName + ' ' + text.data.trim());
                }
                return out.slice(-6).join(' | ') || 'something without words';
                """));
    }

    /** Errors that the page wrote to the console. */
    List<String> consoleErrors() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Addresses of all that the page has loaded. */
    List<String> loaded() {
        Object names =
                driver.executeScript("return performance.getEntries().map(e => e.name).filter(n => n.includes(':'))");
        return names instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of();
    }

    /** Keeps a picture of the page's first so many pixels. */
    void picture(Path file, int width, int height) throws IOException {
        Map<String, Object> shot = driver.executeCdpCommand(
                "Page.captureScreenshot",
                Map.of(
                        "captureBeyondViewport",
                        true,
                        "clip",
                        Map.of("x", 0, "y", 0, "width", width, "height", height, "scale", 1)));
        Files.createDirectories(file.getParent());
        Files.write(file, Base64.getDecoder().decode(String.valueOf(shot.get("data"))));
    }

    /** Leaves nothing behind for the next owner: no cookie, nothing kept by a page, and a window as new. */
    @Override
    public void close() {
        driver.executeCdpCommand("Storage.clearDataForOrigin", Map.of("origin", origin(), "storageTypes", "all"));
        driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
        driver.executeCdpCommand("Network.clearBrowserCache", Map.of());
        Set<String> used = driver.getWindowHandles();
        String fresh = driver.switchTo().newWindow(WindowType.TAB).getWindowHandle();
        used.forEach(handle -> driver.switchTo().window(handle).close());
        driver.switchTo().window(fresh);
        consoleErrors();
        IDLE.push(driver);
    }

    private String origin() {
        return String.valueOf(driver.executeScript("return location.origin"));
    }
}
