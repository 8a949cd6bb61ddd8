package gudgeon.benchmarks.web;

import gudgeon.benchmarks.Sample;
import gudgeon.benchmarks.shelf.BareInserts;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;

/**
 * An hour of fifty devices' work done as fast as it goes, on a shelf of a thousand builds with one of twenty thousand entries and two
 * thousand photos, beside a bare server and a bare database in the same run. Writes its table into the document on benchmarks.
 */
public final class LongLife {
    private static final int BUILDS = 1_000;
    private static final int ENTRIES = 20_000;
    private static final int PHOTOS = 2_000;
    private static final int DEVICES = 50;
    /** What one device does in an hour: a page, an entry and a page each minute. */
    private static final int MINUTES = 60;

    private static final int ASKED = 15;
    private static final List<String> PAGES = List.of("", "/strip", "/journal", "/engine", "/assemble", "/measure");
    private static final String BOOK = Archetype.LYING_OVERHEAD_CAM_SINGLE.text();
    private static final Path DOCUMENT = Path.of("docs/benchmarks.md");

    private final List<String> rows = new ArrayList<>();
    private final Asking asking = new Asking();

    /**
     * Measures, prints and writes.
     *
     * @param arguments the folder to write data in
     */
    public static void main(String[] arguments) throws Exception {
        Path data = Files.createTempDirectory(Path.of(arguments[0]), "long-life");
        LongLife life = new LongLife();
        String id = life.shelved(data);
        try (Served bare = Served.bare();
                Served gudgeon = Served.gudgeon(data)) {
            life.measure(bare, gudgeon, id, data);
        }
        String table = "| what | measured | beside |\n| --- | --- | --- |\n" + String.join("\n", life.rows) + "\n";
        System.out.println(table);
        String text = Files.readString(DOCUMENT);
        String begin = "<!-- load: begin -->\n";
        Files.writeString(
                DOCUMENT,
                text.substring(0, text.indexOf(begin) + begin.length())
                        + table
                        + text.substring(text.indexOf("<!-- load: end -->")));
    }

    private void row(String what, String measured, String beside) {
        rows.add("| " + what + " | " + measured + " | " + beside + " |");
        System.out.println(rows.get(rows.size() - 1));
    }

    /** A thousand builds; the one with all the entries is begun last, and its id given. */
    private String shelved(Path data) throws IOException {
        try (Shelf shelf = Shelf.open(data)) {
            for (int n = 1; n < BUILDS; n++) {
                String id = shelf.start("Engine no. " + n, BOOK, Found.TOGETHER, "bench");
                kept(shelf, id, notes(40));
            }
            String id = shelf.start("The long one", BOOK, Found.TOGETHER, "bench");
            Photos photos = new Photos(data);
            List<Entry> entries = new ArrayList<>(notes(ENTRIES - PHOTOS));
            for (int n = 0; n < PHOTOS; n++) {
                entries.add(entry("photo-" + n, new Fact.Photographed("piston", photo(photos, n), "")));
            }
            kept(shelf, id, entries);
            return id;
        }
    }

    private static void kept(Shelf shelf, String id, List<Entry> entries) {
        if (!(shelf.append(id, entries) instanceof Outcome.Kept)) {
            throw new IllegalStateException("the journal was not kept");
        }
    }

    private static List<Entry> notes(int count) {
        return IntStream.range(0, count)
                .mapToObj(n -> entry("note-" + n, new Fact.Noted("piston", "note " + n)))
                .toList();
    }

    private static Entry entry(String key, Fact fact) {
        return new Entry(key, Instant.now(), "bench", 1, fact);
    }

