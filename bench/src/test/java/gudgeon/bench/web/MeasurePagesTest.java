package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Measuring.FittingSaid;
import gudgeon.rebuild.journal.Measuring.InstrumentKept;
import gudgeon.rebuild.journal.Measuring.ReadingTaken;
import gudgeon.rebuild.journal.Measuring.Stocked;
import gudgeon.rebuild.measure.Slips;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the Measure page keeps, asks, refuses and shows, told by forms without a script. */
class MeasurePagesTest {
    private static final String MIDDLE = "middle, along the pin";

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private String id;

    @BeforeEach
    void start() throws IOException {
        shelf = Shelf.open(folder);
        try (InputStream book = Objects.requireNonNull(Bench.class.getResourceAsStream("/demo/tarn-98.yaml"))) {
            String text = new String(book.readAllBytes(), StandardCharsets.UTF_8);
            id = shelf.start("Tarn 98 no. 2043", text, Found.IN_PIECES, "bench");
        }
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

    private List<ReadingTaken> readings(String dimension) {
        return build().readings(dimension, "").stream().map(Told::fact).toList();
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(request.header("Cookie", "device=phone-0001").build(), HttpResponse.BodyHandlers.ofString());
    }

    private URI at(String path) {
        return bench.address().resolve("builds/" + id + path);
    }

    private String page(String path) throws Exception {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(at(path)));
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private static HttpRequest.Builder form(URI at, String... fields) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(encoded(fields[i]))
                    .append('=')
                    .append(encoded(fields[i + 1]));
        }
        return HttpRequest.newBuilder(at)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private HttpResponse<String> tell(String... fields) throws Exception {
        return send(form(at("/entries"), fields));
    }

    private void instrument(String name, String kind, String resolution, String error) throws Exception {
        HttpResponse<String> answer = tell(
                "type",
                "instrument-kept",
                "instrument",
                name,
                "kind",
                kind,
                "range",
                "0 to 150 mm",
                "resolution",
                resolution,
                "error",
                error,
                "checked",
                "2026-09-01");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    }

    private HttpResponse<String> bore(String value, String... more) throws Exception {
        String[] fields = {"type", "reading-taken", "dimension", "bore", "at", MIDDLE, "value", value, "unit", "mm"};
        String[] all = new String[fields.length + more.length];
        System.arraycopy(fields, 0, all, 0, fields.length);
        System.arraycopy(more, 0, all, fields.length, more.length);
        return tell(all);
    }

