package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The book that the walk-through tells a person to copy can be used as it stands. */
class WalkThroughTest {
    @Test
    void theBookOfTheWalkThroughIsReadWithoutFaultOrDoubt() throws IOException {
        String text = Files.readString(Path.of("..", "docs", "engine-book.md"));
        int from = text.indexOf("```yaml\n") + 8;
        BookReading reading = new EngineBookReader().read(text.substring(from, text.indexOf("```", from)));
        assertThat(reading).isInstanceOf(BookReading.Read.class);
        assertThat(reading.faults())
                .filteredOn(fault -> fault.severity() != Fault.Severity.NOTE)
                .isEmpty();
    }
}
