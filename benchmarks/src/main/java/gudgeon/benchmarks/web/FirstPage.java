package gudgeon.benchmarks.web;

import gudgeon.benchmarks.Sample;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** From starting the process to the whole of the first page, beside a bare server started likewise. */
public final class FirstPage {
    private static final int ROUNDS = 15;

    private FirstPage() {}

    /** Something that can be started. */
    private interface Start {
        Served now() throws IOException;
    }

    /**
     * Measures and prints.
     *
     * @param arguments the folder to write in
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory(Path.of(arguments[0]), "first-page");
        Path empty = folder.resolve("empty");
        Path used = folder.resolve("used");
        try (Shelf shelf = Shelf.open(used)) {
            HalfBuilt.on(shelf);
        }
        List<Double> bare = new ArrayList<>();
        List<Double> nothing = new ArrayList<>();
        List<Double> one = new ArrayList<>();
        for (int round = -1; round < ROUNDS; round++) {
            double asBare = milliseconds(Served::bare);
            double withNothing = milliseconds(() -> Served.gudgeon(empty));
            double withOne = milliseconds(() -> Served.gudgeon(used));
            if (round >= 0) {
                bare.add(asBare);
                nothing.add(withNothing);
                one.add(withOne);
            }
        }
        double rival = new Sample(bare).median();
        System.out.printf("bare server       %,.0f ms%n", rival);
        print("an empty shelf", new Sample(nothing), rival);
        print("a build of 500", new Sample(one), rival);
    }

    private static void print(String what, Sample sample, double rival) {
        System.out.printf(
                "%s    %,.0f ms, %.2f times, %,.0f ms more%n",
                what, sample.median(), sample.median() / rival, sample.median() - rival);
    }

    private static double milliseconds(Start start) throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        long begun = System.nanoTime();
        try (Served served = start.now()) {
            int status = client.send(HttpRequest.newBuilder(served.address()).build(), BodyHandlers.ofByteArray())
                    .statusCode();
            double took = (System.nanoTime() - begun) / 1e6;
            if (status != 200) {
                throw new IllegalStateException("the first page answered " + status);
            }
            return took;
        }
    }
}
