package gudgeon.mechanics.valvetrain;

/**
 * Named laws of a cam's rise from 0 to 1 over a fraction of the rise from 0 to 1 (R. L. Norton, Cam Design and Manufacturing
 * Handbook, 2nd ed., chapters 3 and 4). A lobe rises by the law over half its duration and falls by its mirror image.
 */
public enum LiftLaw {
    /** Simple harmonic motion. */
    HARMONIC {
        @Override
        double riseWithin(double x) {
            return (1 - Math.cos(Math.PI * x)) / 2;
        }
    },
    /** Cycloidal displacement. */
    CYCLOIDAL {
        @Override
        double riseWithin(double x) {
            return x - Math.sin(2 * Math.PI * x) / (2 * Math.PI);
        }
    },
    /** The 3-4-5 polynomial. */
    POLYNOMIAL_345 {
        @Override
        double riseWithin(double x) {
            return x * x * x * (10 + x * (-15 + 6 * x));
        }
    },
    /** The 4-5-6-7 polynomial. */
    POLYNOMIAL_4567 {
        @Override
        double riseWithin(double x) {
            return x * x * x * x * (35 + x * (-84 + x * (70 - 20 * x)));
        }
    };

    abstract double riseWithin(double x);

    /** The rise, 0 to 1, at a fraction of the rise's angle; 0 before it and 1 after. */
    public double rise(double fraction) {
        return fraction <= 0 ? 0 : fraction >= 1 ? 1 : riseWithin(fraction);
    }
}
