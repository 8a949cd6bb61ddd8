package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.bench.web.page.Assets;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is sent to do harm. */
class AttackTest {
    @TempDir
    private static Path folder;

    private static Shelf shelf;
    private static Bench bench;

    @BeforeAll
    static void start() throws IOException {
        shelf = Shelf.open(folder);
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
        Files.writeString(folder.resolve("secret.txt"), "not for pages");
    }

    @AfterAll
    static void stop() {
        bench.close();
        shelf.close();
    }

    private static String asked(String line, String... head) throws IOException {
        return Elsewhere.asked(
                bench.address(),
                line + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                        + Stream.of(head).map(one -> one + "\r\n").reduce("", String::concat) + "\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ASSETS/../secret.txt",
                "ASSETS/..%2f..%2fsimplelogger.properties",
                "ASSETS/%2e%2e/%2e%2e/simplelogger.properties",
                "ASSETS/..;/..;/simplelogger.properties",
                "ASSETS/..\\..\\simplelogger.properties",
                "ASSETS//../../../../../simplelogger.properties",
                "ASSETS/%00/../x",
                "/three/..%2f..%2f..%2fpom.xml",
                "/three/%2e%2e%2fthree.js",
                "/builds/..%2f..%2fsecret.txt/photos/x",
                "/builds/x/photos/..%2f..%2f..%2fsecret.txt"
            })
    void noAddressLeadsOutOfAFolder(String path) throws IOException {
        assertThat(asked("GET " + path.replace("ASSETS", Assets.FOLDER)))
                .matches(Pattern.compile("HTTP/1.1 4\\d\\d.*", Pattern.DOTALL))
                .doesNotContain("not for pages", "simpleLogger.", "<project", "\tat ");
    }

    @Test
    void everyAnswerTellsTheBrowserWhatNotToDo() throws Exception {
        for (String path :
                List.of("/", "/marks", Assets.at("page.css"), Assets.at("queue.js"), "/nowhere", "/light.css")) {
            HttpHeaders head = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(bench.address().resolve(path))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .headers();
            assertThat(head.firstValue("Content-Security-Policy"))
                    .as(path)
                    .hasValueSatisfying(policy -> assertThat(policy)
                            .contains("default-src 'self'", "object-src 'none'", "base-uri 'none'")
                            .contains("form-action 'self'", "frame-ancestors 'none'")
                            .doesNotContain("unsafe", "*"));
            assertThat(head.firstValue("X-Content-Type-Options")).as(path).hasValue("nosniff");
            assertThat(head.firstValue("X-Frame-Options")).as(path).hasValue("DENY");
            assertThat(head.firstValue("Referrer-Policy")).as(path).hasValue("same-origin");
            assertThat(head.firstValue("Cross-Origin-Resource-Policy")).as(path).hasValue("same-origin");
            assertThat(head.firstValue("Server")).as(path).isEmpty();
        }
    }

    @Test
    void whatIsTooLargeOrWithoutLengthIsRefused() throws IOException {
        String form = "Content-Type: application/x-www-form-urlencoded";
        assertThat(asked("POST /builds", form, "Content-Length: " + (Safeguards.LARGEST_FORM + 1)))
                .startsWith("HTTP/1.1 413")
                .contains("too large: more than 4 MB");
        assertThat(asked(
                        "POST /builds",
                        "Content-Type: multipart/form-data; boundary=x",
                        "Content-Length: " + (Safeguards.LARGEST_WITH_FILE + 1)))
                .startsWith("HTTP/1.1 413");
        assertThat(asked("POST /builds", form, "Transfer-Encoding: chunked")).startsWith("HTTP/1.1 411");
        assertThat(asked("GET /" + "x".repeat(20_000))).startsWith("HTTP/1.1 414");
        assertThat(asked("GET /", "X-Long: " + "x".repeat(20_000))).startsWith("HTTP/1.1 431");
        assertThat(shelf.builds()).isEmpty();
    }

    @Test
    void aBookThatIsABombIsRefused() {
        StringBuilder laughs = new StringBuilder("a0: &a0 [ha, ha, ha, ha, ha, ha, ha, ha, ha]\n");
        for (int n = 1; n < 12; n++) {
            laughs.append("a")
                    .append(n)
                    .append(": &a")
                    .append(n)
                    .append(" [")
                    .append(("*a" + (n - 1) + ",").repeat(9))
                    .append("]\n");
        }
        assertThat(new EngineBookReader().read("book: 1\n" + laughs)).isInstanceOf(BookReading.Refused.class);
        assertThat(new EngineBookReader().read("book: " + "[".repeat(100_000))).isInstanceOf(BookReading.Refused.class);
    }

    /** Escaping is the engine's; a page with script, style or a handler of its own would need a looser policy. */
    @Test
    void noTemplateGoesAroundTheEngine() throws IOException {
        Pattern own = Pattern.compile("\\$unsafe|javascript:|<script(?![^>]* src=)|\\son[a-z]+=");
        try (Stream<Path> templates = Files.walk(Path.of("src", "main", "jte"))) {
            List<Path> all = templates.filter(Files::isRegularFile).toList();
            assertThat(all).hasSizeGreaterThan(80);
            for (Path template : all) {
                String text = Files.readString(template);
                assertThat(own.matcher(text).find()).as("%s", template).isFalse();
                if (text.contains("@template.layout(")) {
                    assertThat(text).as("%s", template).doesNotContain(" style=", "<style");
                }
            }
        }
    }
}
