package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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
            WebElement at = here();
            if (at.getTagName().equals("body")) {
                continue;
            }
            assertThat(showsFocus(at)).as("the focus is seen on " + told(at)).isTrue();
            told.add(told(at));
            if (role.equals(at.getAriaRole())
                    && String.valueOf(at.getAccessibleName()).startsWith(name)) {
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

    private WebElement here() {
        return browser.driver.switchTo().activeElement();
    }

    private static String told(WebElement at) {
        return at.getAriaRole() + " '" + at.getAccessibleName() + "'";
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
