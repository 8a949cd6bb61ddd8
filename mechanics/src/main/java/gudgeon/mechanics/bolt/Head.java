package gudgeon.mechanics.bolt;

import gudgeon.mechanics.thread.ScrewThread;

/**
 * What a fastener bears on with. Width of the ring it bears on, as a multiple of the thread's diameter, is that of the standard's
 * M6 rounded down, which is within a twentieth for M5 to M12 (from memory).
 */
public enum Head {
    /** ISO 4017: 8.88 mm for M6. */
    HEXAGON(1.45),
    /** ISO 4762: 9.38 mm for M6. */
    SOCKET(1.5),
    /** ISO 1207, slotted: 10 mm for M6, less its edge. */
    CHEESE(1.6),
    /** ISO 7045, cross recess: 12 mm for M6, less its edge. */
    PAN(1.8),
    /** ISO 4162: 12.2 mm for M6. */
    FLANGE(2.0),
    /** A hexagon on a washer of ISO 7089 that is not of soft metal: 12 mm for M6. */
    WASHER(2.0);

    /** Clearance hole over thread: ISO 273, medium, 6.6 mm for M6. */
    private static final double HOLE = 1.1;

    private final double across;

    Head(double across) {
        this.across = across;
    }

    /** Mean diameter in mm that the head rubs on (VDI 2230, 5.4.2). */
    public double frictionDiameterMm(ScrewThread thread) {
        double turning = this == WASHER ? HEXAGON.across : across;
        return (turning + HOLE) / 2 * thread.majorMm();
    }

    /** Area in mm² that it bears on. */
    public double areaMm2(ScrewThread thread) {
        return Math.PI / 4 * (across * across - HOLE * HOLE) * Math.pow(thread.majorMm(), 2);
    }
}
