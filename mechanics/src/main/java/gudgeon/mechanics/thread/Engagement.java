package gudgeon.mechanics.thread;

/**
 * How far a screw's thread goes into its hole's, and what that bears before it strips. Shear areas by FED-STD-H28/2B (the same as
 * in VDI 2230, 5.5.5), with the sizes at the loose end of their tolerances and for any flank angle.
 *
 * @param thread the thread
 * @param lengthMm length over which both are threaded, in mm, 0 or more
 */
public record Engagement(ScrewThread thread, double lengthMm) {
    /** What the first turns of a chamfered hole do not bear, in pitches (VDI 2230, 5.5.5, from memory). */
    private static final double LOST_PITCHES = 0.8;

    /** Threads bend and a nut widens: the least of the factors C2 and C3 of VDI 2230, 5.5.5 (from memory). */
    private static final double BENDING = 0.897;

    public Engagement {
        if (!(lengthMm >= 0) || !Double.isFinite(lengthMm)) {
            throw new IllegalArgumentException("engagement is 0 mm or more, got " + lengthMm);
        }
    }

    /** Engaged length in mm that counts, without the turns lost at the chamfer. */
    public double effectiveMm() {
        return Math.max(0, lengthMm - LOST_PITCHES * thread.pitchMm());
    }

    /** Area in mm² that the thread in the hole is sheared over. */
    public double holeShearMm2() {
        return effectiveMm() * holeShearPerMm(thread);
    }

    /** Area in mm² that the screw's thread is sheared over. */
    public double screwShearMm2() {
        return effectiveMm() * screwShearPerMm(thread);
    }

    /**
     * Pull in N at which one of the two threads strips.
     *
     * @param holeShearMpa shear strength of what the hole is cut in, MPa, above 0
     * @param screwShearMpa shear strength of the screw, MPa, above 0
     */
    public double stripsAtN(double holeShearMpa, double screwShearMpa) {
        return effectiveMm() * bearsPerMm(thread, holeShearMpa, screwShearMpa);
    }

    /**
     * Engagement in mm that bears a pull.
     *
     * @param pullN the pull, N, 0 or more
     * @param holeShearMpa shear strength of what the hole is cut in, MPa, above 0
     * @param screwShearMpa shear strength of the screw, MPa, above 0
     */
    public static double neededMm(ScrewThread thread, double pullN, double holeShearMpa, double screwShearMpa) {
        return pullN / bearsPerMm(thread, holeShearMpa, screwShearMpa) + LOST_PITCHES * thread.pitchMm();
    }

    private static double bearsPerMm(ScrewThread thread, double holeShearMpa, double screwShearMpa) {
        if (!(holeShearMpa > 0) || !(screwShearMpa > 0)) {
            throw new IllegalArgumentException(
                    "shear strengths are above 0 MPa, got " + holeShearMpa + " and " + screwShearMpa);
        }
        return BENDING * Math.min(holeShearMpa * holeShearPerMm(thread), screwShearMpa * screwShearPerMm(thread));
    }

    private static double holeShearPerMm(ScrewThread thread) {
        ThreadLimits loose = ThreadLimits.of(thread);
        return shearPerMm(thread, loose.screwMajorMm(), loose.screwMajorMm() - loose.holePitchMm());
    }

    private static double screwShearPerMm(ScrewThread thread) {
        ThreadLimits loose = ThreadLimits.of(thread);
        return shearPerMm(thread, loose.holeMinorMm(), loose.screwPitchMm() - loose.holeMinorMm());
    }

    private static double shearPerMm(ScrewThread thread, double diameterMm, double fromPitchLineMm) {
        return Math.PI * diameterMm * (0.5 + thread.form().tanHalfAngle() * fromPitchLineMm / thread.pitchMm());
    }
}
