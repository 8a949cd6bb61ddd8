package gudgeon.bench.cli;

import static gudgeon.bench.cli.Terminal.run;
import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.PartEntered;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.journal.Origin;
import gudgeon.rebuild.journal.Proving.StartSigned;
import gudgeon.rebuild.journal.Sourcing.Ordered;
import gudgeon.rebuild.journal.Sourcing.PostagePaid;
import gudgeon.rebuild.journal.Sourcing.WorkSent;
import gudgeon.store.photo.Kept;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Outcome;
import gudgeon.store.shelf.Shelf;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The build record from the command line, read back by PDFBox. */
class PrintRecordCommandTest {
    @TempDir
    Path folder;

    private Path data = Path.of("");
    private String id = "";
    private String hash = "";

    @BeforeEach
    void shelve() throws IOException {
        data = folder.resolve("data");
        String photo = photo();
        List<Fact> facts = List.of(
                new Noted("", "Rattle <from> the top & low compression."),
                new PartEntered("p1", "piston", Origin.PATTERN, 1, "", "61.50 EUR", "Ring pegs checked."),
                new Ordered("o1", "head-gasket", 1, "Quillfeather Spares", "7.25 EUR"),
                new PostagePaid("o1", "4.95 EUR"),
                new WorkSent("barrel", "", "Osgood Bores", "Bore to 0.5 over.", "38.00 EUR", Optional.empty()),
                new StartSigned("Hob Marlow", List.of(), ""),
                new Photographed("piston", photo, "The crown."),
                new Photographed("", photo.replace(photo.charAt(0), photo.charAt(0) == 'a' ? 'b' : 'a'), "Gone."));
        try (Shelf shelf = Shelf.open(data)) {
            id = shelf.start(
                    "Tarn 98 no. 7", Files.readString(Path.of("../examples/tarn-98.yaml")), Found.TOGETHER, "slate-9");
            List<Entry> entries = new ArrayList<>();
            for (Fact fact : facts) {
                entries.add(new Entry(
                        "k" + entries.size(),
                        Instant.parse("2026-03-01T10:00:00Z"),
                        "slate-9",
                        1 + entries.size(),
                        fact));
            }
            assertThat(shelf.append(id, entries)).isInstanceOf(Outcome.Kept.class);
            hash = shelf.journal(id).orElseThrow().head();
        }
    }

    private String photo() throws IOException {
        BufferedImage image = new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillOval(200, 200, 900, 900);
        pen.dispose();
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(image, "png", png);
        return ((Kept.Photo) new Photos(data).keep(png.toByteArray())).hash();
    }

    private Path printed(String file, Object... options) {
        Path target = folder.resolve(file);
        List<Object> words = new ArrayList<>(List.of("print-record", id, target, "--data", data));
        words.addAll(List.of(options));
        Terminal said = run(words.toArray());
        assertThat(said.code()).as(said.err()).isZero();
        assertThat(said.out()).contains("holds the build record");
        return target;
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void tellsTheBuildOnPaper() throws IOException {
        String text = text(printed("record.pdf"));
        assertThat(text.replace(" ", "")).contains(hash);
        assertThat(text)
                .contains("Rattle <from> the top & low compression.", "61.50 EUR", "4.95 EUR", "no certificate")
                .contains("The crown.", "The photo is not there any more.")
                .contains("As it was found", "Trial fit", "page 1 of ");
    }

    @Test
    void leavesPeopleOutUnlessAskedFor() throws IOException {
        String[] people = {"Quillfeather Spares", "Osgood Bores", "Hob Marlow", "slate-9"};
        assertThat(text(printed("plain.pdf"))).doesNotContain(people);
        assertThat(Files.readString(printed("plain.html"))).doesNotContain(people);
        assertThat(text(printed("named.pdf", "--with-people"))).contains(people);
        assertThat(Files.readString(printed("named.html", "--with-people"))).contains(people);
    }

    @Test
    void leavesPricesOutWhenAsked() throws IOException {
        assertThat(text(printed("free.pdf", "--without-prices"))).doesNotContain("EUR");
        assertThat(Files.readString(printed("free.html", "--without-prices"))).doesNotContain("EUR");
    }

    @Test
    void thePaperIsTaggedNumberedLinkedAndHasItsLetters() throws IOException {
        try (PDDocument document = Loader.loadPDF(printed("record.pdf").toFile())) {
            assertThat(document.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Build record: Tarn 98 no. 7");
            int pages = document.getNumberOfPages();
            for (int n = 1; n <= pages; n++) {
                PDFTextStripper one = new PDFTextStripper();
                one.setStartPage(n);
                one.setEndPage(n);
                assertThat(one.getText(document)).contains("Tarn 98 no. 7", "page " + n + " of " + pages);
            }
            int links = 0;
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
                for (PDAnnotation note : page.getAnnotations()) {
                    if (note instanceof PDAnnotationLink link && link.getAction() instanceof PDActionGoTo there) {
                        assertThat(there.getDestination()).isNotNull();
                        links++;
                    }
                }
            }
            assertThat(links).isGreaterThanOrEqualTo(10);
        }
    }

    @Test
    void thePageNeedsNothingBesideItAndItsLinksArrive() throws IOException {
        String page = Files.readString(printed("record.html"));
        assertThat(page).contains("src=\"data:image/jpeg;base64,").doesNotContain("<script", "<link");
        assertThat(page.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http:", "https:");
        List<String> wanted =
                IntStream.rangeClosed(1, 9).mapToObj(n -> "id=\"e" + n + "\"").toList();
        assertThat(page).contains(wanted);
        java.util.regex.Pattern.compile("href=\"#([^\"]+)\"")
                .matcher(page)
                .results()
                .forEach(link -> assertThat(page).contains("id=\"" + link.group(1) + "\""));
    }

    @Test
    void refusesWithASentence() throws IOException {
        assertThat(run("print-record", id, folder.resolve("r.txt"), "--data", data)
                        .err())
                .contains("ends neither in .pdf nor in .html");
        assertThat(run("print-record", "none", folder.resolve("r.pdf"), "--data", data)
                        .err())
                .contains("There is no build 'none'");
        Files.writeString(folder.resolve("old.pdf"), "mine");
        assertThat(run("print-record", id, folder.resolve("old.pdf"), "--data", data)
                        .err())
                .contains("is there already");
        assertThat(Files.readString(folder.resolve("old.pdf"))).isEqualTo("mine");
    }
}
