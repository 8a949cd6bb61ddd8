package gudgeon.mechanics.bolt;

import gudgeon.mechanics.thread.ScrewThread;

/**
 * A fastener being tightened: torque and preload.
 *
 * @param thread its thread
 * @param strength its strength class
 * @param head what it bears on with
 */
public record Bolt(ScrewThread thread, StrengthClass strength, Head head) {
    /**
     * Torque in N·m for each N of preload: P/(2π) + μ d2/(2 cos α) + μ D/2 (VDI 2230, 5.4.2; Shigley, eq. 8-26 to 8-27).
     *
     * @param friction coefficient of friction in thread and under the head, 0 to 1
     */
    public double torquePerN(double friction) {
        requireFriction(friction);
        double pitch = thread.pitchMm() / (2 * Math.PI);
        return (pitch + friction * threadArmMm() + friction * head.frictionDiameterMm(thread) / 2) / 1000;
    }

    /** Preload in N that a torque in N·m makes at a friction. */
    public double preloadN(double torqueNm, double friction) {
        return torqueNm / torquePerN(friction);
    }

    /**
     * Preload in N at which pull and twist together load the bolt to a share of its yield strength (VDI 2230, 5.4.3: at yield the
     * twist is even over the section).
     *
     * @param share share of the yield strength, above 0 up to 1
     * @param friction coefficient of friction, 0 to 1
     */
    public double preloadAtYieldN(double share, double friction) {
        requireFriction(friction);
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("a share of the yield strength is above 0 and up to 1, got " + share);
        }
        double twistArm = thread.pitchMm() / (2 * Math.PI) + friction * threadArmMm();
        double twistOverPull = 3 * twistArm / thread.stressDiameterMm();
        return share * strength.yieldMpa() * thread.stressAreaMm2() / Math.sqrt(1 + 3 * twistOverPull * twistOverPull);
    }

    /** Proof load in N (ISO 898-1, table 4). */
    public double proofLoadN() {
        return strength.proofMpa() * thread.stressAreaMm2();
    }

    private double threadArmMm() {
        return thread.pitchDiameterMm()
                / (2 * Math.cos(Math.toRadians(thread.form().halfAngleDeg())));
    }

    private static void requireFriction(double friction) {
        if (!(friction >= 0 && friction <= 1)) {
            throw new IllegalArgumentException("a coefficient of friction is 0 to 1, got " + friction);
        }
    }
}
