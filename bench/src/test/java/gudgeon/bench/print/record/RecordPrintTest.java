package gudgeon.bench.print.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.bench.language.Localization;
import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Entry;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Fact.Noted;
import gudgeon.rebuild.journal.Fact.Photographed;
import gudgeon.rebuild.journal.Fact.Started;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wish;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordPrintTest {
    private static final String MARKUP = "<script>alert(1)</script> & \u0007 \uD83D\uDD27 done";

    @TempDir
    private Path folder;

    private static BuildRecord record(int photos) throws IOException {
        BookReading reading = new EngineBookReader().read(Files.readString(Path.of("..", "examples", "tarn-98.yaml")));
        List<Fact> facts = new ArrayList<>(List.of(
                new Started("Tarn 98 no. 1187", "", Found.TOGETHER),
                new Noted("piston", MARKUP.replace("\u0007", ""))));
        for (int i = 0; i < photos; i++) {
            facts.add(
                    new Photographed("piston", "0".repeat(62) + String.format("%02d", i), "view " + i + " " + MARKUP));
        }
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : facts) {
            int number = entries.size();
            entries.add(new Entry("k" + number, Instant.EPOCH.plusSeconds(number), "bench", number, fact));
        }
        Build build = Build.of(((BookReading.Read) reading).book()).after(entries);
        return BuildRecord.of(build, "Tarn 98 no. 1187", "c0ffee".repeat(10), Wish.USUAL);
    }

    private static byte[] picture(int points) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(points, points / 2, BufferedImage.TYPE_INT_RGB), "jpeg", out);
        return out.toByteArray();
    }

    private PDDocument printed(int photos, List<Double> progress) throws IOException {
        Path file = folder.resolve("record.pdf");
        byte[] jpeg = picture(400);
        new RecordPrint(new Pdf())
                .write(
                        record(photos),
                        hash -> hash.endsWith("1") ? Optional.empty() : Optional.of(jpeg),
                        Paper.A4,
                        file,
                        progress::add);
        return Loader.loadPDF(file.toFile());
    }

    @Test
    void everyPageHasItsNumberAndTheBuildsName() throws IOException {
        List<Double> progress = new ArrayList<>();
        try (PDDocument document = printed(5, progress)) {
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(5);
            for (int page = 1; page <= pages; page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(document))
                        .contains("page " + page + " of " + pages)
                        .contains("Tarn 98 no. 1187");
                assertThat(document.getPage(page - 1).getMediaBox().getWidth() * 25.4 / 72)
                        .isCloseTo(210, within(0.1));
            }
        }
        assertThat(progress).isSorted().endsWith(1.0).hasSizeGreaterThan(5);
    }

    @Test
    void itSaysEverythingAndItsLettersAreInIt() throws IOException {
        try (PDDocument document = printed(3, new ArrayList<>())) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("Build record: Tarn 98 no. 1187", "c0ffee", "Trial fit", "<script>alert(1)</script> &")
                    .contains("view 0", "view 2", "The photo is not there any more.")
                    .contains("certificate");
            assertThat(document.getDocumentInformation().getTitle()).contains("Build record");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getStructureTreeRoot())
                    .as("tagged")
                    .isNotNull();
            assertThat(document.getDocumentCatalog().getDocumentOutline()).isNotNull();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
            assertThat(document.getPage(0).getAnnotations())
                    .as("links to the chapters")
                    .isNotEmpty();
        }
    }

    /** Noise does not shrink, so that that many photos come to twice and more the memory that the process is given. */
    @Test
    void memoryHoldsTheLargestPhotoAndNotTheirSum() throws IOException, InterruptedException {
        BufferedImage noise = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(1);
        for (int y = 0; y < noise.getHeight(); y++) {
            for (int x = 0; x < noise.getWidth(); x++) {
                noise.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        Path photo = folder.resolve("noise.jpg");
        ImageIO.write(noise, "jpeg", photo.toFile());
        int count = 160;
        long heapMb = 64;
        assertThat(count * Files.size(photo)).isGreaterThan((2 * heapMb) << 20);
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + heapMb + "m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        ManyPhotos.class.getName(),
                        photo.toString(),
                        String.valueOf(count),
                        folder.resolve("many.pdf").toString(),
                        folder.resolve("many.html").toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(Files.size(folder.resolve("many.pdf"))).isGreaterThan((2 * heapMb) << 20);
        assertThat(Files.size(folder.resolve("many.html"))).isGreaterThan((2 * heapMb) << 20);
    }

    @Test
    void thePageNeedsNothingElse() throws IOException {
        Path file = folder.resolve("record.html");
        byte[] jpeg = picture(200);
        List<Double> progress = new ArrayList<>();
        new RecordPage().write(record(3), hash -> Optional.of(jpeg), Localization.ENGLISH, file, progress::add);
        String page = Files.readString(file);
        assertThat(page)
                .contains("id=\"e2\"", "href=\"#e2\"", "data:image/jpeg;base64,", "view 2")
                .doesNotContain("<script>alert")
                .doesNotContain("src=\"/")
                .doesNotContain("http://127")
                .endsWith("</html>\n");
        assertThat(progress).isSorted().endsWith(1.0);
    }
}
