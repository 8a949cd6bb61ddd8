package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.LongRun;
import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import gudgeon.store.shelf.Verified;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Fifty devices read and write at once, on a shelf with many builds and one long one: nothing that was answered for is lost, no page fails,
 * and memory stays bounded. How fast it is, is measured elsewhere.
 */
class LoadTest {
    private static final int DEVICES = 50;
    private static final int SECONDS = LongRun.of(8, 3_600);
    private static final int BUILDS = LongRun.of(40, 1_000);
    private static final int ENTRIES = LongRun.of(600, 20_000);
    private static final int PHOTOS = LongRun.of(10, 2_000);
    /** Far more than the builds kept in memory take, far less than what is asked for in the run. */
    private static final long MOST_HEAP_GROWTH = 200L << 20;

    private static final List<String> PAGES =
            List.of("", "/strip", "/journal", "/journal?q=note", "/engine", "/assemble", "/measure", "/parts");

    @TempDir
    private Path folder;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();

    private static String book() {
        return Archetype.LYING_OVERHEAD_CAM_SINGLE.text();
    }

    @Test
    void fiftyDevicesLoseNothing() throws Exception {
        try (Shelf shelf = Shelf.open(folder)) {
            for (int n = 1; n < BUILDS; n++) {
                shelf.start("Engine no. " + n, book(), Found.TOGETHER, "bench");
            }
            String id = longBuild(shelf);
            try (Bench bench = Bench.start(shelf, new Photos(folder), List.of(), 0)) {
                work(bench.address(), id, Math.max(2, SECONDS / 6));
                long early = heap();
                work(bench.address(), id, SECONDS);
                assertThat(heap() - early).as("growth of the heap").isLessThan(MOST_HEAP_GROWTH);
            }
            List<String> keys = shelf.build(id).orElseThrow().entries().stream()
                    .map(Entry::key)
                    .toList();
            assertThat(keys).doesNotHaveDuplicates().containsAll(acknowledged);
            assertThat(acknowledged).hasSizeGreaterThan(DEVICES);
            assertThat(shelf.verify(id)).isInstanceOf(Verified.Sound.class);
        }
    }

    private String longBuild(Shelf shelf) throws IOException {
        String id = shelf.start("The long one", book(), Found.TOGETHER, "bench");
        Photos photos = new Photos(folder);
        List<Entry> entries = new ArrayList<>();
        for (int n = 0; n < ENTRIES; n++) {
            Fact fact =
                    n < PHOTOS ? new Photographed("piston", photo(photos, n), "") : new Noted("piston", "note " + n);
            entries.add(new Entry("before-" + n, Instant.EPOCH.plusSeconds(n), "bench", 1, fact));
        }
        assertThat(shelf.append(id, entries)).isInstanceOf(Outcome.Kept.class);
        return id;
    }

    private static String photo(Photos photos, int n) throws IOException {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(n);
        image.setRGB(0, 0, 64, 48, random.ints(64 * 48).toArray(), 0, 64);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return ((Kept.Photo) photos.keep(bytes.toByteArray())).hash();
    }

    private void work(URI bench, String id, int seconds) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        ExecutorService hands = Executors.newFixedThreadPool(DEVICES);
        List<Callable<Integer>> devices = new ArrayList<>();
        for (int device = 0; device < DEVICES; device++) {
            int number = device;
            devices.add(() -> device(bench, id, number, end));
        }
        for (Future<Integer> done : hands.invokeAll(devices)) {
            assertThat(done.get()).isPositive();
        }
        hands.shutdown();
    }

    /** One device: a page, then an entry, then the shelf, as hands would, only quicker. */
    private int device(URI bench, String id, int number, long end) throws IOException, InterruptedException {
        URI build = bench.resolve("builds/" + id);
        int rounds = 0;
        do {
            get(URI.create(build + PAGES.get((number + rounds) % PAGES.size())));
            tell(build, "load-" + number + "-" + System.nanoTime());
            get(rounds % 5 == 0 ? bench : build);
            rounds++;
        } while (System.nanoTime() < end);
        return rounds;
    }

    private void get(URI page) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(HttpRequest.newBuilder(page).build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(page.toString()).isEqualTo(200);
    }

    private void tell(URI build, String key) throws IOException, InterruptedException {
        String form = List.of(
                        "type=noted", "key=" + key, "text=" + URLEncoder.encode("said " + key, StandardCharsets.UTF_8))
                .stream()
                .collect(Collectors.joining("&"));
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(build + "/entries"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(form))
                        .build(),
                BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        acknowledged.add(key);
    }

    /** What is in use once the collector has been through; asked for twice, since it may pass over what was just let go. */
    private static long heap() {
        System.gc();
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
