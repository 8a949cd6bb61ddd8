package gudgeon.benchmarks.record;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.bench.print.record.Progress;
import gudgeon.bench.print.record.RecordPrint;
import gudgeon.rebuild.book.BookReading;
import gudgeon.rebuild.book.EngineBookReader;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.rebuild.record.Wish;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A record of eighty photos and some sixty pages, beside the same photos put bare into a PDF file. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx256m")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@State(Scope.Benchmark)
public class RecordBenchmark {
    private static final int PHOTOS = 80;
    private static final int NOTES = 500;

    private byte[] jpeg = new byte[0];
    private BuildRecord record = new BuildRecord("", "", Wish.USUAL, List.of(), List.of(), List.of());

    /** The record, and a photo that does not shrink. */
    @Setup
    public void prepare() throws IOException {
        BookReading book = new EngineBookReader().read(Files.readString(Path.of("examples", "tarn-98.yaml")));
        List<Fact> facts = new ArrayList<>(List.of(new Fact.Started("98-1", "", Found.TOGETHER)));
        for (int n = 0; n < NOTES; n++) {
            facts.add(new Fact.Noted("piston", "Looked at again, as on every evening; nothing new, number " + n + "."));
        }
        for (int n = 0; n < PHOTOS; n++) {
            facts.add(new Fact.Photographed("piston", "0".repeat(64), "view " + n));
        }
        Build build = Build.of(((BookReading.Read) book).book()).asIf(facts);
        record = BuildRecord.of(build, "Tarn 98", "", Wish.USUAL);
        BufferedImage noise = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(1);
        for (int i = 0; i < 1600 * 1200; i++) {
            noise.setRGB(i % 1600, i / 1600, random.nextInt(1 << 24));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(noise, "jpeg", out);
        jpeg = out.toByteArray();
    }

    /** The whole record. */
    @Benchmark
    public long record() throws IOException {
        Path file = Files.createTempFile("record", ".pdf");
        new RecordPrint(new Pdf()).write(record, hash -> Optional.of(jpeg), Paper.A4, file, Progress.NONE);
        return sizeOfGone(file);
    }

    /** The photos alone. */
    @Benchmark
    public long photosBare() throws IOException {
        Path file = Files.createTempFile("bare", ".pdf");
        try (PDDocument document = new PDDocument(IOUtils.createTempFileOnlyStreamCache())) {
            for (int n = 0; n < PHOTOS; n++) {
                PDPage page = new PDPage();
                document.addPage(page);
                PDImageXObject image = JPEGFactory.createFromStream(document, new ByteArrayInputStream(jpeg));
                try (PDPageContentStream pen = new PDPageContentStream(document, page)) {
                    pen.drawImage(image, 0, 0, 500, 375);
                }
            }
            document.save(file.toFile());
        }
        return sizeOfGone(file);
    }

    private static long sizeOfGone(Path file) throws IOException {
        long size = Files.size(file);
        Files.delete(file);
        return size;
    }
}
