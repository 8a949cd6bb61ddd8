package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A book prints as plain text that can be pinned up at the bench. */
class BookCommandTest {
    private static final String TARN = "../examples/tarn-98.yaml";

    @ParameterizedTest
    @EnumSource(Archetype.class)
    void everyArchetypePrintsWithinEightyColumns(Archetype archetype) {
        Terminal book = run("book", "--archetype", archetype.id());
        assertThat(book.code()).isZero();
        assertThat(book.err()).isEmpty();
        assertThat(book.out().lines()).allMatch(line -> line.length() <= Sheets.COLUMNS);
        assertThat(book.out())
                .contains("CAUTION", "HOLD POINT: ", "always new", "The maker's manual comes first", "To be measured");
        int acts = archetype.book().structure().steps().size()
                + archetype.book().structure().checks().size();
        assertThat(book.out().lines().filter(line -> line.startsWith("[ ]"))).hasSize(acts);
    }

    @Test
    void theTextOfAnArchetypeIsABookToFillIn(@TempDir Path folder) throws Exception {
        Terminal text = run("book", "--archetype", "side-valve-stationary", "--text");
        Path copy = Files.writeString(folder.resolve("mine.yaml"), text.out());
        assertThat(run("check", copy.toString()).out()).isEqualTo(copy + " is complete.\n");
        assertThat(run("book", copy.toString()).out())
                .isEqualTo(run("book", "--archetype", "side-valve-stationary").out());
    }

    @Test
    void theExampleEnginePrintsWithItsLimits() {
        assertThat(run("book", TARN).out())
                .startsWith("Tarn 98, Merrow & Tull\n======")
                .contains("In service ");
    }

    @Test
    void whatCanNotBePrintedIsSaidInASentence(@TempDir Path folder) throws Exception {
        assertThat(run("book").err())
                .isEqualTo("Name an engine book, or give --archetype and one of lying-overhead-cam-single,"
                        + " upright-pushrod-single, side-valve-stationary.\n");
        assertThat(run("book", "--archetype", "flying").err()).startsWith("There is no archetype 'flying'; there are ");
        assertThat(run("book", TARN, "--archetype", "side-valve-stationary").code())
                .isEqualTo(2);
        assertThat(run("book", TARN, "--text").code()).isEqualTo(2);
        String bare = Files.readString(Path.of(TARN));
        Path file = Files.writeString(folder.resolve("bare.yaml"), bare.substring(0, bare.indexOf("\npositions:") + 1));
        assertThat(run("book", file.toString()).err()).contains("has no steps yet");
    }

    @Property(tries = 200)
    void linesAreNoLongerThanAskedAndLoseNothing(@ForAll String text, @ForAll @IntRange(min = 1, max = 90) int width) {
        assertThat(Sheets.wrapped(text, width)).allMatch(line -> line.length() <= width);
        assertThat(String.join("", Sheets.wrapped(text, width)).replaceAll("\\s", ""))
                .isEqualTo(text.replaceAll("\\s", ""));
    }
}
