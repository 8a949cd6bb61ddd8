package gudgeon.mechanics.bolt;

/**
 * Scale of a torque wrench. ISO 6789 tests one from a fifth of its greatest value upwards (6.5, from memory), so below that its error
 * is anybody's guess.
 *
 * @param leastNm least value of its scale, N·m, 0 or more
 * @param mostNm greatest value of its scale, N·m, above the least
 */
public record WrenchRange(double leastNm, double mostNm) {
    private static final double TESTED_FROM = 0.2;
    /** Greatest value in N·m of the small wrenches, which may err by more. */
    private static final double SMALL_NM = 10;

    public WrenchRange {
        if (!(leastNm >= 0) || !(mostNm > leastNm) || !Double.isFinite(mostNm)) {
            throw new IllegalArgumentException(
                    "a scale goes from 0 N·m or more to more than that, got " + leastNm + " to " + mostNm);
        }
    }

    /** Least torque in N·m it can be trusted for. */
    public double trustedFromNm() {
        return Math.max(leastNm, TESTED_FROM * mostNm);
    }

    /** Whether it can be trusted for a torque in N·m. */
    public boolean trusts(double torqueNm) {
        return torqueNm >= trustedFromNm() - 1e-9 && torqueNm <= mostNm + 1e-9;
    }

    /**
     * By how much of its reading a wrench of types I and II, class A to C, may err, in percent: 6 up to a greatest value of 10 N·m,
     * 4 above (ISO 6789-1:2017, 5.1.5, read from a wrench maker's account of it).
     */
    public double permissiblePercent() {
        return mostNm > SMALL_NM ? 4 : 6;
    }

    /** Torque in N·m that this wrench would have to reach for the least of its trusted range to be a given one: five times it. */
    public static double mostFor(double leastTrustedNm) {
        return leastTrustedNm / TESTED_FROM;
    }
}
