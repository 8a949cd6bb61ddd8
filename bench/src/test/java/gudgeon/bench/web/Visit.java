package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.store.shelf.Shelf;
import java.net.URI;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** A person who works on the first build of a shelf by its pages. */
final class Visit {
    final Browser browser;
    private final Shelf shelf;
    private final URI bench;

    /**
     * @param browser what the person holds
     * @param shelf where the builds are kept
     * @param bench where the pages are
     */
    Visit(Browser browser, Shelf shelf, URI bench) {
        this.browser = browser;
        this.shelf = shelf;
        this.bench = bench;
    }

    Build build() {
        return shelf.build(shelf.builds().get(0).id()).orElseThrow();
    }

    /** Opens a page of the build, such as "/strip". */
    void open(String page) {
        browser.driver.get(bench + "builds/" + shelf.builds().get(0).id() + page);
    }

    /** Where the bench is. */
    URI address() {
        return bench;
    }

    void openShelf() {
        browser.driver.get(bench.toString());
    }

    /** Presses the button with that word inside an element, and waits until the journal has grown and the page has changed. */
    void press(String selector, String word) {
        long before = build().size();
        button(selector, word).click();
        browser.waiting()
                .withMessage(() -> "an entry after " + word + "; the page says: " + browser.text("queue"))
                .until(d -> build().size() > before);
        browser.waiting().until(d -> d.findElements(By.cssSelector("form.kept")).isEmpty());
    }

    WebElement button(String selector, String word) {
        Object button = browser.driver.executeScript("""
                const [where, word] = arguments;
                const button = [...document.querySelectorAll(where)].find(each => each.checkVisibility() && each.innerText.includes(word));
                button?.scrollIntoView({block: 'center'});
                return button;
                """, selector + " button", word);
        if (button instanceof WebElement found) {
            return found;
        }
        throw new AssertionError("no button '" + word + "' on " + browser.driver.getCurrentUrl());
    }

    void unfold(String summary) {
        WebElement fold = browser.driver.findElements(By.tagName("summary")).stream()
                .filter(each -> each.getText().contains(summary))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no fold '" + summary + "'"));
        browser.driver.executeScript("arguments[0].parentElement.open = true", fold);
    }

    /** Holds the open page against the rules for screen readers, and against its width. */
    void sound(String page) {
        List<String> violations = browser.violations();
        assertThat(violations).as("%s: %s", page, violations).isEmpty();
        assertThat(browser.driver.executeScript(
                        "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                .as("%s needs no scrolling sideways", page)
                .isEqualTo(true);
    }
}
