package gudgeon.mechanics.clearance;

/** A gap as a function of the crank angle, in three grades of care. Holds scratch space. */
abstract class OverCycle extends Minimiser {
    /** Whether {@link #value} may follow the place last found instead of looking everywhere. */
    boolean following;

    /** A value that the gap at an angle is surely not below, found in a moment. */
    abstract double bound(double theta);

    /** The gap from sampled points alone: never below the exact value, and above it by no more than the samples' spacing. */
    abstract double rough(double theta);

    /** The gap, looked for everywhere. Sets the place. */
    abstract double exact(double theta);

    /** The gap near the place last found. Sets the place. */
    abstract double near(double theta);

    /**
     * Looks everywhere at an angle for points that lie within a reach in mm of the least, any of which may be the least at an
     * angle nearby; says how many there are. A gap with one such point alone need not tell more.
     */
    int lowPoints(double theta, double reach) {
        exact(theta);
        return 1;
    }

    /** Makes {@link #near} follow one of the low points found. */
    void followLowPoint(int i) {}

    /** The place of the value found last, in the cylinder's frame. */
    abstract Place place();

    @Override
    final double value(double theta) {
        return following ? near(theta) : exact(theta);
    }
}
