package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import gudgeon.store.shelf.Mending.Mended;
import gudgeon.store.shelf.Mending.MendedBuild;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process was killed, and before the next start its write-ahead log is damaged, which SQLite passes over in silence: it is missed at the
 * start, nothing is touched, and mending brings back all but what lay in the damaged page.
 */
class DamagedLogTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);
    private static final int SEEDS = LongRun.of(16, 2_000);
    private static final int ENTRIES = 60;
    private static final int LOG_HEADER = 32;

    @TempDir
    Path folder;

    private String id = "";
    private List<Entry> written = List.of();
    private Moment killed = new Moment(new byte[0], new byte[0], new byte[0]);

    @BeforeEach
    void sixtyEntriesInTheLog() throws IOException {
        Path first = folder.resolve("first");
        try (Shelf shelf = Shelf.open(first, CLOCK)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
            for (int n = 2; n <= ENTRIES; n++) {
                shelf.append(id, List.of(Small.entry("k" + n, "bench", 1, new Noted("", "note " + n))));
            }
            written = List.copyOf(shelf.build(id).orElseThrow().entries());
            killed = Moment.of(first);
        }
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Mended mendedAfter(byte[] log, Random chance) throws IOException {
        killed.withLog(log).layInto(data(), chance);
        assertThatThrownBy(() -> Shelf.open(data(), CLOCK))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("entries, and " + ENTRIES + " were written")
                .hasMessageContaining("gudgeon mend");
        assertThat(Moment.of(data()).log()).as("nothing was touched").isEqualTo(log);
        return new Mending(data(), CLOCK).mend();
    }

    private long entriesNow() {
        try (Shelf shelf = Shelf.open(data(), CLOCK)) {
            if (shelf.builds().isEmpty()) {
                return 0;
            }
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
            List<Entry> now = List.copyOf(shelf.build(id).orElseThrow().entries());
            assertThat(now).isEqualTo(written.subList(0, now.size()));
            return now.size();
        }
    }

    @Test
    void aFlippedBitIsMissedAndWhatIsWholeBehindItComesBack() throws IOException {
        int all = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Random chance = new Random(seed);
            byte[] log = killed.log();
            int at = LOG_HEADER + chance.nextInt(log.length - LOG_HEADER);
            log[at] ^= (byte) (1 << chance.nextInt(8));
            Mended mended = mendedAfter(log, chance);
            String how = "seed " + seed + ", byte " + at;
            assertThat(mended.builds()).as(how).hasSize(1);
            MendedBuild build = mended.builds().get(0);
            assertThat(entriesNow()).as(how).isEqualTo(build.entries());
            assertThat(build.entries() + build.lost()).as(how).isBetween((long) ENTRIES - 2, (long) ENTRIES);
            all += build.entries() == ENTRIES ? 1 : 0;
        }
        assertThat(all)
                .as("a page is written again with every entry, so that most come back whole")
                .isGreaterThan(SEEDS / 2);
    }

    @Test
    void aLogCutShortOrGoneIsMissed() throws IOException {
        Random chance = new Random(1);
        byte[] half = Arrays.copyOf(killed.log(), killed.log().length / 2);
        assertThat(mendedAfter(half, chance).builds()).hasSize(1);
        assertThat(entriesNow()).isBetween(2L, ENTRIES - 1L);
        mendedAfter(new byte[0], chance);
        assertThat(entriesNow()).isLessThan(ENTRIES);
    }

    @Test
    void aDatabaseThatIsGoneIsMissedAndABackupMakesItGoodAgain() throws IOException {
        killed.layInto(data(), new Random(1));
        try (Shelf shelf = Shelf.open(data(), CLOCK)) {
            shelf.backUp();
        }
        Files.delete(data().resolve("shelf.db"));
        assertThatThrownBy(() -> Shelf.open(data(), CLOCK))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining("0 entries");
        assertThat(new Mending(data(), CLOCK).mend().builds()).hasSize(1);
        assertThat(entriesNow()).isEqualTo(ENTRIES);
    }

    @Test
    void aNoteThatCanNotBeReadMissesNothing() throws IOException {
        for (byte[] note : List.of(new byte[0], new byte[85], Arrays.copyOf(killed.note(), 40))) {
            killed.withNote(note).layInto(data(), new Random(1));
            assertThat(entriesNow()).isEqualTo(ENTRIES);
        }
        byte[] raised = killed.note();
        raised[0] = '9';
        killed.withNote(raised).layInto(data(), new Random(1));
        assertThat(entriesNow()).isEqualTo(ENTRIES);
    }
}
