package gudgeon.bench.print.label;

import gudgeon.bench.print.Pdf;
import java.util.Map;

/** Prints labels. */
public final class LabelPrint {
    private final Pdf pdf;

    public LabelPrint(Pdf pdf) {
        this.pdf = pdf;
    }

    /** The labels as a PDF file. */
    public byte[] of(LabelPages pages) {
        return pdf.tagged("print/labels.jte", Map.of("labels", pages));
    }
}
