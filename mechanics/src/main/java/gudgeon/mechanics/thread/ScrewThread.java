package gudgeon.mechanics.thread;

/**
 * A screw thread with its basic sizes.
 *
 * @param designation how it is written, such as M6 or 1/4-26 BSF
 * @param form its profile
 * @param majorMm basic outside diameter in mm, greater than the pitch
 * @param pitchMm pitch in mm, greater than 0
 */
public record ScrewThread(String designation, ThreadForm form, double majorMm, double pitchMm) {
    public ScrewThread {
        if (!(pitchMm > 0) || !(majorMm > 2 * pitchMm) || !Double.isFinite(majorMm)) {
            throw new IllegalArgumentException(
                    "a thread has a pitch above 0 and a diameter of more than two pitches, got " + majorMm + " mm and "
                            + pitchMm + " mm");
        }
    }

    /**
     * The thread of a designation: M6, M8x1, 1/4 BSF, 1/4-28 UNF, 10-32 UNF, 2 BA, 5/16 CEI. The hand, LH or left-hand behind it,
     * does not change its sizes.
     *
     * @throws UnknownFastener when no such thread is held, with what there is instead
     */
    public static ScrewThread of(String designation) {
        return ThreadTable.read(designation);
    }

    /** Pitch diameter d2 in mm. */
    public double pitchDiameterMm() {
        return majorMm - form.pitchDepth() * pitchMm;
    }

    /** Diameter d3 in mm at the root of the screw's thread. */
    public double coreMm() {
        return majorMm - 2 * form.coreDepth() * pitchMm;
    }

    /** Minor diameter D1 in mm of the thread in the hole. */
    public double minorMm() {
        return majorMm - 2 * form.minorDepth() * pitchMm;
    }

    /** Diameter in mm of the circle whose area is {@link #stressAreaMm2()}. */
    public double stressDiameterMm() {
        return (pitchDiameterMm() + coreMm()) / 2;
    }

    /** Stress area A_s in mm²: π/4 ((d2 + d3)/2)² (ISO 898-1, 9.1.6.1). */
    public double stressAreaMm2() {
        return Math.PI / 4 * Math.pow(stressDiameterMm(), 2);
    }
}
