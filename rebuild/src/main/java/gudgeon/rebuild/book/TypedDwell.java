package gudgeon.rebuild.book;

import gudgeon.mechanics.timing.Points;
import java.util.Optional;

/** A dwell as a person types it: "210°" of the points cam, or "58 %" of its turn. */
public final class TypedDwell {
    private static final double TURN_DEG = 360;

    private TypedDwell() {}

    /** The dwell in degrees of the points cam, above 0 and below 360; empty where the text is none. */
    public static Optional<Double> deg(String text) {
        double deg = -1;
        if (TypedSize.of(Unit.DEGREES, text, 1) instanceof TypedSize.Read read) {
            deg = read.value();
        } else if (TypedSize.of(Unit.PERCENT, text, 1) instanceof TypedSize.Read percent) {
            deg = new Points(1).dwellDeg(percent.value());
        }
        return Optional.of(deg).filter(one -> one > 0 && one < TURN_DEG);
    }

    /** Why a text is no dwell, and what to type; a sentence. */
    public static String refusal(String text) {
        return "'" + Words.shortened(text)
                + "' is no dwell. Write the degrees of the points cam for which they are closed, such as 210°, or per cent of its turn,"
                + " such as 58 %.";
    }
}
