package gudgeon.benchmarks.web;

import gudgeon.benchmarks.Sample;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Pages of a half-built engine asked for by one client and by fifty, beside the one route of a bare server. */
public final class Crowd {
    private static final int CLIENTS = 50;
    private static final int ROUNDS = 4;
    private static final double WARM_UP_S = 3;
    private static final double TURN_S = 2;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final ExecutorService clients = Executors.newFixedThreadPool(CLIENTS);

    /**
     * Measures and prints.
     *
     * @param arguments the folder to write in
     */
    public static void main(String[] arguments) throws Exception {
        Path data = Files.createTempDirectory(Path.of(arguments[0]), "crowd");
        String id;
        try (Shelf shelf = Shelf.open(data)) {
            id = HalfBuilt.on(shelf);
        }
        try (Served bare = Served.bare();
                Served gudgeon = Served.gudgeon(data)) {
            Map<String, URI> pages = new LinkedHashMap<>();
            pages.put("bare", bare.address());
            pages.put("shelf", gudgeon.address());
            for (String page : List.of("", "/strip", "/assemble", "/engine", "/journal")) {
                pages.put(
                        page.isEmpty() ? "today" : page.substring(1),
                        gudgeon.address().resolve("builds/" + id + page));
            }
            new Crowd().measure(pages);
        }
    }

    private void measure(Map<String, URI> pages) throws Exception {
        for (URI page : pages.values()) {
            answers(page, CLIENTS, WARM_UP_S);
        }
        System.out.printf(
                "%-10s %8s %10s %10s %10s %10s%n", "page", "kB", "alone ms", "median ms", "95 % ms", "a second");
        Map<String, Double> alone = new LinkedHashMap<>();
        for (Map.Entry<String, URI> page : pages.entrySet()) {
            alone.put(page.getKey(), new Sample(answers(page.getValue(), 1, TURN_S)).median());
        }
        Map<String, List<Double>> crowded = inTurn(pages);
        for (Map.Entry<String, URI> page : pages.entrySet()) {
            Sample sample = new Sample(crowded.get(page.getKey()));
            System.out.printf(
                    "%-10s %8.1f %10.2f %10.1f %10.1f %,10.0f%n",
                    page.getKey(),
                    ask(page.getValue()).body().length / 1000.0,
                    alone.get(page.getKey()),
                    sample.median(),
                    sample.quantile(0.95),
                    sample.sorted().size() / (ROUNDS * TURN_S));
        }
        clients.shutdown();
    }

    /** Each page has its turn, again and again, so that whatever else the machine does falls on all. */
    private Map<String, List<Double>> inTurn(Map<String, URI> pages) throws Exception {
        Map<String, List<Double>> answers = new LinkedHashMap<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (Map.Entry<String, URI> page : pages.entrySet()) {
                answers.computeIfAbsent(page.getKey(), key -> new ArrayList<>())
                        .addAll(answers(page.getValue(), CLIENTS, TURN_S));
            }
        }
        return answers;
    }

    /** The times of all answers in milliseconds; each client asks again as soon as it has its answer. */
    private List<Double> answers(URI page, int count, double seconds) throws Exception {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        List<Callable<List<Double>>> asking = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            asking.add(() -> asked(page, end));
        }
        List<Double> all = new ArrayList<>();
        for (Future<List<Double>> each : clients.invokeAll(asking)) {
            all.addAll(each.get());
        }
        return all;
    }

    private List<Double> asked(URI page, long end) throws IOException, InterruptedException {
        List<Double> times = new ArrayList<>();
        while (System.nanoTime() < end) {
            long begun = System.nanoTime();
            ask(page);
            times.add((System.nanoTime() - begun) / 1e6);
        }
        return times;
    }

    private HttpResponse<byte[]> ask(URI page) throws IOException, InterruptedException {
        HttpResponse<byte[]> answer = client.send(HttpRequest.newBuilder(page).build(), BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) {
            throw new IllegalStateException(page + " answered " + answer.statusCode());
        }
        return answer;
    }
}