    private static String photo(Photos photos, int seed) throws IOException {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, 64, 48, new Random(seed).ints(64 * 48).toArray(), 0, 64);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return ((Kept.Photo) photos.keep(bytes.toByteArray())).hash();
    }

    private void measure(Served bare, Served gudgeon, String id, Path data) throws Exception {
        URI build = gudgeon.address().resolve("builds/" + id);
        List<Long> heap = new ArrayList<>();
        heap.add(Heap.usedBy(gudgeon.process()));
        row("shelf of 1,000 builds, first page after the start", ms(asking.get(gudgeon.address())), "");
        row("build of 20,000 entries and 2,000 photos, first page after the start", ms(asking.get(build)), "");
        double alone = asked(bare.address());
        row("bare server's one sentence", ms(alone), "1");
        row("shelf of 1,000 builds", ms(asked(gudgeon.address())), "");
        for (String page : PAGES) {
            double took = asked(URI.create(build + page));
            row("its page " + (page.isEmpty() ? "today" : page.substring(1)), ms(took), times(took / alone));
        }
        heap.add(Heap.usedBy(gudgeon.process()));
        double inserts = BareInserts.aSecond(data.resolve("bare.db"));
        row("bare database, rows of one transaction each", "%,.0f a second".formatted(inserts), "1");
        List<Double> pages = new ArrayList<>();
        List<Double> entries = new ArrayList<>();
        double took = 0;
        for (int third = 0; third < 3; third++) {
            took += work(build, MINUTES / 3, pages, entries);
            heap.add(Heap.usedBy(gudgeon.process()));
        }
        double answers = DEVICES * MINUTES * 3 / took;
        row("an hour of 50 devices, as fast as it goes", "%.0f s".formatted(took), "");
        double bareAnswers = bareCrowd(bare.address());
        row("answers a second in it", "%,.0f".formatted(answers), "bare server %,.0f, ratio %.2f".formatted(bareAnswers, answers / bareAnswers));
        row("pages in it, median and 95 %", both(pages), "");
        row(
                "entries in it, median and 95 %",
                both(entries),
                "%,.0f a second, of the bare database's %.3f".formatted(DEVICES * MINUTES / took, DEVICES * MINUTES / took / inserts));
        row(
                "heap after collection: started, pages shown, 20, 40 and 60 minutes",
                String.join(", ", heap.stream().map(bytes -> (bytes >> 20) + " MB").toList()),
                "");
    }

    private double asked(URI page) throws IOException, InterruptedException {
        List<Double> times = new ArrayList<>();
        for (int n = 0; n < ASKED; n++) {
            times.add(asking.get(page));
        }
        return new Sample(times).median();
    }

    /** Has each device do so many minutes' work; gives the seconds that took. */
    private double work(URI build, int minutes, List<Double> pages, List<Double> entries) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(DEVICES);
        long begun = System.nanoTime();
        List<Future<List<List<Double>>>> all = new ArrayList<>();
        for (int device = 0; device < DEVICES; device++) {
            int number = device;
            all.add(hands.submit(() -> device(build, number, minutes)));
        }
        for (Future<List<List<Double>>> one : all) {
            pages.addAll(one.get().get(0));
            entries.addAll(one.get().get(1));
        }
        hands.shutdown();
        return (System.nanoTime() - begun) / 1e9;
    }

    private List<List<Double>> device(URI build, int number, int minutes) throws IOException, InterruptedException {
        List<Double> pages = new ArrayList<>();
        List<Double> entries = new ArrayList<>();
        for (int minute = 0; minute < minutes; minute++) {
            pages.add(asking.get(URI.create(build + PAGES.get((number + minute) % PAGES.size()))));
            entries.add(asking.tell(URI.create(build + "/entries"), "life-" + number + "-" + System.nanoTime()));
            pages.add(asking.get(URI.create(build + "/assemble")));
        }
        return List.of(pages, entries);
    }

    private double bareCrowd(URI bare) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(DEVICES);
        long begun = System.nanoTime();
        List<Future<Double>> all = new ArrayList<>();
        for (int ask = 0; ask < DEVICES * MINUTES * 3; ask++) {
            all.add(hands.submit(() -> asking.get(bare)));
        }
        for (Future<Double> one : all) {
            one.get();
        }
        hands.shutdown();
        return all.size() / ((System.nanoTime() - begun) / 1e9);
    }

    private static String both(List<Double> times) {
        Sample sample = new Sample(times);
        return ms(sample.median()) + ", " + ms(sample.quantile(0.95));
    }

    private static String ms(double milliseconds) {
        return (milliseconds < 10 ? "%.1f ms" : "%,.0f ms").formatted(milliseconds);
    }

    private static String times(double ratio) {
        return "%.0f times".formatted(ratio);
    }
}
