package gudgeon.store.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.LongRun;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The power goes while entries are written, at moments drawn by seed, and the disk drops, keeps or tears each sector that was not
 * synchronised. No entry that was acknowledged may be lost, nothing may be there by half, and it goes on from there. That SQLite
 * synchronises in this order is what its documentation says: https://www.sqlite.org/atomiccommit.html and https://www.sqlite.org/wal.html.
 */
class PowerLossTest {
    private static final Clock CLOCK = Clock.fixed(Small.NOW, ZoneOffset.UTC);
    private static final int SEEDS = LongRun.of(1, 20);
    /** So many that the log is copied into the database and begun anew. */
    private static final int BATCHES = LongRun.of(90, 250);
    /** Of so many batches, one sees the power go. */
    private static final int SELDOM = LongRun.of(12, 2);
    /** How often the power goes where the log is copied or begun anew. */
    private static final int OFTEN = LongRun.of(3, 10);

    private static final int BATCH = 4;
    private static final int LENGTH = 3_900;

    @TempDir
    Path folder;

    @Test
    void whatWasAcknowledgedIsThereWhereverThePowerGoes() throws IOException {
        for (int seed = 0; seed < SEEDS; seed++) {
            writtenWhileThePowerGoes("seed " + seed, folder.resolve("data-" + seed), new Random(seed));
        }
    }

    private void writtenWhileThePowerGoes(String seed, Path data, Random chance) throws IOException {
        int copied = 0;
        int begunAnew = 0;
        String id;
        Moment last;
        try (Shelf shelf = Shelf.open(data, CLOCK)) {
            id = shelf.start("Tarn 98", Small.book(), Found.IN_PIECES, "bench");
            last = Moment.of(data);
            for (int batch = 0; batch < BATCHES; batch++) {
                Moment before = last;
                append(shelf, id, "k" + batch, chance);
                last = Moment.of(data);
                boolean copies = !before.isOfOneDatabaseWith(last);
                boolean begins = !before.isOfOneLogWith(last);
                copied += copies ? 1 : 0;
                begunAnew += begins ? 1 : 0;
                long acknowledged = 1L + (long) BATCH * batch;
                String when = seed + ", batch " + batch;
                int cuts = copies || begins ? OFTEN : chance.nextInt(SELDOM) == 0 ? 1 : 0;
                for (int cut = 0; cut < cuts; cut++) {
                    cut(when, id, before.cutInLog(last, chance), acknowledged, chance);
                }
                for (int cut = 0; copies && cut < cuts; cut++) {
                    cut(when, id, before.cutInCheckpoint(last, chance), acknowledged + BATCH, chance);
                }
            }
        }
        Moment closed = Moment.of(data);
        long all = 1L + (long) BATCH * BATCHES;
        for (int cut = 0; cut < OFTEN; cut++) {
            cut(seed + ", closing", id, last.cutInCheckpoint(closed, chance), all, chance);
        }
        cut(seed + ", log not gone", id, last.withDatabaseOf(closed), all, chance);
        assertThat(copied).as("times that the log was copied").isPositive();
        assertThat(begunAnew).as("times that the log was begun anew").isPositive();
    }

    private static void append(Shelf shelf, String id, String key, Random chance) {
        List<Entry> batch = new ArrayList<>();
        for (int n = 0; n < BATCH; n++) {
            String text = key + " " + "—".repeat(chance.nextInt(LENGTH));
            batch.add(Small.entry(key + "-" + n, "bench", 1, new Noted("", text)));
        }
        assertThat(shelf.append(id, batch)).isInstanceOf(Outcome.Kept.class);
    }

    /** Starts again on what the disk holds; of the batch that was on its way all is there, or nothing. */
    private void cut(String when, String id, Moment held, long acknowledged, Random chance) throws IOException {
        Path cut = folder.resolve("cut");
        held.layInto(cut, chance);
        try (Shelf shelf = Shelf.open(cut, CLOCK)) {
            assertThat(shelf.verify(id)).as(when).isInstanceOf(Verified.Sound.class);
            assertThat(shelf.build(id).orElseThrow().size()).as(when).isIn(acknowledged, acknowledged + BATCH);
            append(shelf, id, "after", chance);
        }
        try (Database database = Database.open(cut.resolve("shelf.db"))) {
            assertThat(database.integrity()).as(when).isEqualTo("ok");
        }
    }
}
