package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Labels, bags and the page of prints as a browser without a script asks for them. */
class LabelPagesTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            positions:
              - {id: cover, name: clutch cover, space: outside}
              - {id: gasket, name: clutch cover gasket, space: [wet, outside], single-use: true}
              - {id: spring, name: clutch spring, quantity: 4, space: wet}
            steps:
              - {id: springs, name: springs in, fits: [spring]}
              - {id: close, name: close the cover, fits: [gasket, cover], covers: [spring], needs: [springs]}
            """;

    @TempDir
    private Path folder;

    private ServedBuild served;

    @BeforeEach
    void start() {
        served = new ServedBuild(folder, BOOK, Found.TOGETHER);
    }

    @AfterEach
    void stop() {
        served.close();
    }

    private void off(String position, String bag, String count) throws Exception {
        HttpResponse<String> answer = served.tell(
                "type",
                "taken-off",
                "seen",
                String.valueOf(served.build().size()),
                "position",
                position,
                "count",
                count,
                "bag",
                bag,
                "place",
                "shelf A",
                "remark",
                "scratched <deep>");
        assertThat(answer.statusCode()).as(answer.body()).isLessThan(400);
    }

    @Test
    void aBagTellsWhatLiesInItAndWhatThatWaitsFor() throws Exception {
        off("cover", "front 1/ä", "1");
        off("gasket", "front 1/ä", "1");
        String page = served.page("/bag?of=front%201%2F%C3%A4");
        assertThat(page)
                .contains("Bag front 1/ä", "clutch cover", "clutch cover gasket", "not used again", "shelf A")
                .contains(
                        "scratched &lt;deep&gt;",
                        "close the cover",
                        "A new one goes in with",
                        "It waits for this",
                        "can't be used again")
                .contains("/strip?bag=front+1%2F%C3%A4");
    }

    @Test
    void aBagNotYetFilledTakesWhatComesNext() throws Exception {
        assertThat(served.page("/bag?of=7")).contains("Nothing was put into it yet", "/strip?bag=7");
        assertThat(served.page("/strip?bag=7")).contains("name=\"bag\" type=\"text\" value=\"7\"");
        assertThat(served.page("/strip")).contains("name=\"bag\" type=\"text\" value=\"1\"");
    }

    @Test
    void whatIsInTheEngineAgainIsNoLongerInTheBag() throws Exception {
        off("cover", "1", "1");
        off("spring", "2", "4");
        served.tell(
                "type", "fitted", "seen", String.valueOf(served.build().size()), "position", "spring", "count", "4");
        assertThat(served.page("/bag?of=2")).contains("all of it is in the engine again", "In the engine again");
        assertThat(served.page("/prints")).contains("There is one to print").doesNotContain("bag?of=2");
    }

    @Test
    void theFormGivesAFileAndRefusesInWords() throws Exception {
        assertThat(served.get("/print/labels").statusCode()).isEqualTo(422);
        assertThat(served.page("/print/labels")).contains("There is nothing to label");
        off("cover", "1", "1");
        HttpResponse<String> file =
                served.get("/print/labels?sheet=letter-30&first=5&empty=&address=&size=&grid=&paper=A4");
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Type")).hasValue("application/pdf");
        HttpResponse<String> refused =
                served.get("/print/labels?sheet=a4-14&first=many&size=700+x+37&grid=3+x+8&address=nowhere");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("'many' is not a whole number", "'nowhere' is no address", "need 2100 mm across");
    }
}
