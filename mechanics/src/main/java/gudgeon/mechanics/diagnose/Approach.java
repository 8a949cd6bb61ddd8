package gudgeon.mechanics.diagnose;

import gudgeon.mechanics.diagnose.TightPattern.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The gap of bodies over a cycle, and at which crank angles they meet if it is less than it seems. The crank is turned from bottom
 * dead centre at 180 degrees, forward and backward, until they meet. Between samples the gap is taken as straight. Immutable.
 */
public final class Approach {
    private static final double BOTTOM_DEG = 180;

    private final double[] gapMm;
    private final double stepDeg;

    /**
     * A gap sampled evenly.
     *
     * @param gapMm the gap in mm at angles from 0, evenly spaced over 720 degrees without the last; at least 360 samples
     */
    public Approach(double... gapMm) {
        if (gapMm.length < FeltAngle.TURN_DEG) {
            throw new IllegalArgumentException("a gap is sampled at 360 angles or more, got " + gapMm.length);
        }
        this.gapMm = gapMm.clone();
        this.stepDeg = FeltAngle.CYCLE_DEG / gapMm.length;
    }

    /** The least of the samples, in mm. */
    public double leastMm() {
        double least = Double.POSITIVE_INFINITY;
        for (double gap : gapMm) {
            least = Math.min(least, gap);
        }
        return least;
    }

    /** The angles, each in [180, 900) forward and (-540, 180] backward brought into [0, 720), at which they meet; none if they don't. */
    public OptionalDouble meetDeg(boolean forward, double lessMm) {
        int way = forward ? 1 : -1;
        int start = (int) Math.round(BOTTOM_DEG / stepDeg);
        double before = at(start) - lessMm;
        if (before < 0) {
            return OptionalDouble.of(BOTTOM_DEG);
        }
        for (int i = 1; i < gapMm.length; i++) {
            double here = at(start + way * i) - lessMm;
            if (here < 0) {
                double part = Double.isFinite(before) ? before / (before - here) : 1;
                return OptionalDouble.of(wrap(BOTTOM_DEG + way * (i - 1 + part) * stepDeg));
            }
            before = here;
        }
        return OptionalDouble.empty();
    }

    /**
     * The pairs of angles at which they may meet, each with its chance: their sum is the chance that they meet at all; empty where
     * they never do.
     */
    public List<Pair> pairs(GapDoubt doubt) {
        List<Pair> pairs = new ArrayList<>();
        for (GapDoubt.Less less : doubt.spread()) {
            OptionalDouble forward = meetDeg(true, less.mm());
            OptionalDouble backward = meetDeg(false, less.mm());
            if (less.weight() > 0 && forward.isPresent() && backward.isPresent()) {
                pairs.add(new Pair(less.weight(), forward.getAsDouble(), backward.getAsDouble()));
            }
        }
        return pairs;
    }

    private double at(int sample) {
        return gapMm[Math.floorMod(sample, gapMm.length)];
    }

    private static double wrap(double deg) {
        double wrapped = deg % FeltAngle.CYCLE_DEG;
        return wrapped < 0 ? wrapped + FeltAngle.CYCLE_DEG : wrapped;
    }
}
