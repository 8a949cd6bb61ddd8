package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One build of several is damaged: the shelf opens, that build says what and what to do, and the others go on. */
class DamagedBuildTest {
    private static final String BOOK = Archetype.LYING_OVERHEAD_CAM_SINGLE.text();

    @TempDir
    private Path folder;

    private String begun(Shelf shelf, String name) {
        String id = shelf.start(name, BOOK, Found.TOGETHER, "bench");
        shelf.append(
                id, List.of(new Entry("k-" + name, Instant.EPOCH, "bench", 1, new Noted("", "a note on " + name))));
        return id;
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
    }

    @Test
    void theOthersGoOn() throws Exception {
        String damaged;
        String sound;
        try (Shelf shelf = Shelf.open(folder)) {
            damaged = begun(shelf, "Alder");
            sound = begun(shelf, "Birch");
        }
        flipABitOf("a note on Alder");
        try (Shelf shelf = Shelf.open(folder);
                Bench bench = Bench.start(shelf, new Photos(folder), List.of(), 0)) {
            HttpResponse<String> all = send(HttpRequest.newBuilder(bench.address()));
            assertThat(all.statusCode()).isEqualTo(200);
            assertThat(all.body()).contains("Alder", "Entry 2 was changed", "gudgeon mend", "Birch");
            HttpResponse<String> its =
                    send(HttpRequest.newBuilder(bench.address().resolve("builds/" + damaged)));
            assertThat(its.statusCode()).isEqualTo(503);
            assertThat(its.body())
                    .contains("The journal of build " + damaged + " is damaged", "Entry 2 was changed", "gudgeon mend")
                    .doesNotContain("Exception");
            HttpResponse<String> told =
                    send(HttpRequest.newBuilder(bench.address().resolve("builds/" + damaged + "/entries"))
                            .header("Accept", "application/json")
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(BodyPublishers.ofString("type=noted&text=x")));
            assertThat(told.statusCode()).isEqualTo(503);
            assertThat(told.body()).startsWith("{").contains("\"state\":\"later\"", "Entry 2 was changed");
            for (String page : List.of("", "/strip", "/measure", "/journal", "/engine", "/parts")) {
                assertThat(send(HttpRequest.newBuilder(bench.address().resolve("builds/" + sound + page)))
                                .statusCode())
                        .as(page)
                        .isEqualTo(200);
            }
            HttpResponse<String> begun =
                    send(HttpRequest.newBuilder(bench.address().resolve("builds"))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .POST(BodyPublishers.ofString("name=Cedar&found=together&archetype="
                                    + Archetype.LYING_OVERHEAD_CAM_SINGLE.id())));
            assertThat(begun.statusCode()).isEqualTo(303);
            assertThat(shelf.builds()).hasSize(3);
        }
    }

    private void flipABitOf(String text) throws IOException {
        Path file = folder.resolve("shelf.db");
        byte[] bytes = Files.readAllBytes(file);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(text);
        assertThat(at).isPositive();
        bytes[at] ^= 1;
        Files.write(file, bytes);
    }
}
