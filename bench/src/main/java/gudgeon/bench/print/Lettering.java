package gudgeon.bench.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How wide texts come out in the letter that sheets are printed with, so that they can be made to fit. */
public final class Lettering {
    private static final double MM_PER_POINT = 25.4 / 72;
    private static final String CUT = "…";

    private final TrueTypeFont letters;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    public Lettering() {
        try (InputStream file = Pdf.letters()) {
            letters = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
            glyphs = letters.getUnicodeCmapLookup();
            unitsPerEm = letters.getUnitsPerEm();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * How wide a text is, mm.
     *
     * @param points the letter's size, 1 pt being 1/72 inch
     */
    public double widthMm(String text, double points) {
        return text.codePoints().mapToDouble(this::advance).sum() / unitsPerEm * points * MM_PER_POINT;
    }

    private double advance(int point) {
        try {
            return letters.getAdvanceWidth(glyphs.getGlyphId(point));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * A text in lines of a width, broken between words, and within a word that is wider than a line.
     *
     * @param most how many lines there may be, from 1; what is left off is told by an ellipsis
     */
    public List<String> wrapped(String text, double points, double widthMm, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip().replaceAll("\\s+", " ");
        while (widthMm(rest, points) > widthMm && lines.size() < most - 1) {
            int fits = fitting(rest, points, widthMm);
            int space = rest.lastIndexOf(' ', fits);
            int end = space > 0 ? space : fits;
            lines.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.add(cut(rest, points, widthMm));
        return lines;
    }

    private String cut(String text, double points, double widthMm) {
        return widthMm(text, points) <= widthMm
                ? text
                : text.substring(0, fitting(text, points, widthMm - widthMm(CUT, points))) + CUT;
    }

    /** How many of its letters fit, at least one. */
    private int fitting(String text, double points, double widthMm) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length() && widthMm(text.substring(0, text.offsetByCodePoints(end, 1)), points) <= widthMm) {
            end = text.offsetByCodePoints(end, 1);
        }
        return end;
    }
}
