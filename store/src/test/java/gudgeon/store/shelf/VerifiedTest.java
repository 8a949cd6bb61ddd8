package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A journal that someone, or the disk, changed behind Gudgeon's back. */
class VerifiedTest {
    @TempDir
    Path folder;

    private String id = "";

    @BeforeEach
    void fiveEntries() {
        try (Shelf shelf = Shelf.open(folder)) {
            id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            for (int n = 2; n <= 5; n++) {
                shelf.append(id, List.of(Small.entry("k" + n, "bench", 1, new Noted("", "note " + n))));
            }
        }
    }

    private void tamper(String... statements) {
        try (Handle handle =
                Jdbi.create("jdbc:sqlite:" + folder.resolve("shelf.db")).open()) {
            handle.execute("DROP TRIGGER entry_is_never_changed");
            handle.execute("DROP TRIGGER entry_is_never_deleted");
            for (String statement : statements) {
                handle.execute(statement);
            }
        }
    }

    private List<String> found() {
        try (Shelf shelf = Shelf.open(folder)) {
            return shelf.verify(id) instanceof Verified.Broken broken ? broken.sentences() : List.of();
        }
    }

    @Test
    void aJournalLeftAloneIsSound() {
        assertThat(found()).isEmpty();
    }

    @Test
    void aFlippedBitInTheFileIsFound() throws IOException {
        Path file = folder.resolve("shelf.db");
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("note 3");
        assertThat(at).isPositive();
        bytes[at] ^= 1;
        Files.write(file, bytes);
        assertThat(found()).containsExactly("Entry 3 was changed: its text is not the one its hash was made of.");
    }

    @Test
    void aChangedTextAndAChangedKeyAreFound() {
        tamper(
                "UPDATE entry SET line = replace(line, 'note 2', 'note 9') WHERE number = 2",
                "UPDATE entry SET key = 'other' WHERE number = 4");
        assertThat(found())
                .containsExactly(
                        "Entry 2 was changed: its text is not the one its hash was made of.",
                        "Entry 4 was changed: its key is not the one its text has.");
    }

    @Test
    void aChangedTextWithAHashToMatchIsFound() {
        String changed = "{\"type\":\"noted\",\"version\":1,\"key\":\"k3\",\"at\":\"2026-03-01T10:00:00Z\","
                + "\"device\":\"bench\",\"seen\":1,\"on\":\"\",\"text\":\"forged\"}";
        String previous;
        try (Database database = Database.open(folder.resolve("shelf.db"))) {
            previous = database.read(journals -> journals.numbered(id, 3))
                    .orElseThrow()
                    .previous();
        }
        tamper("UPDATE entry SET line = '" + changed + "', hash = '" + Chain.hash(previous, changed)
                + "' WHERE number = 3");
        assertThat(found()).singleElement().asString().contains("Between Entry 3 and Entry 4");
    }

    @Test
    void aMissingEntryIsFoundWhereverItStood() {
        tamper("DELETE FROM entry WHERE number = 3");
        assertThat(found()).first().isEqualTo("Entry 3 is missing.");
    }

    @Test
    void aLostTailIsFound() {
        tamper("DELETE FROM entry WHERE number >= 4");
        assertThat(found()).containsExactly("Entries 4 to 5 are missing.");
    }

    @Test
    void anEntryPutInIsFound() {
        String forged = "{\"type\":\"noted\",\"version\":1,\"key\":\"new\",\"at\":\"2026-03-01T10:00:00Z\","
                + "\"device\":\"bench\",\"seen\":1,\"on\":\"\",\"text\":\"put in\"}";
        String previous;
        try (Database database = Database.open(folder.resolve("shelf.db"))) {
            previous = database.read(journals -> journals.numbered(id, 3))
                    .orElseThrow()
                    .hash();
        }
        tamper(
                "UPDATE entry SET number = number + 100 WHERE number >= 4",
                "UPDATE entry SET number = number - 99 WHERE number > 100",
                "INSERT INTO entry VALUES ('" + id + "', 4, 'new', '" + forged + "', '" + previous + "', '"
                        + Chain.hash(previous, forged) + "')");
        assertThat(found()).contains("Entry 4 was put in: the one after it does not know it.");
    }

    @Test
    void theDatabaseItselfRefusesToChangeAnEntry() {
        try (Handle handle =
                Jdbi.create("jdbc:sqlite:" + folder.resolve("shelf.db")).open()) {
            assertThatThrownBy(() -> handle.execute("UPDATE entry SET key = 'x'"))
                    .hasMessageContaining("an entry is never changed");
            assertThatThrownBy(() -> handle.execute("DELETE FROM entry"))
                    .hasMessageContaining("an entry is never deleted");
        }
    }
}
