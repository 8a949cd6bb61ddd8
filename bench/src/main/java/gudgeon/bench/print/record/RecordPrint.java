package gudgeon.bench.print.record;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.record.BuildRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Writes a record as a PDF file. Chapters and entries come out of a template; the photos are put behind them one by one and wait in a
 * file for the rest, so that memory holds the largest of them and never their sum.
 */
public final class RecordPrint {
    /** How much of the time the chapters take, about. */
    private static final double CHAPTERS = 0.3;

    private final Pdf pdf;

    public RecordPrint(Pdf pdf) {
        this.pdf = pdf;
    }

    /**
     * Writes the file.
     *
     * @throws IOException if it can't be written
     */
    public void write(BuildRecord record, Pictures pictures, Paper paper, Path file, Progress progress)
            throws IOException {
        byte[] chapters = pdf.tagged("record/print.jte", Map.of("record", record, "sheet", paper.upright()));
        progress.at(CHAPTERS);
        try (PDDocument document = Loader.loadPDF(
                new RandomAccessReadBuffer(chapters), "", null, null, IOUtils.createTempFileOnlyStreamCache())) {
            PhotoPages photos = new PhotoPages(document, paper.upright(), pdf.localization());
            int done = 0;
            for (BuildRecord.Photo photo : record.photos()) {
                photos.add(photo, pictures.jpeg(photo.hash()));
                progress.at(
                        CHAPTERS + (0.95 - CHAPTERS) * ++done / record.photos().size());
            }
            photos.end();
            photos.number(record.name());
            document.save(file.toFile());
        }
        progress.at(1);
    }
}
