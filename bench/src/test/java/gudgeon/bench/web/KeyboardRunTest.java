package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.StepState;
import gudgeon.rebuild.find.Hunt;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Origin;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;

/** The main job by the keyboard alone, by nothing but what a screen reader tells: a build begun, stripped, measured, put together, a fault sought and undone. */
class KeyboardRunTest {
    @TempDir
    private Path folder;

    private OpenBench open;
    private Browser browser;
    private Visit person;
    private Keyboard keys;

    @BeforeEach
    void start() {
        open = new OpenBench(folder);
        browser = open.browser;
        browser.screen(1366, 768, "light");
        person = open.person;
        keys = new Keyboard(browser);
    }

    @AfterEach
    void stop() {
        open.close();
    }

    @Test
    void theMainJobNeedsNoPointer() {
        person.openShelf();
        beginABuild();
        takeAPartOff();
        putItBack();
        enterAPart();
        measureIt();
        seekAFault();
        undo();
    }

    private void beginABuild() {
        keys.reach("textbox", "Name: the engine and its number");
        keys.type("Lying single no. 12");
        keys.reach("button", "Start");
        keys.press(Keys.ENTER);
        browser.until("main", "Today");
    }

    private void takeAPartOff() {
        go("Strip");
        keys.reach("textbox", "What was seen");
        keys.type("hard and cracked");
        enters("button", "Off, and in bag");
        assertThat(last())
                .isInstanceOfSatisfying(
                        Fact.TakenOff.class, off -> assertThat(off.remark()).isEqualTo("hard and cracked"));
    }

    private void putItBack() {
        String position = last().about();
        String step =
                person.build().structure().stepFitting(position).orElseThrow().id();
        go("Assemble");
        enters("button", "Begin this step");
        keys.reach("checkbox", "");
        keys.press(Keys.SPACE);
        enters("button", "Done");
        assertThat(person.build().step(step).status()).isEqualTo(StepState.Status.DONE);
        assertThat(person.build().place(position).isFilled()).isTrue();
    }

    private void enterAPart() {
        go("Engine");
        follow("piston");
        keys.reach("DisclosureTriangle", "Enter a part");
        keys.press(Keys.ENTER);
        keys.reach("textbox", "Name for it");
        keys.type("pattern 1");
        keys.reach("combobox", "Where it comes from");
        keys.press("pat");
        enters("button", "Enter it");
        assertThat(person.build().partFor("piston").orElseThrow().origin()).contains(Origin.PATTERN);
    }

    private void measureIt() {
        keys.reach("link", "What was measured on it");
        keys.press(Keys.ENTER);
        browser.until("main", "Measure");
        keys.reach("link", "piston skirt");
        keys.press(Keys.ENTER);
        keys.reach("textbox", "Reading");
        keys.type("49,96");
        enters("button", "Keep");
        assertThat(last()).isInstanceOf(ReadingTaken.class);
    }

    private void seekAFault() {
        go("Fault");
        enters("button", "It goes tight as it is turned");
        keys.reach("radio", "forward");
        keys.press(Keys.SPACE);
        keys.reach("textbox", "Crank angle");
        keys.type("352");
        enters("button", "It goes tight here");
        assertThat(Hunt.of(person.build(), "tight-spot-1").orElseThrow().felt()).hasSize(1);
    }

    private void undo() {
        go("Undo");
        keys.reach("combobox", "Position, step or check");
        keys.press("selector drum");
        keys.reach("button", "Show the way");
        keys.press(Keys.ENTER);
        browser.until("main", "Comes off, in this order");
        enters("button", "It is all off");
        assertThat(person.build().place("selector-drum").isFilled()).isFalse();
    }

    private void go(String tab) {
        follow(tab);
    }

    private void follow(String link) {
        String before = String.valueOf(browser.driver.getCurrentUrl());
        keys.reach("link", link);
        keys.press(Keys.ENTER);
        browser.waiting().until(d -> !before.equals(d.getCurrentUrl()));
    }

    /** Presses what tells something to the journal, and waits until it is there. */
    private void enters(String role, String name) {
        long before = person.build().size();
        keys.reach(role, name);
        keys.press(Keys.ENTER);
        browser.waiting()
                .withMessage(() -> "an entry after " + name + "; the page says: " + browser.text("queue"))
                .until(d -> person.build().size() > before);
        browser.waiting().until(d -> d.findElements(By.cssSelector("form.kept")).isEmpty());
    }

    private Fact last() {
        return person.build().fact(person.build().size()).orElseThrow();
    }
}
