package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Hands on a keyboard, and ears: what has the focus is known by its role and name alone, as a screen reader tells them. */
final class Keyboard {
    private static final int MOST_STOPS = 400;

    private final Browser browser;

    Keyboard(Browser browser) {
        this.browser = browser;
    }

    /** Goes on by the Tab key until something of that role is told whose name begins so; everything on the way has to show that it has the focus. */
    void reach(String role, String name) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < MOST_STOPS; i++) {
            press(Keys.TAB);
            if (!(focus() instanceof WebElement at)) {
                continue;
            }
            String itsName = String.valueOf(at.getAccessibleName());
            String itsRole = String.valueOf(at.getAriaRole());
            told.add(itsRole + " '" + itsName + "'");
            assertThat(showsFocus(at))
                    .as("the focus is seen on the last of %s", told)
                    .isTrue();
            if (role.equals(itsRole) && itsName.startsWith(name)) {
                return;
            }
        }
        throw new AssertionError("no " + role + " '" + name + "' among " + told);
    }

    /** Types over what stands in the field with the focus. */
    void type(String text) {
        new Actions(browser.driver)
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys(text)
                .perform();
    }

    void press(CharSequence key) {
        new Actions(browser.driver).sendKeys(key).perform();
    }

    /** What has the focus; nothing while it is the page itself. */
    private @Nullable Object focus() {
        return browser.driver.executeScript(
                "return document.activeElement === document.body ? null : document.activeElement");
    }

    private boolean showsFocus(WebElement at) {
        return Boolean.TRUE.equals(browser.driver.executeScript("""
                const of = e => { const s = getComputedStyle(e);
                    return (s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) > 0) || s.boxShadow !== 'none'; };
                const e = arguments[0];
                return of(e) || (e.labels && [...e.labels].some(of)) || (e.closest('label') !== null && of(e.closest('label')));
                """, at));
    }
}
