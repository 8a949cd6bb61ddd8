package gudgeon.bench.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class LocalizationTest {
    private final Localization german = Localization.in(Language.GERMAN, Set.of("Cover <b>\"left\"</b> & more"));

    @Test
    void aPageIsTranslatedInItsTextsAndInWhatIsSpokenAndNowhereElse() {
        String page = german.page("""
                <!doctype html><html lang="en"><head><title>Today – Gudgeon</title></head><body>
                <h1 title="Today">Today</h1><input name="Today" value="Today" placeholder="Today">
                <p translate="no">Today</p><textarea>Today</textarea><code>Today</code>
                <p>Cover &lt;b&gt;&#34;left&#34;&lt;/b&gt; &amp; more</p></body></html>
                """);
        assertThat(page)
                .contains("lang=\"de\"", "<title>Heute – Gudgeon</title>", "<h1 title=\"Heute\">Heute</h1>")
                .contains("name=\"Today\" value=\"Today\" placeholder=\"Heute\"")
                .contains("<p translate=\"no\">Today</p><textarea>Today</textarea><code>Today</code>")
                .contains("<p>Cover &lt;b&gt;\"left\"&lt;/b&gt; &amp; more</p>");
    }

    @Test
    void whatAChoiceSendsStaysAsItIs() {
        assertThat(german.page("<select><option>exhaust</option><option value=\"in\">inlet</option></select>"))
                .contains("<option value=\"exhaust\">Auslass</option>", "<option value=\"in\">Einlass</option>");
    }

    @Test
    void aPageBringsAlongWhatItsScriptsSay() {
        assertThat(german.page("<html><head></head><body></body></html>"))
                .contains("<script type=\"application/json\" id=\"words\">")
                .contains("\"Larger\":");
        assertThat(ScriptPhrases.all()).contains("Larger", "{0} valve {1}").doesNotHaveDuplicates();
    }

    @Test
    void aSheetStaysWellFormed() {
        assertThat(
                        german.sheet(
                                "<html lang=\"en\"><head><title>Today</title></head><body><p>Today<br/>1.5 mm</p></body></html>"))
                .isEqualTo(
                        "<html lang=\"de\"><head><title>Heute</title></head><body><p>Heute<br />1,5 mm</p></body></html>");
    }

    @Test
    void englishIsLeftAsItIs() {
        String page = "<p>Today & <b>more";
        assertThat(Localization.ENGLISH.page(page)).isSameAs(page);
        assertThat(Localization.in(Language.ENGLISH, Set.of()).text("Today")).isEqualTo("Today");
    }
}
