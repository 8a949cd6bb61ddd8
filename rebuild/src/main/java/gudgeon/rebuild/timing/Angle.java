package gudgeon.rebuild.timing;

import gudgeon.mechanics.metrology.Expanded;
import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.timing.Disc;
import java.util.Locale;

/** Angles and lengths as the sentences of this room say them. */
final class Angle {
    private static final double TURN_DEG = 360;
    private static final double QUARTER_DEG = 90;
    private static final double MM_PER_INCH = 25.4;

    private Angle() {}

    /** To a tenth of a degree, such as "25.7°". */
    static String text(double deg) {
        String text = String.format(Locale.ROOT, "%.1f", deg);
        return (text.equals("-0.0") ? "0.0" : text) + "°";
    }

    /** With the doubt at 95 %, such as "25.7 ± 1.2°". */
    static String text(Quantity deg) {
        String value = text(deg.value());
        return value.substring(0, value.length() - 1) + " ± " + text(doubt(deg));
    }

    /** Half the interval of 95 %. */
    static double doubt(Quantity quantity) {
        return quantity.standardUncertainty() == 0 ? 0 : Expanded.of(quantity).halfWidth();
    }

    /** How much later or earlier, such as "1.5° late"; "in time" where it is neither. */
    static String late(double lateDeg) {
        double shown = Math.round(lateDeg * 10) / 10.0;
        return shown == 0 ? "in time" : text(Math.abs(shown)) + (shown > 0 ? " late" : " early");
    }

    /** From the dead centre that is nearer, such as "12.0° btdc". */
    static String fromCentre(double crankDeg) {
        double top = Disc.shortest(0, Disc.reading(crankDeg));
        if (Math.abs(top) <= QUARTER_DEG) {
            return text(Math.abs(top)) + (top < 0 ? " btdc" : " atdc");
        }
        double bottom = Disc.shortest(TURN_DEG / 2, Disc.reading(crankDeg));
        return text(Math.abs(bottom)) + (bottom < 0 ? " bbdc" : " abdc");
    }

    /** A length with the same in inches, such as "2.48 mm (0.098 in)". */
    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.2f mm (%.3f in)", mm, mm / MM_PER_INCH);
    }
}
