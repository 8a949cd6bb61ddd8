package gudgeon.mechanics.clearance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the least value of a gap over the cycle and the spans in which it is negative: a rough pass over the cycle that leaves
 * out angles where a bound already says more, then an exact search around each low point. Reused between gaps.
 */
final class CycleSearch {
    private static final double CYCLE = 720;
    private static final int STEPS = 180;
    private static final double STEP = CYCLE / STEPS;
    /** A low point of the rough pass may lie this much above the least, in mm, and still hide it. */
    private static final double HIDDEN_MM = 1.2;

    /** Points this much above the least at one step may be the least before the next. */
    private static final double REACH_MM = 0.2;

    /** A least this near to the end of its bracket, in degrees, is taken to lie beyond it. */
    private static final double END_DEG = 0.1;

    /** Steps this near to a low point found lead to it, in degrees. */
    private static final double SAME_LOW_DEG = 1.5 * STEP;

    private static final int MOST_MOVES = 6;
    /** Values within this of each other, in mm, are level. */
    private static final double LEVEL_MM = 1e-9;

    private static final int STRIDE = 3;
    /** The same for a rough pass that looks at every third step only. */
    private static final double HIDDEN_BETWEEN_STRIDES_MM = 2.5;

    private static final double THOUSANDTHS = 1000;
    private static final double ANGLE_TOLERANCE = 0.004;
    /** An exact look that finds less than following did by more than this, in mm, means that the place jumped. */
    private static final double JUMPED_MM = 4e-4;

    private final double[] value = new double[STEPS];
    private final double[] bound = new double[STEPS];

    private final boolean[] looked = new boolean[STEPS];
    private final double[] foundAt = new double[16];
    private int found;

    double leastAt;

    /** The least value over the cycle, at {@link #leastAt}. Positive infinity when the gap never exists. */
    double least(OverCycle gap) {
        double roughest = roughPass(gap, 0);
        double best = Double.POSITIVE_INFINITY;
        leastAt = 0;
        found = 0;
        for (int i = lowest(roughest + HIDDEN_MM); i >= 0; i = lowest(roughest + HIDDEN_MM)) {
            looked[i] = true;
            if (foundNear(i * STEP)) {
                continue;
            }
            double here = refine(gap, i * STEP);
            keepFound(gap.at);
            if (here < best - LEVEL_MM) {
                best = here;
                leastAt = wrap(Math.rint(gap.at * THOUSANDTHS) / THOUSANDTHS);
            }
        }
        return best;
    }

    /** The angles of all low points within a reach in mm of the least. */
    List<Double> lowAngles(OverCycle gap, double reachMm) {
        double roughest = roughPass(gap, reachMm);
        List<Double> angles = new ArrayList<>();
        found = 0;
        for (int i = 0; i < STEPS; i++) {
            if (low(i, roughest + HIDDEN_MM + reachMm)) {
                refine(gap, i * STEP);
                angles.add(gap.at);
            }
        }
        return angles;
    }

    /** The lowest step not looked at yet of those that are low, -1 when there is none. */
    private int lowest(double below) {
        int lowest = -1;
        for (int i = 0; i < STEPS; i++) {
            if (!looked[i] && low(i, below) && (lowest < 0 || value[i] < value[lowest])) {
                lowest = i;
            }
        }
        return lowest;
    }

    /** Whether a low point was found so near to an angle that the angle leads to it, too. */
    private boolean foundNear(double angle) {
        for (int i = 0; i < found; i++) {
            if (Math.abs(Math.IEEEremainder(angle - foundAt[i], CYCLE)) < SAME_LOW_DEG) {
                return true;
            }
        }
        return false;
    }

    private void keepFound(double angle) {
        if (found < foundAt.length) {
            foundAt[found++] = angle;
        }
    }

    private boolean low(int i, double below) {
        return value[i] < below
                && value[i] < Double.POSITIVE_INFINITY
                && value[i] <= value[(i + 1) % STEPS]
                && value[i] < orLess(value[(i + STEPS - 1) % STEPS]);
    }

    /** Lets the first of a run of equal values through, even where all of the cycle is equal. */
    private static double orLess(double before) {
        return before + 1e-12;
    }

    private double roughPass(OverCycle gap, double reach) {
        int lowest = 0;
        Arrays.fill(looked, false);
        for (int i = 0; i < STEPS; i++) {
            bound[i] = gap.bound(i * STEP);
            if (bound[i] < bound[lowest]) {
                lowest = i;
            }
        }
        double best = gap.rough(lowest * STEP);
        for (int i = 0; i < STEPS; i += STRIDE) {
            best = roughAt(gap, i, best, reach);
        }
        // between strides only where a low point can hide
        for (int i = 0; i < STEPS; i++) {
            if (i % STRIDE != 0) {
                int before = i - i % STRIDE;
                double beside = Math.min(value[before], value[(before + STRIDE) % STEPS]);
                if (beside < best + HIDDEN_BETWEEN_STRIDES_MM + reach || lowest / STRIDE == i / STRIDE) {
                    best = roughAt(gap, i, best, reach);
                } else {
                    value[i] = Double.POSITIVE_INFINITY;
                }
            }
        }
        return best;
    }

