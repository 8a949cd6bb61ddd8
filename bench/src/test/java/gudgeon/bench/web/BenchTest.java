package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the server answers, whom, and with what words. */
class BenchTest {
    @TempDir
    private static Path folder;

    private static Shelf shelf;
    private static Bench bench;

    @BeforeAll
    static void start() {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterAll
    static void stop() {
        bench.close();
        shelf.close();
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        URI uri = bench.address().resolve(path);
        return HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void saysThatThereIsNoBuildYet() throws Exception {
        assertThat(get("/").body()).contains("No build yet");
    }

    @ParameterizedTest
    @CsvSource({"/nowhere", "/books/none/fit", "/three/three.cjs", "/three/x.js", "/assets/none.css"})
    void answersAnUnknownAddressWithASentence(String path) throws Exception {
        HttpResponse<String> answer = get(path);
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no such page").doesNotContain("\tat ", "Exception");
    }

    @Test
    void letsThePageLoadNothingFromOutside() throws Exception {
        assertThat(get("/").headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy ->
                        assertThat(policy).contains("default-src 'self'").doesNotContain("unsafe"));
    }

    @Test
    void servesTheDrawingLibraryFromItsJar() throws Exception {
        HttpResponse<String> answer = get("/three/three.module.min.js");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("text/javascript"));
    }

    @ParameterizedTest
    @CsvSource({"localhost, 200", "127.0.0.1:8080, 200", "bench.example, 403", "127.0.0.1.example, 403"})
    void answersOnlyToTheLoopbacksNames(String host, int status) throws Exception {
        assertThat(statusFor(host)).isEqualTo(status);
    }

    /** Asked by hand, because Java's client does not let a program set the name. */
    private static int statusFor(String host) throws IOException {
        int port = bench.address().getPort();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            OutputStream out = socket.getOutputStream();
            out.write(("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            InputStream in = socket.getInputStream();
            String answer = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Integer.parseInt(answer.split(" ", 3)[1]);
        }
    }
}
