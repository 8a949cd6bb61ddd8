package gudgeon.bench.print.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A printed sheet as paper would be: looked at, and read by an independent reader of codes. */
final class ReadBack implements AutoCloseable {
    static final double DOTS_PER_MM = 300 / 25.4;
    private static final double MM_PER_POINT = 25.4 / 72;

    private final PDDocument document;

    ReadBack(byte[] file) {
        try {
            document = Loader.loadPDF(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A code: what it holds and where the middle of its upper left finder is on the sheet, mm. */
    record Seen(String text, double x, double y) {}

    /** A text with where it begins, mm. */
    record Written(String text, double x, double y) {}

    int pages() {
        return document.getNumberOfPages();
    }

    PDDocument document() {
        return document;
    }

    String text() {
        try {
            return new PDFTextStripper().getText(document);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Each line of a page, the baseline's beginning from the sheet's upper left corner. */
    List<Written> written(int page) {
        List<Written> all = new ArrayList<>();
        try {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> at) {
                    TextPosition first = at.get(0);
                    all.add(new Written(text, first.getXDirAdj() * MM_PER_POINT, first.getYDirAdj() * MM_PER_POINT));
                }
            };
            stripper.setStartPage(page + 1);
            stripper.setEndPage(page + 1);
            stripper.getText(document);
            return all;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    BufferedImage image(int page) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page, 300, ImageType.GRAY);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What the code within a label on a sheet holds; empty if there is none. */
    static Optional<Seen> code(BufferedImage sheet, LabelSheet labels, int slot) {
        int left = dots(labels.leftOf(slot));
        int top = dots(labels.topOf(slot));
        int width = Math.min(dots(labels.width()), sheet.getWidth() - left);
        int height = Math.min(dots(labels.height()), sheet.getHeight() - top);
        int[] pixels = sheet.getRGB(left, top, width, height, null, 0, width);
        try {
            Result read = new QRCodeReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels))),
                            Map.of(
                                    DecodeHintType.POSSIBLE_FORMATS,
                                    List.of(BarcodeFormat.QR_CODE),
                                    DecodeHintType.TRY_HARDER,
                                    true));
            // the reader gives the finders from lower left over upper left to upper right
            return Optional.of(new Seen(
                    read.getText(),
                    (left + read.getResultPoints()[1].getX()) / DOTS_PER_MM,
                    (top + read.getResultPoints()[1].getY()) / DOTS_PER_MM));
        } catch (NotFoundException none) {
            return Optional.empty();
        } catch (ReaderException unreadable) {
            throw new AssertionError("A code that can't be read on label " + slot, unreadable);
        }
    }

    private static int dots(double mm) {
        return (int) Math.round(mm * DOTS_PER_MM);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
