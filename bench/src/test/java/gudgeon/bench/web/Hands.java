package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Expect;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** Hands that put an engine together by the page Assemble: what can be done now, step by step, each proof as it is asked for. */
final class Hands {
    private final Visit person;

    Hands(Visit person) {
        this.person = person;
    }

    /** Does what can be done, best first, until a step can be done; gives what was done, in order. */
    Set<String> workUntil(String step) {
        Set<String> done = new HashSet<>();
        Optional<Doable> next = next(step);
        while (next.isPresent()) {
            Doable doable = next.get();
            assertThat(done.add(doable.id()))
                    .as(doable.id() + " is asked for once")
                    .isTrue();
            if (doable.isCheck()) {
                prove(person.build().structure().check(doable.id()).orElseThrow());
            } else {
                fit(doable.id());
            }
            next = next(step);
        }
        return done;
    }

    private Optional<Doable> next(String last) {
        List<Doable> now = Plan.of(person.build(), Instant.now()).now();
        return now.stream().filter(doable -> !doable.id().equals(last)).findFirst();
    }

    /** Takes new parts in hand for what an undoing spoilt. */
    void bringNewParts() {
        List<String> steps = person.build().structure().steps().stream()
                .filter(step -> step.fits().stream()
                        .anyMatch(position -> person.build().place(position).destroyed()))
                .map(Step::id)
                .toList();
        for (String step : steps) {
            person.open("/assemble?at=" + step);
            while (!browser().findElements(By.cssSelector("form.in-hand")).isEmpty()) {
                person.press("form.in-hand", "It is in my hand");
            }
        }
    }

    /** Makes the proofs that a step waits for, begins it, ticks every part and ends it. */
    void fit(String step) {
        person.build().unproven(step).forEach(this::prove);
        person.open("/assemble?at=" + step);
        person.press("#done", "Begin this step");
        for (WebElement tick : browser().findElements(By.cssSelector("#done input[type=checkbox]"))) {
            into(tick);
            tick.click();
        }
        person.press("#done", "Done");
        assertThat(person.build().step(step).stands()).as(step).isTrue();
    }

    private void prove(Check check) {
        person.open("/assemble?at=" + check.id());
        List<WebElement> reading = browser().findElements(By.cssSelector("#reading[type=text]"));
        if (!reading.isEmpty()) {
            into(reading.get(0));
            reading.get(0).sendKeys(check.expect().map(Hands::good).orElse("1"));
        }
        person.press("section[aria-labelledby=outcome]", "Passed");
    }

    private static String good(Expect expect) {
        double least = expect.atLeast().orElse(0);
        double value = expect.atMost().isPresent() ? (least + expect.atMost().getAsDouble()) / 2 : least * 1.1;
        return expect.figure(value);
    }

    private void into(WebElement element) {
        browser().executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
    }

    private ChromeDriver browser() {
        return person.browser.driver;
    }
}
