package gudgeon.bench.print.fasten;

import gudgeon.bench.print.Paper;
import gudgeon.bench.print.Pdf;
import gudgeon.rebuild.fasten.TorqueSheet;
import java.util.Map;

/** Prints the torque sheet for the wall. */
public final class TorquePrint {
    private final Pdf pdf;

    public TorquePrint(Pdf pdf) {
        this.pdf = pdf;
    }

    /**
     * The sheet as a PDF file.
     *
     * @param build the build's name, which stands on each sheet
     */
    public byte[] of(String build, TorqueSheet sheet, Paper paper) {
        return pdf.of("print/torque.jte", Map.of("build", build, "torques", sheet, "sheet", paper.upright()));
    }
}
