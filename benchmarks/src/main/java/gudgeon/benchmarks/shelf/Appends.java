package gudgeon.benchmarks.shelf;

import gudgeon.benchmarks.Sample;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.TakenOff;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.journal.EntryJson;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** Entries acknowledged as on disk in a second, beside rows put into the same tables by a bare loop. */
public final class Appends {
    private static final int ROUNDS = 31;
    private static final int WARM_UP = 5;
    private static final int TRANSACTIONS = 100;

    private static final String HASH = "0".repeat(64);

    private final Shelf shelf;
    private final BareTable bare;
    private final String id;

    private Appends(Shelf shelf, BareTable bare) {
        this.shelf = shelf;
        this.bare = bare;
        this.id = shelf.start("Tarn 98", Archetype.LYING_OVERHEAD_CAM_SINGLE.text(), Found.TOGETHER, "tablet");
    }

    /**
     * Measures and prints.
     *
     * @param arguments the folder to write in; its disk is what is measured
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "appends");
        try (Shelf shelf = Shelf.open(folder.resolve("shelf"));
                BareTable bare = new BareTable(folder.resolve("bare.db"))) {
            Appends appends = new Appends(shelf, bare);
            for (int batch : new int[] {1, 10}) {
                appends.measure(batch, System.out);
            }
        }
    }

    /** Rounds of one and the other in turn, so that whatever else the machine does falls on both. */
    private void measure(int batch, PrintStream out) throws Exception {
        List<Double> kept = new ArrayList<>();
        List<Double> inserted = new ArrayList<>();
        for (int round = -WARM_UP; round < ROUNDS; round++) {
            double ours = append(batch);
            double theirs = insert(batch);
            if (round >= 0) {
                kept.add(ours);
                inserted.add(theirs);
            }
        }
        double ours = new Sample(kept).median();
        double theirs = new Sample(inserted).median();
        out.printf(
                "%2d in a transaction: %,.0f entries a second, bare loop %,.0f, ratio %.2f%n",
                batch, ours, theirs, ours / theirs);
    }

    private double append(int batch) {
        long last = shelf.build(id).orElseThrow().size();
        List<List<Entry>> batches = LongStream.range(0, TRANSACTIONS)
                .mapToObj(n -> entries(last + n * batch, batch))
                .toList();
        long begun = System.nanoTime();
        for (List<Entry> entries : batches) {
            if (!(shelf.append(id, entries) instanceof Outcome.Kept)) {
                throw new IllegalStateException("an entry was not kept");
            }
        }
        return perSecond(batch, begun);
    }

    private double insert(int batch) throws Exception {
        String line = EntryJson.write(entries(1, 1).get(0));
        long begun = System.nanoTime();
        for (int n = 0; n < TRANSACTIONS; n++) {
            bare.insert(batch, line, HASH);
        }
        return perSecond(batch, begun);
    }

    private static double perSecond(int batch, long begun) {
        return TRANSACTIONS * batch / ((System.nanoTime() - begun) / 1e9);
    }

    private static List<Entry> entries(long last, int count) {
        return LongStream.rangeClosed(last + 1, last + count)
                .mapToObj(number -> new Entry(
                        "key-" + number,
                        Instant.EPOCH.plusSeconds(60 * number),
                        "tablet",
                        last,
                        new TakenOff("spark-plug", 1, "bag " + number, "shelf", "as it came off")))
                .toList();
    }
}
