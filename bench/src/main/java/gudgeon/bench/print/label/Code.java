package gudgeon.bench.print.label;

import io.nayuki.qrcodegen.DataTooLongException;
import io.nayuki.qrcodegen.QrCode;
import java.util.Optional;

/**
 * A QR code (ISO/IEC 18004) as a drawing whose unit is one module, with the quiet zone that the standard asks for around it.
 *
 * @param text what it holds
 * @param modules how many modules it is across, with the quiet zone
 * @param path its dark modules, as the path of a drawing
 */
public record Code(String text, int modules, String path) {
    /** Four modules on each side, ISO/IEC 18004. */
    private static final int QUIET = 4;

    /** Finer than this, the camera of a phone held in the hand does not tell modules apart; common practice, no source. */
    private static final double FINEST_MM = 0.4;

    /** The code of a text; empty if it would be too fine to be read in that much room. */
    static Optional<Code> of(String text, double roomMm) {
        try {
            Code code = of(QrCode.encodeText(text, QrCode.Ecc.MEDIUM), text);
            return Optional.of(code).filter(fits -> roomMm / fits.modules >= FINEST_MM);
        } catch (DataTooLongException tooLong) {
            return Optional.empty();
        }
    }

    /** The code of a text for a screen, where it can be as large as need be; empty if no code holds that much. */
    public static Optional<Code> of(String text) {
        return of(text, Double.MAX_VALUE);
    }

    private static Code of(QrCode qr, String text) {
        StringBuilder path = new StringBuilder(4096);
        for (int y = 0; y < qr.size; y++) {
            int x = 0;
            while (x < qr.size) {
                int from = x;
                while (x < qr.size && qr.getModule(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
                    path.append('h')
                            .append(x - from)
                            .append("v1h-")
                            .append(x - from)
                            .append('z');
                } else {
                    x++;
                }
            }
        }
        return new Code(text, qr.size + 2 * QUIET, path.toString());
    }
}
