package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Deciding.OptionLine;
import gudgeon.rebuild.journal.Deciding.OptionTaken;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The Options page without a script: what is drawn, shown, refused and decided. */
class OptionsPagesTest {
    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private String id;

    @BeforeEach
    void start() throws Exception {
        shelf = Shelf.open(folder);
        String tarn = Files.readString(Path.of("..", "examples", "tarn-98.yaml"));
        id = shelf.start("Tarn", tarn, Found.TOGETHER, "bench");
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

    private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI at(String path) {
        return bench.address().resolve("builds/" + id + path);
    }

    private String page(String path) throws Exception {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(at(path)));
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    private HttpResponse<String> post(String... namesAndValues) throws Exception {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(namesAndValues[i])
                    .append('=')
                    .append(URLEncoder.encode(namesAndValues[i + 1], StandardCharsets.UTF_8));
        }
        return send(HttpRequest.newBuilder(at("/entries"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString())));
    }

    private Fact last() {
        return build().entry(build().size()).fact();
    }

    @Test
    void anOptionIsDrawnFilledComparedAndTaken() throws Exception {
        assertThat(post("type", "option-drawn", "option", "rebore", "name", "Rebore to the first oversize")
                        .statusCode())
                .isEqualTo(303);
        assertThat(page("/options/line?option=rebore&position=barrel")).contains("size.bore");
        HttpResponse<String> line = post(
                "type",
                "option-line",
                "option",
                "rebore",
                "position",
                "barrel",
                "what",
                "bored",
                "price",
                "80 EUR",
                "likely",
                "10",
                "least",
                "7",
                "most",
                "20",
                "size.bore",
                "50.50 mm");
        assertThat(line.statusCode()).isEqualTo(303);
        assertThat(((OptionLine) last()).sizes()).isEqualTo(Map.of("bore", "50.50 mm"));
        String page = page("/options?rpm=6000");
        assertThat(page)
                .contains("Rebore to the first oversize", "80.00 EUR", "About 10 days, 7 to 20.", "Ask the authority")
                .contains("mean piston speed at 6000 turns a minute", "100.1");
        assertThat(post("type", "option-taken", "option", "rebore", "why", "it cleans up")
                        .statusCode())
                .isEqualTo(303);
        assertThat(last()).isEqualTo(new OptionTaken("rebore", "it cleans up"));
        assertThat(page("/options")).contains("it cleans up");
    }

    @Test
    void theLargerTopEndOfTheFamilyIsTakenUpFromItsDraft() throws Exception {
        assertThat(page("/options")).contains("Parts of the Tarn 125", "Oversize piston");
        assertThat(post("type", "option-draft", "option", "tarn-125").statusCode())
                .isEqualTo(303);
        String page = page("/options");
        assertThat(page)
                .contains("does not go together", "would have to be changed or worked on as well")
                .contains("The capacity changes from");
        assertThat(post("type", "option-draft", "option", "tarn-125").statusCode())
                .isEqualTo(422);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "option-drawn | option | | | Write a short name",
                "option-line | option | nothing | barrel | is drawn in this build. Draw it first",
                "option-taken | option | nothing | | Draw it first",
                "option-line | option | drawn | nowhere | no position 'nowhere'",
                "option-taken | option | drawn | | why it is taken",
                "option-dropped | option | drawn | | why it is dropped",
                "option-draft | option | made up | | no draft 'made up'"
            })
    void whatCanNotBeTakenDownIsAnsweredWithASentence(
            String type, String field, String option, String position, String said) throws Exception {
        post("type", "option-drawn", "option", "drawn");
        long before = build().size();
        HttpResponse<String> answer =
                post("type", type, field, option == null ? "" : option, "position", position == null ? "" : position);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body().replace("&#39;", "'")).contains(said);
        assertThat(build().size()).isEqualTo(before);
    }

    @Test
    void aSizeThatCanNotBeReadIsRefused() throws Exception {
        post("type", "option-drawn", "option", "drawn");
        HttpResponse<String> answer =
                post("type", "option-line", "option", "drawn", "position", "barrel", "size.bore", "wide");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("can").contains("be read");
        HttpResponse<String> elsewhere =
                post("type", "option-line", "option", "drawn", "position", "piston", "size.bore", "50 mm");
        assertThat(elsewhere.body()).contains("no dimension");
    }

    @Test
    void markupInANameStaysText() throws Exception {
        post("type", "option-drawn", "option", "<b>x</b>", "name", "<script>alert(1)</script>");
        assertThat(page("/options")).doesNotContain("<script>alert", "<b>x</b>").contains("&lt;script&gt;");
        assertThat(page("/options/line?option="
                        + URLEncoder.encode("<b>x</b>", StandardCharsets.UTF_8)
                        + "&position=barrel"))
                .doesNotContain("<b>x</b>");
    }

    @Test
    void aPartThatCameOffIsProposedForAndDecided() throws Exception {
        post("type", "taken-off", "position", "spark-plug", "remark", "Insulator cracked");
        String page = page("/options");
        assertThat(page).contains("proposed: replace", "Insulator cracked");
        assertThat(post("type", "disposed", "position", "spark-plug", "disposition", "use_again", "why", "no other")
                        .statusCode())
                .isEqualTo(303);
        assertThat(((Fact.Disposed) last()).disposition()).isEqualTo(Disposition.USE_AGAIN);
        assertThat(page("/options")).contains("kept all the same", "The proposal would not keep it.");
    }

    @Test
    void aSpeedThatCanNotBeIsTakenAsTheUsualOne() throws Exception {
        post("type", "option-drawn", "option", "drawn");
        for (String rpm : List.of("fast", "-5", "1e9", "NaN")) {
            assertThat(page("/options?rpm=" + rpm)).contains("at 5000 turns a minute");
        }
    }
}
