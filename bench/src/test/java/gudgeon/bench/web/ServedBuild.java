package gudgeon.bench.web;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A new build that is served, and asked as a browser without a script would ask. */
final class ServedBuild implements AutoCloseable {
    private final Shelf shelf;
    private final Bench bench;
    private final String id;

    ServedBuild(Path folder, String book, Found found) {
        shelf = Shelf.open(folder);
        id = shelf.start("Tarn 98 no. 1187", book, found, "bench");
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    Build build() {
        return shelf.build(id).orElseThrow();
    }

    private HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(bench.address().resolve("builds/" + id + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(at(path));
    }

    String page(String path) throws IOException, InterruptedException {
        return get(path).body();
    }

    /** Sends a form's fields, each a name followed by its value; a name may come again. */
    HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i + 1 < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(URLEncoder.encode(fields[i], StandardCharsets.UTF_8))
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(at(path).header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
    }

    HttpResponse<String> tell(String... fields) throws IOException, InterruptedException {
        return post("/entries", fields);
    }

    /** Sends a file in a form's field. */
    HttpResponse<String> upload(String path, String field, byte[] content) throws IOException, InterruptedException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(
                lines("--edge", "Content-Disposition: form-data; name=\"" + field + "\"; filename=\"a\"", "", ""));
        body.writeBytes(content);
        body.writeBytes(lines("", "--edge--", ""));
        return send(at(path).header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
    }

    private static byte[] lines(String... lines) {
        return String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        bench.close();
        shelf.close();
    }
}
