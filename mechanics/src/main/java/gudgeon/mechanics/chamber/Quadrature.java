package gudgeon.mechanics.chamber;

import java.util.function.DoubleUnaryOperator;

/**
 * Adaptive integration: the 15-point Kronrod rule, with the 7-point Gauss rule inside it to judge its error, on panels halved where
 * they differ. Nodes and weights: Piessens, de Doncker-Kapenga, Ueberhuber and Kahaner, QUADPACK, Springer 1983, rule QK15.
 */
final class Quadrature {
    private static final double[] NODES = {
        0.9914553711208126,
        0.9491079123427585,
        0.8648644233597691,
        0.7415311855993945,
        0.5860872354676911,
        0.4058451513773972,
        0.20778495500789848
    };
    private static final double[] KRONROD = {
        0.022935322010529224,
        0.06309209262997856,
        0.10479001032225019,
        0.14065325971552592,
        0.1690047266392679,
        0.19035057806478542,
        0.20443294007529889
    };
    private static final double KRONROD_MIDDLE = 0.20948214108472782;
    /** Gauss weights of every second node. */
    private static final double[] GAUSS = {0.1294849661688697, 0.27970539148927664, 0.3818300505051189};

    private static final double GAUSS_MIDDLE = 0.4179591836734694;

    private Quadrature() {}

    /**
     * The integral of f from one bound to another.
     *
     * @param tolerance difference of the two rules at which a panel is good enough
     * @param halvings how many times a panel may be halved, so that a jump in f comes to an end
     */
    static double integrate(DoubleUnaryOperator f, double from, double to, double tolerance, int halvings) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double centre = f.applyAsDouble(middle);
        double kronrod = KRONROD_MIDDLE * centre;
        double gauss = GAUSS_MIDDLE * centre;
        for (int i = 0; i < NODES.length; i++) {
            double pair = f.applyAsDouble(middle - half * NODES[i]) + f.applyAsDouble(middle + half * NODES[i]);
            kronrod += KRONROD[i] * pair;
            if (i % 2 == 1) {
                gauss += GAUSS[i / 2] * pair;
            }
        }
        if (halvings == 0 || Math.abs(kronrod - gauss) * half <= tolerance) {
            return kronrod * half;
        }
        // a kink or a jump is in one half only: were the tolerance halved too, the panels at it would never be good
        // enough
        double next = 0.7 * tolerance;
        return integrate(f, from, middle, next, halvings - 1) + integrate(f, middle, to, next, halvings - 1);
    }
}
