package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands about the shelf. */
class ShelfCommandsTest {
    @TempDir
    Path folder;

    private Path data = Path.of("");
    private String id = "";

    @BeforeEach
    void oneBuild() throws IOException {
        data = folder.resolve("data");
        try (Shelf shelf = Shelf.open(data)) {
            String book = Files.readString(Path.of("../examples/tarn-98.yaml"));
            id = shelf.start("Tarn 98", book, Found.TOGETHER, "bench");
            note(shelf, "first", "what the file tells");
        }
    }

    private void note(Shelf shelf, String key, String text) {
        shelf.append(
                id, List.of(new Entry(key, Instant.parse("2026-03-01T10:00:00Z"), "bench", 1, new Noted("", text))));
    }

    @Test
    void buildsAreListedWithTheirIds() {
        Terminal said = run("builds", "--data", data);
        assertThat(said.code()).isZero();
        assertThat(said.out()).contains(id + "  Tarn 98, begun", "last worked on 2026-03-01, 2 entries");
        assertThat(run("builds", "--data", folder.resolve("none")).out()).startsWith("No build is kept in ");
    }

    @Test
    void aSoundJournalIsProvedAndAChangedOneIsNot() throws IOException {
        Terminal sound = run("verify-journal", id, "--data", data);
        assertThat(sound.code()).isZero();
        assertThat(sound.out()).startsWith("Sound: 2 entries");

        flipABitOf("what the file tells");
        Terminal changed = run("verify-journal", id, "--data", data);
        assertThat(changed.code()).isEqualTo(1);
        assertThat(changed.out()).startsWith("Not sound.").contains("Entry 2 was changed");
        Terminal none = run("verify-journal", "none", "--data", data);
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).startsWith("There is no build 'none'");
    }

    @Test
    void anExportedBuildIsTakenInElsewhere() throws IOException {
        Path file = folder.resolve("tarn.zip");
        assertThat(run("export", id, file, "--data", data).out())
                .contains("holds the whole build: 2 entries, 0 photos");
        assertThat(run("export", id, file, "--data", data).code()).isEqualTo(2);
        Path other = folder.resolve("other");
        Terminal in = run("import", file, "--data", other);
        assertThat(in.code()).isZero();
        assertThat(in.out()).contains("Tarn 98 is on the shelf as " + id);
        assertThat(run("verify-journal", id, "--data", other).code()).isZero();

        Terminal twice = run("import", file, "--data", other);
        assertThat(twice.code()).isEqualTo(2);
        assertThat(twice.err()).contains("is on the shelf already");
        Terminal rubbish = run("import", Files.writeString(folder.resolve("x.zip"), "rubbish"), "--data", other);
        assertThat(rubbish.code()).isEqualTo(2);
        assertThat(rubbish.err()).contains("was not taken in; nothing was changed");
    }

    @Test
    void aBackupComesBack() {
        Terminal backup = run("backup", "--data", data);
        assertThat(backup.code()).isZero();
        String name = backup.out().replaceAll("(?s).*(asked-[0-9TZ-]+\\.db).*", "$1");
        try (Shelf shelf = Shelf.open(data)) {
            note(shelf, "second", "too much");
            Terminal held = run("restore", name, "--data", data);
            assertThat(held.code()).isEqualTo(2);
            assertThat(held.err()).contains("in use by another Gudgeon");
        }
        Terminal restored = run("restore", name, "--data", data);
        assertThat(restored.code()).isZero();
        assertThat(restored.out()).contains("again as they were at", "What was there before is kept in");
        assertThat(run("builds", "--data", data).out()).contains("2 entries");
        assertThat(run("restore", "none", "--data", data).code()).isEqualTo(2);
    }

    private void flipABitOf(String text) throws IOException {
        Path file = data.resolve("shelf.db");
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(text);
        assertThat(at).isPositive();
        bytes[at] ^= 1;
        Files.write(file, bytes);
    }

    @Test
    void aDamagedBuildIsMendedFromABackupAndKeepsWhatCameAfterIt() throws IOException {
        run("backup", "--data", data);
        try (Shelf shelf = Shelf.open(data)) {
            note(shelf, "second", "after the backup");
        }
        flipABitOf("what the file tells");
        Terminal plan = run("plan", id, "--data", data);
        assertThat(plan.code()).isEqualTo(2);
        assertThat(plan.err()).contains("Entry 2 was changed", "gudgeon mend");
        Terminal mended = run("mend", "--data", data);
        assertThat(mended.code()).isZero();
        assertThat(mended.out()).contains(id + "  Tarn 98: 3 entries, proved, 1 of them from backups", "kept in ");
        assertThat(run("verify-journal", id, "--data", data).out()).startsWith("Sound: 3 entries");

        flipABitOf("after the backup");
        Terminal lost = run("mend", "--data", data);
        assertThat(lost.code()).isEqualTo(1);
        assertThat(lost.out()).contains(id + "  Tarn 98: 2 entries, proved", "Entry 3 is lost");
        assertThat(run("mend", "--data", folder.resolve("none")).out()).startsWith("No build could be found");
    }
}
