package gudgeon.bench.print.fasten;

import gudgeon.bench.print.Pdf;
import java.util.Map;

/** Prints cards at true size. */
public final class CardPrint {
    private final Pdf pdf;

    public CardPrint(Pdf pdf) {
        this.pdf = pdf;
    }

    /**
     * The card as a PDF file.
     *
     * @param build the build's name, which stands on each sheet
     */
    public byte[] of(String build, CardLayout layout) {
        return pdf.of("print/card.jte", Map.of("build", build, "layout", layout));
    }
}
