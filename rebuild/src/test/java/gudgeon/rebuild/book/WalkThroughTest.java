package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The books that the documents tell a person to copy can be used as they stand. */
class WalkThroughTest {
    private static List<String> examples() throws IOException {
        String text = Files.readString(Path.of("..", "docs", "engine-book.md"));
        return Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
                .matcher(text)
                .results()
                .map(example -> example.group(1))
                .toList();
    }

    @Test
    void theBookOfTheWalkThroughIsReadWithoutFaultOrDoubt() throws IOException {
        BookReading reading = new EngineBookReader().read(examples().get(0));
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        assertThat(reading.faults())
                .filteredOn(fault -> fault.severity() != Fault.Severity.NOTE)
                .isEmpty();
    }

    @Test
    void theStructureOfTheDocumentsIsReadAndHasItsOrder() throws IOException {
        assertThat(examples()).hasSize(2);
        BookReading reading = new EngineBookReader().read(examples().get(1));
        assertThat(Books.sentences(reading)).isEmpty();
        assertThat(((BookReading.Read) reading).book().structure().precedence().order())
                .containsExactly("fit-rod", "fit-piston", "circlips-seen", "fit-barrel", "fit-head", "two-turns");
    }
}
