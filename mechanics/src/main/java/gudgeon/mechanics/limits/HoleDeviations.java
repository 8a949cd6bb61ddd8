package gudgeon.mechanics.limits;

import java.util.OptionalDouble;

/** Fundamental deviations of holes, ISO 286-1:2010, tables 2 and 3, by the rules by which the standard draws them from those of shafts. */
final class HoleDeviations {
    /** ES of J, micrometres. First column: sizes up to and including so many mm. */
    private static final DeviationTable J = DeviationTable.of("""
            mm  J6 J7 J8
            3    2  4  6
            6    5  6 10
            10   5  8 12
            18   6 10 15
            30   8 12 20
            50  10 14 24
            80  13 18 28
            120 16 22 34
            180 18 26 41
            250 22 30 47
            315 25 36 55
            400 29 39 60
            500 33 43 66
            """);

    private static final int FINEST_WITH_DELTA = 3;
    private static final int COARSEST_WITH_DELTA_K_TO_N = 8;
    private static final int COARSEST_WITH_DELTA_P_TO_ZC = 7;
    private static final double NO_DELTA_UP_TO_MM = 3;

    private HoleDeviations() {}

    /** How far EI stands above the nominal size, micrometres; letters A to G. General rule: EI = -es. */
    static OptionalDouble above(String letters, double sizeMm) {
        return ShaftDeviations.below(Designation.small(letters), sizeMm);
    }

    /** ES of J, micrometres; grades 6 to 8. */
    static OptionalDouble ofJ(int grade, double sizeMm) {
        return J.micrometres("J" + grade, sizeMm);
    }

    /**
     * ES of K to ZC, micrometres. Special rule: ES = -ei + delta for K, M and N up to grade 8 and P to ZC up to grade 7; in coarser
     * grades ES = -ei, but for K, which is not held above 3 mm, and N, which is then 0. M6 from 250 to 315 mm is an exception of
     * the tables.
     */
    static OptionalDouble below(String letters, int grade, double sizeMm) {
        if (grade < FINEST_WITH_DELTA) {
            return OptionalDouble.empty();
        }
        OptionalDouble shaft = ShaftDeviations.above(Designation.small(letters), sizeMm);
        if (shaft.isEmpty()) {
            return shaft;
        }
        boolean kToN = "KMN".contains(letters);
        if (grade <= (kToN ? COARSEST_WITH_DELTA_K_TO_N : COARSEST_WITH_DELTA_P_TO_ZC)) {
            return OptionalDouble.of(
                    letters.equals("M") && grade == 6 && sizeMm > 250 && sizeMm <= 315
                            ? -9
                            : delta(grade, sizeMm) - shaft.getAsDouble());
        }
        if ((letters.equals("K") && sizeMm > NO_DELTA_UP_TO_MM) || (letters.equals("N") && sizeMm <= 1)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(letters.equals("N") && sizeMm > NO_DELTA_UP_TO_MM ? 0 : -shaft.getAsDouble());
    }

    /**
     * Delta, micrometres: what a grade is wider than the next finer one, which is what the standard's table of delta holds; 0 for
     * sizes up to 3 mm.
     */
    static double delta(int grade, double sizeMm) {
        return sizeMm <= NO_DELTA_UP_TO_MM
                ? 0
                : StandardTolerance.micrometres(grade, sizeMm) - StandardTolerance.micrometres(grade - 1, sizeMm);
    }
}
