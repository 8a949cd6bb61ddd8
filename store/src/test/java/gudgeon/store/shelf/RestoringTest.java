package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.shelf.Restoring.Restored;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bringing a backup back. */
class RestoringTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Restored restore(Optional<String> name) {
        return new Restoring(folder, CLOCK).restore(name);
    }

    /** A build of two entries backed up, then one more. */
    private String backedUpBuild() {
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            assertThat(shelf.backupFault()).isEmpty();
            String id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            shelf.append(id, List.of(Small.entry("a", "bench", 1, new Noted("", "before"))));
            assertThat(shelf.backUp()).exists();
            shelf.append(id, List.of(Small.entry("b", "bench", 2, new Noted("", "after"))));
            return id;
        }
    }

    private long entries(String id) {
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
            return shelf.build(id).orElseThrow().size();
        }
    }

    @Test
    void aBackupComesBackAndWhatWasThereLiesAside() throws IOException {
        String id = backedUpBuild();
        Restored restored = restore(Optional.of("asked-2026-03-01T100000Z.db"));
        assertThat(entries(id)).isEqualTo(2);
        Path aside = restored.aside().orElseThrow();
        Files.copy(aside.resolve("shelf.db"), folder.resolve("backups/asked-2026-03-01T100001Z.db"));
        restore(Optional.empty());
        assertThat(entries(id)).isEqualTo(3);
    }

    @Test
    void aBackupReplacesADatabaseThatCanNotBeRead() throws IOException {
        String id = backedUpBuild();
        Files.writeString(folder.resolve("shelf.db"), "rubbish");
        restore(Optional.of("asked-2026-03-01T100000Z.db"));
        assertThat(entries(id)).isEqualTo(2);
        Files.delete(folder.resolve("shelf.db"));
        assertThat(restore(Optional.of("asked-2026-03-01T100000Z.db")).aside()).isEmpty();
        assertThat(entries(id)).isEqualTo(2);
    }

    @Test
    void whatCanNotBeUsedChangesNothing() throws IOException {
        String id = backedUpBuild();
        Path backup = folder.resolve("backups/asked-2026-03-01T100000Z.db");
        byte[] bytes = Files.readAllBytes(backup);
        Files.write(backup, Arrays.copyOf(bytes, bytes.length / 2));
        assertThatThrownBy(() -> restore(Optional.of("asked-2026-03-01T100000Z.db")))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("nothing was changed");
        assertThatThrownBy(() -> restore(Optional.of("../shelf.db")))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("There is no backup '../shelf.db'");
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            assertThatThrownBy(() -> restore(Optional.empty()))
                    .isInstanceOf(ShelfFault.class)
                    .hasMessageContaining("in use");
            assertThat(shelf.builds()).hasSize(1);
        }
        assertThat(entries(id)).isEqualTo(3);
        assertThat(folder.resolve("set-aside")).doesNotExist();
    }
}
