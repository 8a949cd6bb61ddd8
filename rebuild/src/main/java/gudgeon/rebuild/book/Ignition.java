package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * The spark as the book wants it. What stands after ± at a size is how far off it may be set.
 *
 * @param opens where the points open before top dead centre: degrees of the crank, or mm of the piston
 * @param gap gap of the points at their widest
 * @param dwell degrees of the points cam for which the points are closed
 * @param flywheel diameter of the flywheel where marks are made
 * @param turns which way the flywheel turns, seen from its face
 * @param points how the cam that opens the points turns
 */
public record Ignition(
        Optional<Size> opens,
        Optional<Size> gap,
        Optional<Size> dwell,
        Optional<Size> flywheel,
        Optional<Turns> turns,
        Optional<PointsCam> points) {
    private static final double SQRT_3 = Math.sqrt(3);

    /** Which way a shaft turns, seen from outside. */
    public enum Turns {
        CLOCKWISE("clockwise"),
        ANTICLOCKWISE("anticlockwise");

        private final String word;

        Turns(String word) {
            this.word = word;
        }

        /** The word as a person reads it. */
        public String word() {
            return word;
        }
    }

    /** How the cam that opens the points turns. */
    public enum PointsCam {
        FLYWHEEL(1, "turning with the crank"),
        CAMSHAFT(2, "turning at half the crank's speed");

        private final int crankTurns;
        private final String words;

        PointsCam(int crankTurns, String words) {
            this.crankTurns = crankTurns;
            this.words = words;
        }

        /** Turns of the crank for one of the points cam. */
        public int crankTurns() {
            return crankTurns;
        }

        /** How it turns, as a person reads it. */
        public String words() {
            return words;
        }
    }

    /** How far a size may be off either way, in its unit; 0 where the book does not say. */
    public static double mayBeOff(Size size) {
        // a stated ± is held as the standard deviation of anywhere within it
        return size.quantity().standardUncertainty() * SQRT_3;
    }
}
