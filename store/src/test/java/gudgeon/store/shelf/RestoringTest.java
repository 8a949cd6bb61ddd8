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
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
        restore(Optional.of("asked-2026-03-01T100001Z.db"));
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

    private List<String> daysBackedUp() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("backups"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("daily-"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void aShelfThatStaysOpenIsBackedUpEachDayItIsUsed() throws IOException {
        Instant[] now = {Small.NOW};
        InstantSource source = () -> now[0];
        Clock running = source.withZone(ZoneOffset.UTC);
        try (Shelf shelf = Shelf.open(folder, running)) {
            String id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            for (int day = 0; day < 3; day++) {
                now[0] = Small.NOW.plus(Duration.ofDays(day));
                shelf.append(id, List.of(Small.entry("a" + day, "bench", 1, new Noted("", "one"))));
                shelf.append(id, List.of(Small.entry("b" + day, "bench", 1, new Noted("", "two"))));
            }
            assertThat(daysBackedUp())
                    .containsExactly(
                            "daily-2026-03-01T100000Z.db",
                            "daily-2026-03-02T100000Z.db",
                            "daily-2026-03-03T100000Z.db");
        }
    }

    @Test
    void aBackupThatFailsIsToldAndKeepsNobodyFromTheWork() throws IOException {
        String id;
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
        }
        Files.writeString(folder.resolve("backups"), "a file where the folder should be");
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            assertThat(shelf.backupFault()).get().asString().startsWith("No backup could be made");
            assertThat(shelf.append(id, List.of(Small.entry("a", "bench", 1, new Noted("", "one")))))
                    .isInstanceOf(Outcome.Kept.class);
        }
    }

    @Test
    void afterTheClockWasSetBackBackupsGoOnAndEntriesKeepTheirOrder() throws IOException {
        Instant[] now = {Small.NOW.plus(Duration.ofDays(400))};
        InstantSource source = () -> now[0];
        Clock running = source.withZone(ZoneOffset.UTC);
        try (Shelf shelf = Shelf.open(folder, running)) {
            String id = shelf.start("Tarn 98", Small.book(), Found.TOGETHER, "bench");
            for (int day = 0; day < 8; day++) {
                shelf.append(id, List.of(Small.entry("a" + day, "bench", 1, new Noted("", "late"))));
                now[0] = now[0].plus(Duration.ofDays(1));
            }
            now[0] = Small.NOW;
            String late = daysBackedUp().get(0);
            shelf.append(id, List.of(Small.entry("b", "bench", 9, new Noted("", "after it was set back"))));
            assertThat(daysBackedUp()).contains("daily-2026-03-01T100000Z.db", late);
            assertThat(shelf.build(id).orElseThrow().entry(10).key()).isEqualTo("b");
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
        }
        assertThat(restore(Optional.empty()).backup().taken()).isEqualTo(Small.NOW);
    }
}
