package gudgeon.bench.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TranslatorTest {
    private static final PhraseBook BOOK = new PhraseBook(Language.GERMAN, phrases());
    private final Translator translator = new Translator(BOOK, Set.of("Left case half", "and then some"));

    private static Map<String, String> phrases() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("the plug", "die Zündkerze");
        all.put("Take {0} out.", "{0} herausnehmen.");
        all.put("The {0} is {1} mm long.", "„{0}“ ist {1} mm lang.");
        all.put("The {0} is {1}.", "„{0}“: {1}.");
        all.put("{0} and {1}", "{0} und {1}");
        all.put("Write {0}.", "{0} schreiben.");
        all.put("They touch: {0}.{1}", "Sie berühren sich: {0}.{1}");
        all.put("{0} at {1}", "{0} bei {1}");
        all.put("{0} out", "{0} außen");
        all.put("done", "fertig");
        all.put("{0} was to come before {1}", "vor {1} sollte {0} kommen");
        all.put("not measured", "nicht gemessen");
        all.put("not tightened again", "nicht nachgezogen");
        all.put("What stops it by hand breaks it when it runs.", "Was von Hand bremst, bricht im Lauf.");
        return all;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "The plug|Die Zündkerze",
                "the plug.|die Zündkerze.",
                "Write the plug.|Die Zündkerze schreiben.",
                "They touch: 0.4 mm at 350.7°, 20.2 mm out.Done|Sie berühren sich: 0,4 mm bei 350,7°, 20,2 mm außen.Fertig",
                "Take the plug out|Die Zündkerze herausnehmen",
                "Take Left case half out.|Left case half herausnehmen.",
                "The Left case half is 12.5 mm long.|„Left case half“ ist 12,5 mm lang.",
                "The Left case half is not measured.|„Left case half“: nicht gemessen.",
                "the plug and Left case half|die Zündkerze und Left case half",
                "the plug was to come before Left case half|vor Left case half sollte die Zündkerze kommen",
                "not measured, not tightened again|nicht gemessen, nicht nachgezogen",
                "Take the plug out. What stops it by hand breaks it when it runs.|"
                        + "Die Zündkerze herausnehmen. Was von Hand bremst, bricht im Lauf.",
                "not measured (the plug)|nicht gemessen (die Zündkerze)",
                "12.5 mm|12,5 mm",
                "39.25 × 1.5 mm|39,25 × 1,5 mm"
            })
    void findsThePhrasesATextIsMadeOf(String english, String german) {
        assertThat(translator.of(english)).isEqualTo(german);
        assertThat(translator.unexplained(english)).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Found under the bench and behind the vice",
                "and then some",
                "Left case half",
                "M6 8.8",
                "Gudgeon 0.1.0"
            })
    void leavesAloneWhatIsNoPhrase(String own) {
        assertThat(translator.of(own)).isEqualTo(own);
    }

    @Test
    void tellsHowManyLettersNothingExplains() {
        assertThat(translator.unexplained("The hammer was to come before the plug."))
                .isEqualTo(9);
        assertThat(translator.unexplained("12.5 mm")).isZero();
        assertThat(translator.of(" \n the plug \n")).isEqualTo(" \n die Zündkerze \n");
    }

    @Property(tries = 200)
    void everyFigureOfAPhraseIsThereAfterwards(@ForAll @DoubleRange(min = 0, max = 1000) double length) {
        String written = String.format(java.util.Locale.ROOT, "%.3f", length);
        assertThat(translator.of("The Left case half is " + written + " mm long."))
                .isEqualTo("„Left case half“ ist " + written.replace('.', ',') + " mm lang.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-11-26|26.11.2026",
                "2026-13-41|2026-13-41",
                "0.35 to 0.4|0,35 to 0,4",
                "8.8|8.8",
                "8.8 mm|8,8 mm",
                "13.6.2|13.6.2",
                "6203-2|6203-2"
            })
    void writesNumbersAndDaysAsTheLanguageDoes(String english, String german) {
        assertThat(new Numbers(Language.GERMAN).in(english)).isEqualTo(german);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "de-AT,de;q=0.9,en;q=0.8|GERMAN",
                "en-GB,en|ENGLISH",
                "fr,de;q=0.3|GERMAN",
                "*|ENGLISH",
                "''|ENGLISH",
                "one, two three;q=x|ENGLISH"
            })
    void readsWhatABrowserAsksFor(String header, Language language) {
        assertThat(Language.accepted(header)).isEqualTo(language);
    }
}
