package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Found;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Card and torque sheet as the Fasteners page gives them. */
class PrintedPagesTest {
    private static final String BOOK = """
            book: 1
            engine: {name: Tarn 98}
            joints:
              - id: cover
                name: clutch cover
                torque: 9 N.m
                holes:
                  - {id: h1, at: [6.0, 8.5], thread: M6, length: 40}
                  - {id: h2, at: [75.9, 8.5], thread: M6, length: 25}
                  - {id: h3, at: [75.9, 52.3], thread: M6, length: 25}
              - {id: bare, name: sump plug}
            steps:
              - {id: close, name: close it, tightens: [cover]}
            """;

    @TempDir
    private Path folder;

    private Shelf shelf;
    private Bench bench;
    private String id;

    @BeforeEach
    void start() throws IOException {
        shelf = Shelf.open(folder);
        id = shelf.start("Tarn 98 <no. 2043>", BOOK, Found.IN_PIECES, "bench");
        bench = Bench.start(shelf, new Photos(folder), List.of(), 0);
    }

    @AfterEach
    void stop() {
        bench.close();
        shelf.close();
    }

    private HttpResponse<byte[]> get(String path) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(bench.address().resolve("builds/" + id + path))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }

    private static String text(HttpResponse<byte[]> answer) throws IOException {
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/pdf");
        try (PDDocument document = Loader.loadPDF(answer.body())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void givesCardAndTorqueSheet() throws Exception {
        assertThat(text(get("/print/card/cover?paper=letter"))).contains("Tarn 98 <no. 2043>: Clutch cover", "M6 × 40");
        assertThat(text(get("/print/card?joint=cover&paper=A5"))).contains("M6 × 40");
        assertThat(text(get("/print/torque"))).contains("Torque sheet", "9 N·m, the maker's");
    }

    @Test
    void leadsToThem() throws Exception {
        String all = new String(get("/fasteners").body(), StandardCharsets.UTF_8);
        String one = new String(get("/fasteners/joint/cover").body(), StandardCharsets.UTF_8);
        assertThat(all).contains("/builds/" + id + "/print/torque");
        String prints = new String(get("/prints").body(), StandardCharsets.UTF_8);
        assertThat(prints)
                .contains("/print/torque", "clutch cover", "/print/labels")
                .doesNotContain("sump plug");
        assertThat(one).contains("/builds/" + id + "/print/card/cover?paper=A5");
    }

    @Test
    void saysWhyThereIsNoCard() throws Exception {
        HttpResponse<byte[]> answer = get("/print/card/bare");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(new String(answer.body(), StandardCharsets.UTF_8)).contains("Sump plug has no hole with a place");
        assertThat(get("/print/card/nothing").statusCode()).isEqualTo(404);
        assertThat(get("/print/card").statusCode()).isEqualTo(404);
    }
}
