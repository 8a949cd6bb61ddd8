package gudgeon.mechanics.thread;

/**
 * A screw as thin and a hole as wide as their tolerances let them be, which is when they strip most easily. Tolerances are those
 * of ISO 965-1, 6g for the screw and 6H for the hole, by the formulas the standard's tables are rounded from (clause 13, from
 * memory); for other forms they stand in for their own, which are much alike.
 *
 * @param screwMajorMm least outside diameter of the screw, mm
 * @param screwPitchMm least pitch diameter of the screw, mm
 * @param holePitchMm greatest pitch diameter of the hole, mm
 * @param holeMinorMm greatest minor diameter of the hole, mm
 */
record ThreadLimits(double screwMajorMm, double screwPitchMm, double holePitchMm, double holeMinorMm) {
    static ThreadLimits of(ScrewThread thread) {
        double p = thread.pitchMm();
        double deviation = 0.001 * (15 + 11 * p);
        double major = 0.001 * (180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p));
        double pitch = 0.001 * 90 * Math.pow(p, 0.4) * Math.pow(thread.majorMm(), 0.1);
        double minor = 0.001 * (p < 1 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7));
        return new ThreadLimits(
                thread.majorMm() - deviation - major,
                thread.pitchDiameterMm() - deviation - pitch,
                thread.pitchDiameterMm() + 1.32 * pitch,
                thread.minorMm() + minor);
    }
}
