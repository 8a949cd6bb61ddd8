package gudgeon.rebuild.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The schema in the documents holds the keys that the reader accepts, no more and no fewer. */
class BookSchemaTest {
    private static final Path SCHEMA = Path.of("..", "docs", "engine-book.schema.json");

    @Test
    void theSchemaIsWrittenFromTheReadersForms() throws IOException {
        String written = new BookSchema().text();
        if (Boolean.getBoolean("gudgeon.schema.write")) {
            Files.writeString(SCHEMA, written);
        }
        assertThat(Files.readString(SCHEMA))
                .as("docs/engine-book.schema.json; run this test with -Dgudgeon.schema.write=true to write it anew")
                .isEqualTo(written);
    }
}
