package gudgeon.bench.print.record;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.record.BuildRecord;
import gudgeon.store.photo.Photos;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The record as a PDF file. Its text is laid out as a whole; its photos are put on pages of their own one by one and wait on disk, so
 * that memory holds one at a time.
 */
public final class RecordPdf {
    /** What share of the work the text is, by the clock of a record with 80 photos. */
    private static final double TEXT = 0.3;

    private final Pdf pdf;
    private final Photos photos;

    public RecordPdf(Pdf pdf, Photos photos) {
        this.pdf = pdf;
        this.photos = photos;
    }

    /** Writes it into a file that is not there yet, or is empty. */
    public void write(BuildRecord told, Paper paper, Path file, Progress progress) throws IOException {
        progress.done(0);
        byte[] text = pdf.tagged(
                "print/record/paper.jte",
                Map.of("told", told, "drawing", RecordPage.drawing(told), "sheet", paper.upright()));
        progress.done(TEXT);
        try (PDDocument document =
                Loader.loadPDF(new RandomAccessReadBuffer(text), IOUtils.createTempFileOnlyStreamCache())) {
            PhotoPages pages = new PhotoPages(document, paper.upright());
            int done = 0;
            for (var shot : told.photos()) {
                pages.add(photos.noLongerThan(shot.photo(), PhotoShown.LONGEST), shot);
                done++;
                progress.done(TEXT + (1 - TEXT) * done / (told.photos().size() + 1));
            }
            pages.number(told.name());
            document.save(file.toFile());
        }
        progress.done(1);
    }
}
