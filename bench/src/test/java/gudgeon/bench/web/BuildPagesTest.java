package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.archetype.Archetype;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pages of a build answer to forms without a script: what is kept, what is refused, and with what words. */
class BuildPagesTest {
    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private String id;

    @BeforeEach
    void start() {
        shelf = Shelf.open(folder);
        id = shelf.start("Lying single", Archetype.LYING_OVERHEAD_CAM_SINGLE.text(), Found.TOGETHER, "bench");
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterEach
    void stop() {
        bench.close();
        shelf.close();
    }

    private Build build() {
        return shelf.build(id).orElseThrow();
    }

    private URI at(String path) {
        return bench.address().resolve("builds/" + id + path);
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> get(String path) throws Exception {
        return send(HttpRequest.newBuilder(at(path)));
    }

    private HttpResponse<String> post(String path, Map<String, String> fields) throws Exception {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private HttpResponse<String> takenOffWithPhoto(byte[] photo) throws Exception {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        Map<String, String> fields =
                Map.of("type", "taken-off", "key", "with-photo-1", "position", "spark-plug", "bag", "7");
        fields.forEach((name, value) -> part(body, "name=\"" + name + "\"", value.getBytes(StandardCharsets.UTF_8)));
        part(body, "name=\"photo\"; filename=\"a.png\"", photo);
        lines(body, "--edge--");
        return send(HttpRequest.newBuilder(at("/entries"))
                .header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
    }

    private static void part(ByteArrayOutputStream body, String disposition, byte[] content) {
        lines(body, "--edge", "Content-Disposition: form-data; " + disposition, "");
        body.writeBytes(content);
        lines(body, "");
    }

    private static void lines(ByteArrayOutputStream body, String... lines) {
        for (String line : lines) {
            body.writeBytes((line + '\r' + '\n').getBytes(StandardCharsets.UTF_8));
        }
    }

    @Test
    void aPhotoIsKeptWithWhatCameOffAndShownSmallAndLarge() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB), "png", png);
        assertThat(takenOffWithPhoto(png.toByteArray()).statusCode()).isEqualTo(303);
        Fact last = build().entry(build().size()).fact();
        assertThat(last).isInstanceOf(Fact.Photographed.class);
        Fact.Photographed photo = (Fact.Photographed) last;
        assertThat(photo.on()).isEqualTo("spark-plug");
        assertThat(get("/strip").body()).contains("/photos/" + photo.photo() + "?small=1");
        for (String copy : List.of("", "?small=1")) {
            HttpResponse<String> answer = get("/photos/" + photo.photo() + copy);
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Type")).hasValue("image/jpeg");
        }
    }

    @Test
    void aFileThatIsNoPictureIsRefusedAndNothingIsWritten() throws Exception {
        long before = build().size();
        HttpResponse<String> answer = takenOffWithPhoto("not a picture".getBytes(StandardCharsets.UTF_8));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("neither a JPEG nor a PNG");
        assertThat(build().size()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "taken-off | position | nowhere | no position",
                "step-begun | step | first-start | Hold point before",
                "check-waived | check | gears-by-hand | why work goes on",
                "check | check | gears-by-hand | not said whether the check passed",
                "undone | of | nothing-there | nothing with the id",
                "noted | on | piston | Write the note",
                "time-spent | minutes | many | not a whole number",
                "tight | forward | 900 | counts from 0",
                "made-up | position | piston | says nothing Gudgeon knows"
            })
    void whatCanNotBeTakenDownIsAnsweredWithASentence(String type, String field, String value, String said)
            throws Exception {
        long before = build().size();
        HttpResponse<String> answer = post("/entries", Map.of("type", type, field, value));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(said).doesNotContain("Exception", "\tat ");
        assertThat(build().size()).isEqualTo(before);
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() throws Exception {
        String body = post("/entries", Map.of("type", "taken-off", "position", "nowhere", "count", "two"))
                .body();
        assertThat(body).contains("no position", "not a whole number");
    }

    @Test
    void whatLiesInTheBoxesIsTickedOffInOneGo() throws Exception {
        id = shelf.start("In boxes", Archetype.SIDE_VALVE_STATIONARY.text(), Found.IN_PIECES, "bench");
        assertThat(get("").body()).contains("Say what lies in the boxes");
        assertThat(get("/strip").body()).contains("What lies in the boxes", "crankcase");
        assertThat(post("/entries", Map.of("type", "found-loose", "in", "crankcase", "bag", "crate 1"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(build().partFor("crankcase")).isPresent();
        assertThat(get("").body()).contains("Lay out the clean crankcase").doesNotContain("Say what lies in the boxes");
        assertThat(post("/entries", Map.of("type", "found-loose")).body()).contains("Nothing is ticked");
    }

    @Test
    void aNewGasketIsTakenInHandWhereItIsNeeded() throws Exception {
        post("/entries", Map.of("type", "taken-off", "position", "rocker-cover-gasket"));
        assertThat(get("/assemble?at=fit-rocker-cover").body()).contains("rocker cover gasket: a new one is here");
        post("/entries", Map.of("type", "part-entered", "position", "rocker-cover-gasket", "origin", "pattern"));
        assertThat(build().partFor("rocker-cover-gasket").orElseThrow().name()).isEqualTo("new rocker cover gasket");
        post("/entries", Map.of("type", "part-entered", "position", "rocker-cover-gasket"));
        assertThat(build().parts("rocker-cover-gasket"))
                .extracting(part -> part.name())
                .containsExactly("new rocker cover gasket", "new rocker cover gasket 2");
        assertThat(get("/assemble?at=fit-rocker-cover").body()).doesNotContain("a new one is here");
    }

    @Test
    void aFormSentTwiceCountsOnce() throws Exception {
        Map<String, String> note = Map.of("type", "noted", "key", "note-0001", "text", "once");
        post("/entries", note);
        long after = build().size();
        assertThat(post("/entries", note).statusCode()).isEqualTo(303);
        assertThat(build().size()).isEqualTo(after);
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverAsMarkup() throws Exception {
        String markup = "<script>alert(1)</script>\"><img src=x onerror=alert(2)>";
        post("/entries", Map.of("type", "noted", "on", "piston", "text", markup));
        post("/entries", Map.of("type", "taken-off", "position", "piston", "bag", markup, "remark", markup));
        post("/entries", Map.of("type", "part-entered", "position", "piston", "part", markup, "remark", markup));
        post("/entries", Map.of("type", "fault-found", "at", "piston", "what", markup));
        for (String page :
                List.of("", "/strip", "/engine/piston", "/journal", "/undo?of=piston", "/assemble?at=fit-piston")) {
            assertThat(get(page).body()).as(page).doesNotContain("<script>alert", "<img src=x");
        }
        assertThat(get("/journal").body()).contains("&lt;script&gt;");
    }

    @Test
    void aWrongEntryIsStruckOutAndStays() throws Exception {
        post("/entries", Map.of("type", "taken-off", "key", "wrong-one-1", "position", "spark-plug"));
        assertThat(build().place("spark-plug").isFilled()).isFalse();
        post("/entries", Map.of("type", "corrected", "entry", "wrong-one-1", "why", "It was another plug"));
        assertThat(build().place("spark-plug").isFilled()).isTrue();
        assertThat(get("/journal").body()).contains("Struck out.");
    }

    @Test
    void aBookWithFaultsIsNotKeptAndItsTextIsNotLost() throws Exception {
        String text = shelf.bookText(id).replace("needs: [fit-crank", "needs: [fit-krank");
        HttpResponse<String> answer = post("/book", Map.of("text", text, "why", "try", "act", "keep"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Did you mean", "fit-krank");
        assertThat(shelf.bookText(id)).doesNotContain("fit-krank");
        String better = shelf.bookText(id).replace("Join the crankcase halves", "Join both crankcase halves");
        assertThat(post("/book", Map.of("text", better, "why", "says it better", "act", "keep"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(build().structure().name("close-case")).isEqualTo("Join both crankcase halves");
    }

    @Test
    void theLightThatWasChosenIsServed() throws Exception {
        HttpResponse<String> answer =
                send(HttpRequest.newBuilder(bench.address().resolve("light"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString("light=garage")));
        String cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("light=garage", "HttpOnly", "SameSite=Strict");
        assertThat(send(HttpRequest.newBuilder(bench.address().resolve("light.css"))
                                .header("Cookie", "light=garage"))
                        .body())
                .contains("@media screen {", "color-scheme: dark");
        assertThat(send(HttpRequest.newBuilder(bench.address().resolve("light.css")))
                        .body())
                .contains("prefers-color-scheme: dark");
    }

    @Test
    void aFormFromAnotherPlaceIsRefused() throws Exception {
        long before = build().size();
        HttpResponse<String> answer = send(HttpRequest.newBuilder(at("/entries"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", "http://elsewhere.example")
                .POST(HttpRequest.BodyPublishers.ofString("type=noted&text=x")));
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(build().size()).isEqualTo(before);
    }
}
