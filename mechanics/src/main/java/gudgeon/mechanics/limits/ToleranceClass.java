package gudgeon.mechanics.limits;

import java.util.OptionalDouble;

/**
 * Limits of one size by ISO 286: "47 N7" of a hole, "20 k6" of a shaft. Sizes up to 500 mm, grades 1 to 18.
 *
 * @param sizeMm nominal size, mm
 * @param letters fundamental deviation: A to ZC of a hole, a to zc of a shaft
 * @param grade of the standard tolerance
 * @param lowerMicrometres lower limit deviation, EI or ei
 * @param upperMicrometres upper limit deviation, ES or es
 */
public record ToleranceClass(
        double sizeMm, String letters, int grade, double lowerMicrometres, double upperMicrometres) {

    /**
     * Reads a designation such as "47 N7" or "20 k6".
     *
     * @throws UnknownDesignation with all that is wrong with it
     */
    public static ToleranceClass of(String designation) {
        return Designation.read(designation).single();
    }

    /**
     * The limits of a tolerance class.
     *
     * @throws UnknownDesignation when letters, grade or size are not in the tables, or not together
     */
    static ToleranceClass of(double sizeMm, String letters, int grade) {
        double tolerance = StandardTolerance.micrometres(grade, sizeMm);
        if (Designation.small(letters).equals("js")) {
            return new ToleranceClass(sizeMm, letters, grade, -tolerance / 2, tolerance / 2);
        }
        boolean hole = isHole(letters);
        OptionalDouble lower = hole ? holeLower(letters, sizeMm) : shaftLower(letters, grade, sizeMm);
        OptionalDouble upper = hole ? holeUpper(letters, grade, sizeMm) : shaftUpper(letters, sizeMm);
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new UnknownDesignation(letters + grade + " is not in the tables of ISO 286 for "
                    + Designation.plain(sizeMm) + " mm; another grade or letter was perhaps meant.");
        }
        return lower.isPresent()
                ? new ToleranceClass(sizeMm, letters, grade, lower.getAsDouble(), lower.getAsDouble() + tolerance)
                : new ToleranceClass(sizeMm, letters, grade, upper.getAsDouble() - tolerance, upper.getAsDouble());
    }

    private static OptionalDouble shaftUpper(String letters, double sizeMm) {
        return letters.equals("h") ? OptionalDouble.of(0) : negated(ShaftDeviations.below(letters, sizeMm));
    }

    private static OptionalDouble shaftLower(String letters, int grade, double sizeMm) {
        return switch (letters) {
            case "j" -> ShaftDeviations.ofJ(grade, sizeMm);
            case "k" -> grade >= 4 && grade <= 7 ? ShaftDeviations.above(letters, sizeMm) : OptionalDouble.of(0);
            default -> ShaftDeviations.above(letters, sizeMm);
        };
    }

    private static OptionalDouble holeLower(String letters, double sizeMm) {
        return letters.equals("H") ? OptionalDouble.of(0) : HoleDeviations.above(letters, sizeMm);
    }

    private static OptionalDouble holeUpper(String letters, int grade, double sizeMm) {
        return letters.equals("J") ? HoleDeviations.ofJ(grade, sizeMm) : HoleDeviations.below(letters, grade, sizeMm);
    }

    private static OptionalDouble negated(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(-value.getAsDouble()) : value;
    }

    static boolean isHole(String letters) {
        return Character.isUpperCase(letters.charAt(0));
    }

    /** Whether it is of a hole; else it is of a shaft. */
    public boolean isHole() {
        return isHole(letters);
    }

    /** Smallest size within limits, mm. */
    public double leastMm() {
        return sizeMm + lowerMicrometres / 1000;
    }

    /** Largest size within limits, mm. */
    public double mostMm() {
        return sizeMm + upperMicrometres / 1000;
    }

    /** As it is written: "47 N7". */
    public String designation() {
        return Designation.plain(sizeMm) + " " + letters + grade;
    }
}
