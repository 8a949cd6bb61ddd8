package gudgeon.bench.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The German book of phrases against the program's own sources. */
class PhraseBookTest {
    private static final Path ROOT = Path.of("..");
    private static final Path BOOK = Path.of("src/main/resources/gudgeon/bench/language/de.yaml");
    private static final String PUT_TOGETHER = "# put together while the program runs";
    /** What the terminal and the drills say is in English. */
    private static final List<String> TERMINAL =
            List.of("/bench/cli/", "/rebuild/drill/", "/store/drill/", "/bench/language/");

    private final Map<String, String> german = PhraseBook.meanings(Language.GERMAN);

    private static List<Path> files(String folder, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(ROOT.resolve(folder))) {
            return all.filter(file -> file.toString().endsWith(ending))
                    .filter(file -> TERMINAL.stream().noneMatch(file.toString()::contains))
                    .sorted()
                    .toList();
        }
    }

    private static Set<String> texts() throws IOException {
        Set<String> texts = new LinkedHashSet<>();
        for (Path template : files("bench/src/main/jte", ".jte")) {
            texts.addAll(TemplateTexts.of(Files.readString(template)));
        }
        texts.addAll(ScriptPhrases.all());
        for (String module : List.of("mechanics", "rebuild", "store", "bench")) {
            texts.addAll(JavaTexts.of(files(module + "/src/main/java", ".java")));
        }
        return texts;
    }

    @Test
    void everyTextOfTheProgramHasItsGerman() throws IOException {
        Set<String> texts = texts();
        assertThat(texts).as("texts found in the sources").hasSizeGreaterThan(4000);
        Set<String> lacking = new TreeSet<>(texts);
        lacking.removeAll(german.keySet());
        assertThat(lacking)
                .as("texts that %s.yaml lacks", Language.GERMAN.tag())
                .isEmpty();
    }

    /** A phrase whose text was changed or taken away would else stay for ever. */
    @Test
    void everyPhraseIsATextOfTheProgramOrSaysThatItIsPutTogether() throws IOException {
        String book = Files.readString(BOOK);
        int from = book.indexOf(PUT_TOGETHER);
        assertThat(from).as("the part under '%s'", PUT_TOGETHER).isPositive();
        Set<String> unused =
                new TreeSet<>(PhraseBook.meaningsIn(book.substring(0, from)).keySet());
        unused.removeAll(texts());
        assertThat(unused).as("phrases that no source has").isEmpty();
    }

    @Test
    void everyMeaningHasTheBlanksOfItsPhrase() {
        german.forEach((english, meaning) -> assertThat(blanks(meaning))
                .as("blanks of %s: %s", english, meaning)
                .isEqualTo(blanks(english)));
    }

    private static List<String> blanks(String text) {
        return Phrase.BLANK
                .matcher(text)
                .results()
                .map(blank -> blank.group())
                .sorted()
                .toList();
    }
}
