package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import gudgeon.store.shelf.Mending.Mended;
import gudgeon.store.shelf.Mending.MendedBuild;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A database with flipped bits or cut short at places drawn by seed. What is shown is what was written, or the damage is named; and mending
 * brings back all that the backup holds, and all that came after it but what is told as lost.
 */
class DamageTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);
    private static final int SEEDS = LongRun.of(12, 3_000);
    /** Seeds 55 and 60 found what mending did wrong at first. */
    private static final int FIRST_SEED = 52;

    private static final int BACKED_UP = 40;
    private static final int IN_ALL = 60;

    @TempDir
    Path folder;

    private final Map<String, List<Entry>> written = new LinkedHashMap<>();
    private byte[] sound = {};

    @BeforeEach
    void threeBuildsWithABackupInTheMidst() throws IOException {
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            List<String> ids = new ArrayList<>();
            for (int build = 1; build <= 3; build++) {
                ids.add(shelf.start("Tarn 98 no. " + build, Small.book(), Found.IN_PIECES, "bench"));
            }
            for (int n = 2; n <= IN_ALL; n++) {
                for (String id : ids) {
                    shelf.append(
                            id,
                            List.of(Small.entry("k" + n, "bench", 1, new Noted("", n + " of " + id + " ".repeat(n)))));
                }
                if (n == BACKED_UP) {
                    shelf.backUp();
                }
            }
            ids.forEach(id ->
                    written.put(id, List.copyOf(shelf.build(id).orElseThrow().entries())));
        }
        sound = Files.readAllBytes(database());
    }

    private Path database() {
        return folder.resolve("shelf.db");
    }

    @Test
    void flippedBitsAreFoundAndMended() throws IOException {
        int found = 0;
        for (int seed = FIRST_SEED; seed < FIRST_SEED + SEEDS; seed++) {
            Random random = new Random(seed);
            byte[] damaged = sound.clone();
            for (int flips = 1 + random.nextInt(12); flips > 0; flips--) {
                damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
            }
            found += damagedThenMended("seed " + seed, damaged) ? 1 : 0;
        }
        assertThat(found).as("most of these hit something that counts").isGreaterThan(SEEDS / 2);
    }

    @Test
    void aDatabaseCutShortIsFoundAndMended() throws IOException {
        for (int seed = 0; seed < SEEDS / 4; seed++) {
            byte[] damaged = Arrays.copyOf(sound, new Random(seed).nextInt(sound.length));
            damagedThenMended("cut to " + damaged.length, damaged);
        }
    }

    /** Whether anything was amiss. */
    private boolean damagedThenMended(String how, byte[] damaged) throws IOException {
        remove("-wal");
        remove("-shm");
        Files.write(database(), damaged);
        boolean amiss = nothingUntrueIsShown(how);
        Mended mended = new Mending(folder, CLOCK).mend();
        assertThat(mended.builds())
                .as(how)
                .extracting(MendedBuild::id)
                .containsExactlyInAnyOrderElementsOf(written.keySet());
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            for (MendedBuild build : mended.builds()) {
                List<Entry> truth = written.getOrDefault(build.id(), List.of());
                assertThat(shelf.verify(build.id())).as(how).isInstanceOf(Verified.Sound.class);
                assertThat(shelf.name(build.id())).as(how).contains(build.name());
                assertThat(List.copyOf(shelf.build(build.id()).orElseThrow().entries()))
                        .as(how)
                        .isEqualTo(truth.subList(0, (int) build.entries()));
                assertThat(build.entries()).as(how).isGreaterThanOrEqualTo(BACKED_UP);
            }
            assertThat(shelf.builds())
                    .extracting(ShelvedBuild::id)
                    .containsExactlyInAnyOrderElementsOf(written.keySet());
        }
        return amiss;
    }

    private boolean nothingUntrueIsShown(String how) {
        int sentences = 0;
        Throwable unopened = catchThrowable(() -> Shelf.open(folder, CLOCK).close());
        if (unopened != null) {
            aSentence(how, unopened);
            return true;
        }
        try (Shelf shelf = Shelf.open(folder, CLOCK)) {
            for (ShelvedBuild build : shelf.builds()) {
                try {
                    Optional<List<Entry>> shown = shelf.build(build.id()).map(known -> List.copyOf(known.entries()));
                    assertThat(shown).as(how).isEqualTo(Optional.ofNullable(written.get(build.id())));
                } catch (ShelfFault fault) {
                    aSentence(how, fault);
                    sentences++;
                }
            }
            return sentences > 0 || shelf.builds().size() < written.size();
        }
    }

    /** What is wrong, and the way back. */
    private static void aSentence(String how, Throwable fault) {
        assertThat(fault).as(how).isInstanceOf(ShelfFault.class);
        assertThat(fault.getMessage()).as(how).contains("gudgeon mend").doesNotContain("Exception", "SQLITE_");
    }

    private void remove(String ending) throws IOException {
        Files.deleteIfExists(Path.of(database() + ending));
    }

    @Test
    void whatNoBackupHoldsIsToldAsLostAndWhatLiesBehindItIsKeptAsText() throws IOException {
        String id = written.keySet().iterator().next();
        byte[] damaged = sound.clone();
        int at = new String(damaged, StandardCharsets.ISO_8859_1).indexOf("50 of " + id);
        damaged[at] ^= 4;
        damagedThenMended("entry 50", damaged);
        Files.write(database(), damaged);
        MendedBuild build = new Mending(folder, CLOCK)
                .mend().builds().stream()
                        .filter(each -> each.id().equals(id))
                        .findFirst()
                        .orElseThrow();
        assertThat(build.entries()).isEqualTo(49);
        assertThat(build.lost()).isEqualTo(11);
        assertThat(Files.readString(build.kept().orElseThrow()).lines()).hasSize(10);
    }
}
