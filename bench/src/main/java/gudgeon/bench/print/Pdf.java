package gudgeon.bench.print;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import gudgeon.bench.language.Localization;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** Turns templates into PDF: lengths in mm come out as such on paper. */
public final class Pdf {
    /** A free letter that comes with PDFBox; it has Latin, Greek and Cyrillic. */
    private static final String LETTERS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TemplateEngine templates;
    private final Localization localization;

    /** Sheets in English. */
    public Pdf() {
        this(TemplateEngine.createPrecompiled(ContentType.Html), Localization.ENGLISH);
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.SEVERE));
        FontMappers.set(new OwnLetters());
    }

    private Pdf(TemplateEngine templates, Localization localization) {
        this.templates = templates;
        this.localization = localization;
    }

    /** The same sheets in the language of a localization. */
    public Pdf in(Localization other) {
        return new Pdf(templates, other);
    }

    /** What its sheets are read in. */
    public Localization localization() {
        return localization;
    }

    /**
     * A PDF file.
     *
     * @param template name of the template, which must come out as well-formed XHTML and use the letter "plain"
     * @param values what it shows, by the template's parameters
     */
    public byte[] of(String template, Map<String, ?> values) {
        return of(template, values, false);
    }

    /**
     * A PDF file whose headings, tables and links a screen reader finds, as far as the library marks them.
     *
     * @param template as above; it has a title and a language
     */
    public byte[] tagged(String template, Map<String, ?> values) {
        return of(template, values, true);
    }

    private byte[] of(String template, Map<String, ?> values, boolean tagged) {
        StringOutput page = new StringOutput(65_536);
        templates.render(template, Map.<String, Object>copyOf(values), page);
        ByteArrayOutputStream file = new ByteArrayOutputStream(65_536);
        try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfUaAccessibility(tagged);
            builder.useSVGDrawer(drawings)
                    .useFont(Pdf::letters, "plain")
                    .useReplacementText("\u25A1")
                    .withHtmlContent(printable(localization.sheet(page.toString())), "")
                    .toStream(file);
            for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
                builder.useExternalResourceAccessControl((address, kind) -> false, when);
            }
            builder.withProducer("Gudgeon").run();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return file.toByteArray();
    }

    /** Characters that XML does not allow would stop the whole sheet; each is shown as one that could not be read. */
    private static String printable(String page) {
        StringBuilder kept = new StringBuilder(page.length());
        page.codePoints().map(Pdf::allowed).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static int allowed(int point) {
        boolean control = point < ' ' && point != '\t' && point != '\n' && point != '\r';
        boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        return control || half || point == 0xFFFE || point == 0xFFFF ? '?' : point;
    }

    /** The letters of every sheet, a TrueType file. */
    public static InputStream letters() {
        return Objects.requireNonNull(PDDocument.class.getResourceAsStream(LETTERS));
    }
}
