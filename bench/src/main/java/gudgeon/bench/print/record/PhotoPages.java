package gudgeon.bench.print.record;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.record.Shot;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** Pages with two photos each behind a record's text, and the foot of every page. Lengths are points of the page, 1/72 in. */
final class PhotoPages {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    private static final float EDGE = 14 * POINTS_PER_MM;
    private static final float LETTER = 9;
    private static final float LINE = 12;
    private static final int CAPTION_LINES = 4;

    private final PDDocument document;
    private final PDRectangle sheet;
    private final PDType0Font font;
    private Optional<PDPage> half = Optional.empty();

    PhotoPages(PDDocument document, Paper.Sheet paper) throws IOException {
        this.document = document;
        this.sheet = new PDRectangle((float) paper.widthMm() * POINTS_PER_MM, (float) paper.heightMm() * POINTS_PER_MM);
        this.font = PDType0Font.load(document, Pdf.letters());
    }

    /** Adds a photo, or only what it showed if the picture is not there. */
    void add(Optional<byte[]> jpeg, Shot shot) throws IOException {
        boolean lower = half.isPresent();
        PDPage page = half.orElseGet(() -> new PDPage(sheet));
        if (!lower) {
            document.addPage(page);
        }
        half = lower ? Optional.empty() : Optional.of(page);
        float height = (sheet.getHeight() - 2 * EDGE) / 2;
        float top = sheet.getHeight() - EDGE - (lower ? height : 0);
        float room = height - (CAPTION_LINES + 1) * LINE;
        try (PDPageContentStream pen = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            float under = top;
            if (jpeg.isPresent()) {
                under = top - draw(pen, JPEGFactory.createFromByteArray(document, jpeg.get()), top, room);
            }
            String missing = jpeg.isPresent() ? "" : " The picture is not at hand.";
            float y = under - LINE;
            for (String line : lines("Entry " + shot.entry() + ". " + shot.caption() + missing)) {
                write(pen, line, EDGE, y);
                y -= LINE;
            }
        }
    }

    private float draw(PDPageContentStream pen, PDImageXObject image, float top, float room) throws IOException {
        float width = sheet.getWidth() - 2 * EDGE;
        float scale = Math.min(width / image.getWidth(), room / image.getHeight());
        float high = image.getHeight() * scale;
        pen.drawImage(image, EDGE, top - high, image.getWidth() * scale, high);
        return high;
    }

    /** Writes the build's name and the page's number on every page. */
    void number(String build) throws IOException {
        int pages = document.getNumberOfPages();
        String name = shown(build);
        for (int n = 0; n < pages; n++) {
            PDPage page = document.getPage(n);
            try (PDPageContentStream pen = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                pen.beginMarkedContent(COSName.ARTIFACT);
                String number = "page " + (n + 1) + " of " + pages;
                float right = page.getMediaBox().getWidth() - EDGE;
                write(pen, number, right - width(number), EDGE / 2);
                write(pen, cut(name, right - EDGE - width(number) - 2 * LINE), EDGE, EDGE / 2);
                pen.endMarkedContent();
            }
        }
    }

    private void write(PDPageContentStream pen, String text, float x, float y) throws IOException {
        pen.beginText();
        pen.setFont(font, LETTER);
        pen.newLineAtOffset(x, y);
        pen.showText(text);
        pen.endText();
    }

    private List<String> lines(String text) throws IOException {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : shown(text).split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) > sheet.getWidth() - 2 * EDGE && !line.isEmpty()) {
                lines.add(line);
                longer = word;
            }
            line = cut(longer, sheet.getWidth() - 2 * EDGE);
        }
        lines.add(line);
        return lines.size() > CAPTION_LINES ? lines.subList(0, CAPTION_LINES) : lines;
    }

    private String cut(String text, float width) throws IOException {
        String kept = text;
        while (width(kept) > width) {
            kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1));
        }
        return kept;
    }

    private float width(String text) throws IOException {
        return font.getStringWidth(text) * LETTER / 1000;
    }

    /** With a box for every letter that the font does not have. */
    private String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().map(this::orBox).forEach(shown::appendCodePoint);
        return shown.toString();
    }

    private int orBox(int point) {
        if (Character.isWhitespace(point)) {
            return ' ';
        }
        try {
            font.encode(Character.toString(point));
            return point;
        } catch (IOException | IllegalArgumentException unknown) {
            return '□';
        }
    }
}
