package gudgeon.bench.print.record;

import gudgeon.bench.language.Localization;
import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.record.BuildRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.jspecify.annotations.Nullable;

/** Photos behind a document, two on a page with what they show; then every page with its number and the build's name. */
final class PhotoPages {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    private static final float EDGE = 15 * POINTS_PER_MM;
    private static final float LETTERS = 10;
    private static final float LINE = 13;
    private static final int MOST_LINES = 4;
    private static final Pattern SPACES = Pattern.compile("\\s+");

    private final PDDocument document;
    private final Localization localization;
    private final PDRectangle size;
    private final PDType0Font letters;
    private @Nullable PDPageContentStream pen;
    private boolean upper = true;

    PhotoPages(PDDocument document, Paper.Sheet sheet, Localization localization) throws IOException {
        this.document = document;
        this.localization = localization;
        size = new PDRectangle((float) sheet.widthMm() * POINTS_PER_MM, (float) sheet.heightMm() * POINTS_PER_MM);
        try (InputStream file = Pdf.letters()) {
            letters = PDType0Font.load(document, file);
        }
    }

    void add(BuildRecord.Photo photo, Optional<byte[]> jpeg) throws IOException {
        if (upper) {
            end();
            PDPage page = new PDPage(size);
            document.addPage(page);
            pen = new PDPageContentStream(document, page);
        }
        float half = (size.getHeight() - 2 * EDGE) / 2;
        float bottom = upper ? EDGE + half : EDGE;
        List<String> caption = lines(localization.text("Entry " + photo.entry() + ". ")
                + localization.text(photo.caption())
                + (jpeg.isEmpty() ? localization.text(" (The photo is not there any more.)") : ""));
        float text = caption.size() * LINE + 6;
        if (jpeg.isPresent() && pen != null) {
            PDImageXObject image = JPEGFactory.createFromStream(document, new ByteArrayInputStream(jpeg.get()));
            float scale =
                    Math.min((size.getWidth() - 2 * EDGE) / image.getWidth(), (half - text - 10) / image.getHeight());
            pen.drawImage(image, EDGE, bottom + text, image.getWidth() * scale, image.getHeight() * scale);
        }
        for (int i = 0; i < caption.size() && pen != null; i++) {
            say(pen, caption.get(i), EDGE, bottom + text - 4 - (i + 1) * LINE);
        }
        upper = !upper;
    }

    void end() throws IOException {
        if (pen != null) {
            pen.close();
            pen = null;
        }
    }

    /** Writes name and number below every page. */
    void number(String name) throws IOException {
        int count = document.getNumberOfPages();
        for (int i = 0; i < count; i++) {
            PDPage page = document.getPage(i);
            try (PDPageContentStream foot = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                // no part of the text for a reader that reads aloud
                foot.beginMarkedContent(COSName.ARTIFACT);
                String number = localization.text("page " + (i + 1) + " of " + count);
                float right = page.getMediaBox().getWidth() - EDGE - width(number);
                say(foot, number, right, EDGE / 2);
                say(foot, shortened(name, right - EDGE - LETTERS), EDGE, EDGE / 2);
                foot.endMarkedContent();
            }
        }
    }

    private void say(PDPageContentStream to, String text, float x, float y) throws IOException {
        to.beginText();
        to.setFont(letters, LETTERS);
        to.newLineAtOffset(x, y);
        to.showText(text);
        to.endText();
    }

    private List<String> lines(String text) throws IOException {
        float most = size.getWidth() - 2 * EDGE;
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : SPACES.splitAsStream(shown(text)).toList()) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) > most && !line.isEmpty()) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(shortened(word, most));
            } else {
                line.setLength(0);
                line.append(shortened(longer, most));
            }
        }
        lines.add(line.toString());
        return lines.size() <= MOST_LINES ? lines : lines.subList(0, MOST_LINES);
    }

    private String shortened(String text, float most) throws IOException {
        String shown = shown(text);
        while (width(shown) > most) {
            shown = shown.substring(0, shown.length() - 1);
        }
        return shown;
    }

    private float width(String text) throws IOException {
        return letters.getStringWidth(text) / 1000 * LETTERS;
    }

    /** What the letters can't show is shown as a box of their own. */
    private String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(point -> shown.appendCodePoint(has(point) ? point : '?'));
        return shown.toString();
    }

    private boolean has(int point) {
        try {
            letters.encode(Character.toString(point));
            return true;
        } catch (IOException | IllegalArgumentException unknown) {
            return false;
        }
    }
}
