package gudgeon.bench;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.journal.JournalFile;
import gudgeon.store.journal.Reading;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The invented workshop's two rebuilds, as the examples tell them. */
public final class TwoRebuilds {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private TwoRebuilds() {}

    /** Puts both on a shelf, the one that is worked on most last. */
    public static void on(Shelf shelf) throws IOException {
        put(shelf, "Tarn 98 no. 2043", Found.IN_PIECES, "tarn-98-worn.jsonl");
        put(shelf, "Tarn 98 no. 1187", Found.TOGETHER, "tarn-98.jsonl");
    }

    private static void put(Shelf shelf, String name, Found found, String journal) throws IOException {
        String id = shelf.start(name, Files.readString(EXAMPLES.resolve("tarn-98.yaml")), found, "bench");
        Reading.Read read = (Reading.Read) JournalFile.read(Files.readString(EXAMPLES.resolve(journal)));
        assertThat(shelf.append(
                        id,
                        read.entries().stream()
                                .filter(entry -> !(entry.fact() instanceof Started))
                                .toList()))
                .isInstanceOf(Outcome.Kept.class);
    }
}
