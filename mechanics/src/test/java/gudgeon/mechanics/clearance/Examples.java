package gudgeon.mechanics.clearance;

import gudgeon.mechanics.chamber.Crown;
import gudgeon.mechanics.chamber.CrownForm;
import gudgeon.mechanics.chamber.Pocket;
import gudgeon.mechanics.crank.Crank;
import gudgeon.mechanics.valvetrain.Lift;
import java.util.List;

/** Invented top ends for the tests of this room. */
final class Examples {
    static final Crank CRANK = new Crank(25, 92, 0.5, -0.2);

    private Examples() {}

    /** A smooth lift about a centre: greatest times cosine squared over the duration. */
    static Lift lift(double centreDeg, double durationDeg, double greatestMm) {
        return theta -> {
            double from = Math.IEEEremainder(theta - centreDeg, 720);
            if (Math.abs(from) >= durationDeg / 2) {
                return 0;
            }
            double c = Math.cos(Math.PI * from / durationDeg);
            return greatestMm * c * c;
        };
    }

    static Lift shut() {
        return theta -> 0;
    }

    static Crown dome(double exhaustDepth) {
        return new Crown(
                new CrownForm.Dome(4, 46),
                49.6,
                List.of(new Pocket(24, exhaustDepth, 12.5, 180, 25), new Pocket(28, 3.2, 12, 0, 25)));
    }

    static TopEnd leaningPair(double exhaustDepth) {
        return new TopEnd(
                50,
                CRANK,
                dome(exhaustDepth),
                1,
                List.of(
                        new Valve(21, 1, 12.5, 180, 25, 5, lift(360 - 108, 270, 6.2)),
                        new Valve(25, 1, 12, 0, 25, 5, lift(360 + 106, 270, 6.5))));
    }
}
