package gudgeon.mechanics.limits;

/** Standard tolerances IT1 to IT18 for sizes up to 500 mm: the values of ISO 286-1:2010, table 1, as they are rounded there. */
public final class StandardTolerance {
    /** The largest size of these tables, mm. */
    public static final double LARGEST_MM = 500;

    static final int FINEST = 1;
    static final int COARSEST = 18;

    private static final int FIRST_NOT_UP_TO_1_MM = 14;

    /** First the size in mm up to and including which a line holds, then IT1 to IT18 in micrometres. */
    private static final double[][] TABLE = {
        {3, 0.8, 1.2, 2, 3, 4, 6, 10, 14, 25, 40, 60, 100, 140, 250, 400, 600, 1000, 1400},
        {6, 1, 1.5, 2.5, 4, 5, 8, 12, 18, 30, 48, 75, 120, 180, 300, 480, 750, 1200, 1800},
        {10, 1, 1.5, 2.5, 4, 6, 9, 15, 22, 36, 58, 90, 150, 220, 360, 580, 900, 1500, 2200},
        {18, 1.2, 2, 3, 5, 8, 11, 18, 27, 43, 70, 110, 180, 270, 430, 700, 1100, 1800, 2700},
        {30, 1.5, 2.5, 4, 6, 9, 13, 21, 33, 52, 84, 130, 210, 330, 520, 840, 1300, 2100, 3300},
        {50, 1.5, 2.5, 4, 7, 11, 16, 25, 39, 62, 100, 160, 250, 390, 620, 1000, 1600, 2500, 3900},
        {80, 2, 3, 5, 8, 13, 19, 30, 46, 74, 120, 190, 300, 460, 740, 1200, 1900, 3000, 4600},
        {120, 2.5, 4, 6, 10, 15, 22, 35, 54, 87, 140, 220, 350, 540, 870, 1400, 2200, 3500, 5400},
        {180, 3.5, 5, 8, 12, 18, 25, 40, 63, 100, 160, 250, 400, 630, 1000, 1600, 2500, 4000, 6300},
        {250, 4.5, 7, 10, 14, 20, 29, 46, 72, 115, 185, 290, 460, 720, 1150, 1850, 2900, 4600, 7200},
        {315, 6, 8, 12, 16, 23, 32, 52, 81, 130, 210, 320, 520, 810, 1300, 2100, 3200, 5200, 8100},
        {400, 7, 9, 13, 18, 25, 36, 57, 89, 140, 230, 360, 570, 890, 1400, 2300, 3600, 5700, 8900},
        {LARGEST_MM, 8, 10, 15, 20, 27, 40, 63, 97, 155, 250, 400, 630, 970, 1550, 2500, 4000, 6300, 9700},
    };

    private StandardTolerance() {}

    /**
     * Width of a tolerance, micrometres.
     *
     * @param grade 1 to 18, for IT1 to IT18; IT01 and IT0 are for gauges and not held
     * @param sizeMm nominal size, above 0 up to 500 mm; above 1 mm for IT14 and coarser
     * @throws UnknownDesignation outside that
     */
    public static double micrometres(int grade, double sizeMm) {
        if (grade < FINEST || grade > COARSEST) {
            throw new UnknownDesignation("Tolerance grade " + grade + " is not held; grades are 1 to 18.");
        }
        if (!(sizeMm > 0 && sizeMm <= LARGEST_MM)) {
            throw new UnknownDesignation("A size of " + Designation.plain(sizeMm)
                    + " mm is outside the tables, which are for above 0 up to 500 mm.");
        }
        if (sizeMm <= 1 && grade >= FIRST_NOT_UP_TO_1_MM) {
            throw new UnknownDesignation("Grades 14 to 18 are not for sizes up to 1 mm.");
        }
        for (double[] line : TABLE) {
            if (sizeMm <= line[0]) {
                return line[grade];
            }
        }
        throw new AssertionError("the last line ends at the largest size");
    }
}
