package gudgeon.bench.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * The letters that sheets are printed with, for any that is asked for. Without this PDFBox searches the whole machine for letters
 * and leaves a list of them in the person's home.
 */
final class OwnLetters implements FontMapper {
    private final TrueTypeFont letters;

    OwnLetters() {
        try (InputStream file = Pdf.letters()) {
            letters = new TTFParser().parse(new RandomAccessReadBuffer(file.readAllBytes()));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, @Nullable PDFontDescriptor like) {
        return new FontMapping<>(letters, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, @Nullable PDFontDescriptor like) {
        return new FontMapping<>(letters, true);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, @Nullable PDFontDescriptor like, @Nullable PDCIDSystemInfo system) {
        return new CIDFontMapping(null, letters, true);
    }
}
