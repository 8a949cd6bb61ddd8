package gudgeon.mechanics.spring;

import gudgeon.mechanics.metrology.Quantity;

/**
 * A valve spring in its place, valve shut. Lengths in mm.
 *
 * @param heightMm fitted height, from the spring's seat to the underside of its retainer
 * @param solidMm height with all coils touching, pressed in a vice or worked out by {@link CoilSpring#solidMm}
 * @param liftMm full lift of this valve
 */
public record FittedSpring(Quantity heightMm, Quantity solidMm, Quantity liftMm) {
    /**
     * The same after work on seat, valve and spring.
     *
     * @param sinksMm by how much the valve sinks into the head; negative if it stands higher. The retainer rises by as much, so
     *     the fitted height grows
     * @param shimsMm thickness of shims added under the spring, negative if taken out; the fitted height shrinks by as much
     */
    public FittedSpring after(Quantity sinksMm, Quantity shimsMm) {
        return new FittedSpring(heightMm.plus(sinksMm).minus(shimsMm), solidMm, liftMm);
    }

    /** What is left between the coils at full lift: fitted height less lift less solid height. At 0 or below they bind. */
    public Quantity marginMm() {
        return heightMm.minus(liftMm).minus(solidMm);
    }

    /**
     * The thickest shims that still leave a margin, the doubt expanded by 2 taken off; negative if even now it isn't left.
     *
     * @param leastMarginMm margin wanted at full lift
     */
    public double mostShimsMm(double leastMarginMm) {
        Quantity margin = marginMm();
        return margin.value() - 2 * margin.standardUncertainty() - leastMarginMm;
    }

    /**
     * Force in N with the valve shut: rate times what the spring is pressed together from its free length.
     *
     * @param freeMm free length
     * @param rateNPerMm rate, see {@link CoilSpring#rateNPerMm}
     */
    public double forceShutN(double freeMm, double rateNPerMm) {
        return rateNPerMm * (freeMm - heightMm.value());
    }

    /** Force in N at full lift; says nothing once the coils bind. */
    public double forceOpenN(double freeMm, double rateNPerMm) {
        return rateNPerMm * (freeMm - heightMm.value() + liftMm.value());
    }
}