    private double roughAt(OverCycle gap, int i, double best, double reach) {
        value[i] = bound[i] < Math.max(best, 0) + 0.1 + reach ? gap.rough(i * STEP) : Double.POSITIVE_INFINITY;
        return Math.min(best, value[i]);
    }

    /** The least value around a low angle: each low point there is followed, since each may be the least at another angle. */
    private double refine(OverCycle gap, double around) {
        double from = around;
        double least = refineOnce(gap, from);
        // a rough value may have pointed to the wrong step: then the least stands at the bracket's end, and is sought
        // from there
        for (int i = 0; i < MOST_MOVES && Math.abs(gap.at - from) > STEP - END_DEG; i++) {
            from = gap.at;
            if (foundNear(from)) {
                return least;
            }
            double beyond = refineOnce(gap, from);
            if (beyond > least - LEVEL_MM) {
                gap.at = from;
                return least;
            }
            least = beyond;
        }
        return least;
    }

    private static double refineOnce(OverCycle gap, double around) {
        int points = gap.lowPoints(around, REACH_MM);
        double least = Double.POSITIVE_INFINITY;
        double leastAt = around;
        gap.following = true;
        for (int i = 0; i < points; i++) {
            gap.followLowPoint(i);
            double followed = gap.least(around - STEP, around + STEP, ANGLE_TOLERANCE);
            if (followed < least) {
                least = followed;
                leastAt = gap.at;
            }
        }
        gap.following = false;
        double exact = gap.exact(leastAt);
        if (Math.abs(exact - least) > JUMPED_MM) {
            exact = gap.least(around - STEP, around + STEP, ANGLE_TOLERANCE);
            leastAt = gap.at;
            exact = Math.min(exact, gap.exact(leastAt));
        }
        gap.at = leastAt;
        return exact;
    }

    /** The spans in which the gap is negative. Call right after {@link #least}, with what it found. */
    List<Span> negativeSpans(OverCycle gap, double least) {
        List<Span> spans = new ArrayList<>();
        if (!(least < 0)) {
            return spans;
        }
        for (int i = 0; i < STEPS; i++) {
            // an infinite bound may only mean that another angle says the same, as with shut valves
            if (bound[i] < 0 || bound[i] == Double.POSITIVE_INFINITY) {
                value[i] = gap.exact(i * STEP);
            } else {
                value[i] = Double.POSITIVE_INFINITY;
            }
        }
        int start = 0;
        while (start < STEPS && value[start] < 0) {
            start++;
        }
        if (start == STEPS) {
            spans.add(new Span(0, CYCLE));
            return spans;
        }
        boolean seen = false;
        for (int n = 1; n <= STEPS; n++) {
            int i = (start + n) % STEPS;
            int j = (i + STEPS - 1) % STEPS;
            if (value[i] < 0 && !(value[j] < 0)) {
                double begins = crossing(gap, j * STEP, j * STEP + STEP);
                int m = i;
                while (value[(m + 1) % STEPS] < 0) {
                    m = (m + 1) % STEPS;
                }
                double ends = crossing(gap, m * STEP + STEP, m * STEP);
                seen |= within(leastAt, begins, ends);
                spans.add(new Span(wrap(begins), wrap(ends)));
            }
        }
        if (!seen) {
            spans.add(between(gap));
        }
        spans.sort((a, b) -> Double.compare(a.fromDeg(), b.fromDeg()));
        return spans;
    }

    /** A span so short that it lies between two steps. */
    private Span between(OverCycle gap) {
        double from = Math.floor(leastAt / STEP) * STEP;
        return new Span(wrap(crossing(gap, from, leastAt)), wrap(crossing(gap, from + STEP, leastAt)));
    }

    private static boolean within(double angle, double from, double to) {
        double span = wrap(to - from);
        return wrap(angle - from) <= span + STEP * 1e-3;
    }

    /** Where the gap turns negative between an angle at which it is not and one at which it is. */
    private static double crossing(OverCycle gap, double positive, double negative) {
        double out = positive;
        double in = negative;
        while (Math.abs(out - in) > ANGLE_TOLERANCE) {
            double middle = (out + in) / 2;
            if (gap.exact(middle) < 0) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return (out + in) / 2;
    }

    static double wrap(double theta) {
        double within = theta % CYCLE;
        // adding 0 makes of -0 a plain 0
        return within < 0 ? within + CYCLE : within + 0.0;
    }
}
