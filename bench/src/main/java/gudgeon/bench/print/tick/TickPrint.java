package gudgeon.bench.print.tick;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.tick.TickList;
import java.time.LocalDate;
import java.util.Map;

/** Prints lists with boxes to tick. */
public final class TickPrint {
    private final Pdf pdf;

    public TickPrint(Pdf pdf) {
        this.pdf = pdf;
    }

    /**
     * The list as a PDF file.
     *
     * @param build the build's name, which stands on each sheet
     * @param today the day that stands on it
     */
    public byte[] of(String build, TickList list, Paper paper, LocalDate today) {
        return pdf.tagged(
                "print/ticks.jte",
                Map.of("build", build, "list", list, "sheet", paper.upright(), "day", today.toString()));
    }
}