    @Test
    void aReadingIsKeptSaidBackInWordsAndTheNextPlaceComes() throws Exception {
        instrument("bore gauge", "bore-gauge", "0.001 mm", "0.004 mm");
        String walk = page("/measure/walk?dimension=bore&piece=1&at=" + encoded(MIDDLE));
        assertThat(walk).contains(MIDDLE, "data-key=\"7\"", "How it is measured");
        String next = "/builds/" + id + "/measure/walk?dimension=bore&piece=1&at=" + encoded("middle, across the pin");
        assertThat(walk).contains("value=\"" + next.replace("&", "&amp;") + "\"");
        HttpResponse<String> answer = bore("50,012", "instrument", "bore gauge", "back", next);
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).hasValue(next);
        assertThat(readings("bore")).extracting(ReadingTaken::value).containsExactly("50,012 mm");
        assertThat(page(next.substring(("/builds/" + id).length())))
                .contains("fifty point zero one two millimetres")
                .contains("<option value=\"bore gauge\" data-unit=\"mm\" data-warning=\"\" selected>");
    }

    @Test
    void severalReadingsAtOnePlaceAreAllKeptAndShown() throws Exception {
        bore("50.012");
        bore("50.014");
        assertThat(readings("bore")).hasSize(2);
        assertThat(page("/measure/walk?dimension=bore&piece=1&at=" + encoded(MIDDLE)))
                .contains("50.012 mm", "50.014 mm");
        assertThat(page("/measure?of=barrel")).contains("50.012 mm", "50.014 mm", "50.013");
    }

    @ParameterizedTest
    @CsvSource({"1.9698, 1.9698 in", "05.012, 50.012 mm"})
    void aSlipIsAskedAboutAndNothingIsKeptBeforeTheAnswer(String typed, String meant) throws Exception {
        instrument("bore gauge", "bore-gauge", "0.001 mm", "0.004 mm");
        long before = build().size();
        HttpResponse<String> asked = bore(typed, "instrument", "bore gauge");
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body()).contains(meant + " is meant", typed + " mm, as typed", "Read it again");
        assertThat(build().size()).isEqualTo(before);
        assertThat(bore(typed, "instrument", "bore gauge", "answer.value", meant)
                        .statusCode())
                .isEqualTo(303);
        assertThat(readings("bore")).extracting(ReadingTaken::value).containsExactly(meant);
    }

    @Test
    void whatWasAskedAndStandsIsKeptAsTypedAndSaysSo() throws Exception {
        assertThat(bore("1.9698", "answer.value", "stands").statusCode()).isEqualTo(303);
        ReadingTaken kept = readings("bore").get(0);
        assertThat(kept.value()).isEqualTo("1.9698 mm");
        assertThat(kept.remark().toLowerCase(Locale.ROOT)).contains(Slips.STANDS);
    }

    @Test
    void aPageThatKeepsItsTicksIsAskedInData() throws Exception {
        HttpResponse<String> asked = send(form(
                        at("/entries"),
                        "type",
                        "reading-taken",
                        "dimension",
                        "bore",
                        "at",
                        MIDDLE,
                        "value",
                        "1.9698",
                        "unit",
                        "mm")
                .header("Accept", "application/json"));
        assertThat(asked.body())
                .contains("\"state\":\"asked\"", "\"meant\":[\"1.9698 in\"]", "\"answer\":\"answer.value\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "at | nowhere | no place 'nowhere'",
                "value | fifty | not a number",
                "value | 50 kPa | where one in mm is wanted",
                "instrument | grandfather's rule | no instrument 'grandfather's rule' in your list",
                "part | pattern 7 | No part 'pattern 7'",
                "piece | 3 | pieces 1 to 1, not 3",
                "celsius | 900 | A temperature here is",
                "dimension | bore-ovality | worked out from other dimensions",
                "dimension | no-such | The engine book has no dimension 'no-such'"
            })
    void whatCanNotBeReadIsAnsweredWithASentence(String field, String value, String said) throws Exception {
        long before = build().size();
        String[] fields = {"type", "reading-taken", "dimension", "bore", "at", MIDDLE, "value", "50.0", "piece", "1"};
        String[] all = new String[fields.length + 2];
        System.arraycopy(fields, 0, all, 2, fields.length);
        all[0] = field;
        all[1] = value;
        HttpResponse<String> answer = tell(all);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body().replace("&#39;", "'")).contains(said).doesNotContain("Exception", "\tat ");
        assertThat(build().size()).isEqualTo(before);
    }

    @Test
    void anInstrumentWithoutItsErrorIsRefusedWithAllThatIsMissing() throws Exception {
        String body = tell("type", "instrument-kept", "instrument", "", "resolution", "fine", "error", "")
                .body();
        assertThat(body).contains("Give the instrument a name", "resolution", "permissible error");
        assertThat(build().instruments()).isEmpty();
    }

    @Test
    void aCoarseInstrumentIsToldToBeHopelessAndCanBeUsedAllTheSame() throws Exception {
        instrument("steel rule", "calliper", "0.5 mm", "0.5 mm");
        assertThat(page("/measure/walk?dimension=bore&piece=1&at=" + encoded(MIDDLE)))
                .contains("The steel rule is too coarse");
        assertThat(page("/measure/instruments")).contains("too coarse for");
        assertThat(bore("50.0", "instrument", "steel rule").statusCode()).isEqualTo(303);
        assertThat(page("/measure?of=barrel")).contains("unproven");
    }

    @Test
    void theBetterInstrumentIsNamedForWhatIsUnprovenAndProvesIt() throws Exception {
        instrument("vernier", "calliper", "0.02 mm", "0.03 mm");
        instrument("micrometer", "micrometer", "0.001 mm", "0.004 mm");
        String[] skirt = {"type", "reading-taken", "dimension", "piston-skirt", "value", "49.94", "instrument"};
        for (String at : build().structure()
                .dimension("piston-skirt")
                .orElseThrow()
                .places()
                .all()) {
            assertThat(tell(skirt[0], skirt[1], skirt[2], skirt[3], skirt[4], skirt[5], skirt[6], "vernier", "at", at)
                            .statusCode())
                    .isEqualTo(303);
        }
        assertThat(page("/measure?of=piston")).contains("unproven", "with the micrometer");
        for (String at : build().structure()
                .dimension("piston-skirt")
                .orElseThrow()
                .places()
                .all()) {
            tell(skirt[0], skirt[1], skirt[2], skirt[3], skirt[4], skirt[5], skirt[6], "micrometer", "at", at);
        }
        assertThat(page("/measure?of=piston"))
                .contains("The piston skirt is in limits", "permissible error of the micrometer", "JCGM");
    }

    @Test
    void aReadingIsPutRightAndTheWrongOneStays() throws Exception {
        bore("50.012", "key", "wrong-reading-1");
        assertThat(tell("type", "reading-corrected", "entry", "wrong-reading-1", "value", "50.021 mm", "why", "Misread")
                        .statusCode())
                .isEqualTo(303);
        assertThat(readings("bore")).extracting(ReadingTaken::value).containsExactly("50.021 mm");
        assertThat(page("/journal")).contains("50.012 mm", "50.021 mm");
        tell("type", "reading-corrected", "entry", "wrong-reading-1", "value", "", "why", "Another barrel");
        assertThat(readings("bore")).isEmpty();
        assertThat(tell("type", "reading-corrected", "entry", "none", "value", "1", "why", "x")
                        .body())
                .contains("no such reading");
    }

    @Test
    void aSheetIsTypedInInOneGoAndEachSlipIsAskedAbout() throws Exception {
        assertThat(page("/measure/type?of=barrel")).contains("reading.bore.1.0", "reading.bore.1.5");
        String[] sheet = {
            "type",
            "readings",
            "position",
            "barrel",
            "unit",
            "mm",
            "reading.bore.1.0",
            "50.031",
            "reading.bore.1.1",
            "1.9698",
            "reading.bore.1.2",
            "1.9690"
        };
        String asked = tell(sheet).body();
        assertThat(asked).contains("Are these right?", "type=\"radio\" name=\"answer.reading.bore.1.1\"");
        assertThat(readings("bore")).isEmpty();
        String[] answered = new String[sheet.length + 4];
        System.arraycopy(sheet, 0, answered, 0, sheet.length);
        answered[sheet.length] = "answer.reading.bore.1.1";
        answered[sheet.length + 1] = "1.9698 in";
        answered[sheet.length + 2] = "answer.reading.bore.1.2";
        answered[sheet.length + 3] = "again";
        assertThat(tell(answered).statusCode()).isEqualTo(303);
        assertThat(readings("bore")).extracting(ReadingTaken::value).containsExactly("50.031 mm", "1.9698 in");
        assertThat(tell("type", "readings", "position", "barrel").body()).contains("No reading was written");
    }

    @Test
    void theBlankSheetHasABoxForEveryPlace() throws Exception {
        String blank = page("/measure/blank?of=barrel");
        for (String at :
                build().structure().dimension("bore").orElseThrow().places().all()) {
            assertThat(blank.replace("&#39;", "'")).contains(at);
        }
        assertThat(blank).contains("Tarn 98 no. 2043").doesNotContain("piston skirt");
        assertThat(page("/measure/blank?of=all")).contains("piston skirt");
    }

    @Test
    void figuresAreShownInInchesWhereThePersonWantsThat() throws Exception {
        bore("50.8");
        assertThat(page("/measure?unit=inch")).contains("2.0000", "In millimetres");
    }

    @Test
    void theNextBuildHasTheInstrumentsOfTheNewest() throws Exception {
        instrument("vernier", "calliper", "0.02 mm", "0.03 mm");
        HttpResponse<String> answer = send(
                form(bench.address().resolve("builds"), "name", "Another", "archetype", "lying-overhead-cam-single"));
        String other = answer.headers().firstValue("Location").orElseThrow().replace("/builds/", "");
        assertThat(shelf.build(other).orElseThrow().instruments())
                .extracting(InstrumentKept::instrument)
                .containsExactly("vernier");
    }

    @Test
    void howAPartWasPutInAndWhatIsInStockIsTakenDown() throws Exception {
        assertThat(page("/engine/main-bearing-left")).contains("How it was put in", "gloves and goggles");
        tell("type", "fitting-said", "position", "main-bearing-left", "method", "warmed", "celsius", "100");
        tell("type", "stocked", "position", "main-bearing-left", "sizes", "0.10 mm\n0.15 mm\n0.15 mm");
        assertThat(build().told(FittingSaid.class)).hasSize(1);
        assertThat(build().told(Stocked.class).get(0).fact().sizes()).containsExactly("0.10 mm", "0.15 mm", "0.15 mm");
        assertThat(tell("type", "stocked", "position", "main-bearing-left", "sizes", "thick")
                        .body())
                .contains("Shim:");
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverAsMarkup() throws Exception {
        String markup = "<script>alert(1)</script>\"><img src=x>";
        instrument(markup, "micrometer", "0.001 mm", "0.004 mm");
        bore("50.01", "instrument", markup, "remark", markup);
        for (String path : List.of(
                "/measure",
                "/measure?of=barrel",
                "/measure/walk?dimension=bore&piece=1&at=" + encoded(MIDDLE),
                "/measure/instruments",
                "/measure/instruments?change=" + encoded(markup),
                "/measure/type?of=barrel",
                "/journal")) {
            assertThat(page(path)).as(path).doesNotContain("<script>alert", "<img src=x");
        }
        assertThat(bore("1.97", "instrument", markup, "remark", markup).body())
                .doesNotContain("<script>alert", "<img src=x");
    }

    @Test
    void whatWasReadBeforeAPartWasMachinedIsStillShown() throws Exception {
        bore("50.071");
        tell("type", "work-sent", "position", "barrel", "part", "", "to", "Low Quay Workshop", "work", "rebore");
        assertThat(tell("type", "work-back", "position", "barrel", "part", "").statusCode())
                .isEqualTo(303);
        assertThat(page("/measure?of=barrel"))
                .contains("Readings that do not count", "50.071 mm")
                .doesNotContain("The bore is");
    }

    @Test
    void aPlaceThatIsNotInTheBookIsNotFound() throws Exception {
        assertThat(send(HttpRequest.newBuilder(at("/measure?of=no-such"))).statusCode())
                .isEqualTo(404);
        assertThat(send(HttpRequest.newBuilder(at("/measure/walk?dimension=no-such")))
                        .statusCode())
                .isEqualTo(404);
        assertThat(send(HttpRequest.newBuilder(at("/measure/type?of=no-such"))).statusCode())
                .isEqualTo(404);
    }
}
