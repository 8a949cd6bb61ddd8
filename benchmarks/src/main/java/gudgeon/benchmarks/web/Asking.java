package gudgeon.benchmarks.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;

/** Asks a server, and says how many milliseconds the whole answer took; an answer that is none ends the run. */
final class Asking {
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    double get(URI page) throws IOException, InterruptedException {
        return timed(HttpRequest.newBuilder(page).build(), 200);
    }

    /** Enters a note. */
    double tell(URI entries, String key) throws IOException, InterruptedException {
        return timed(
                HttpRequest.newBuilder(entries)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString("type=noted&key=" + key + "&text=said+" + key))
                        .build(),
                303);
    }

    private double timed(HttpRequest request, int wanted) throws IOException, InterruptedException {
        long begun = System.nanoTime();
        HttpResponse<byte[]> answer = client.send(request, BodyHandlers.ofByteArray());
        if (answer.statusCode() != wanted) {
            throw new IllegalStateException(request.uri() + " answered " + answer.statusCode());
        }
        return (System.nanoTime() - begun) / 1e6;
    }
}
