package gudgeon.mechanics.spring;

/**
 * A helical compression spring of round wire.
 *
 * @param wireMm diameter of the wire, greater than 0
 * @param meanMm mean diameter of the coils, outside diameter less one wire, greater than the wire
 * @param coils all coils, the dead ones at the ends included
 * @param ends form of the ends
 */
public record CoilSpring(double wireMm, double meanMm, double coils, Ends ends) {
    /** Shear modulus of hard-drawn and oil-tempered spring steel in MPa, 11.5 Mpsi (Shigley, table 10-5, from memory). */
    public static final double STEEL_MPA = 79_300;

    /** Form of the ends: dead coils at both together, and solid height in wires beyond all coils (Shigley, table 10-1). */
    public enum Ends {
        /** Cut off and left open. */
        PLAIN(0, 1),
        /** Cut off and ground flat. */
        PLAIN_GROUND(1, 0),
        /** Last coil bent down on the next. */
        CLOSED(2, 1),
        /** Last coil bent down on the next and ground flat, as valve springs are. */
        CLOSED_GROUND(2, 0);

        private final double dead;
        private final double beyond;

        Ends(double dead, double beyond) {
            this.dead = dead;
            this.beyond = beyond;
        }
    }

    public CoilSpring {
        if (!(wireMm > 0) || !(meanMm > wireMm) || !(coils > ends.dead)) {
            throw new IllegalArgumentException("a spring has wire above 0, coils wider than the wire and more than "
                    + ends.dead + " of them, got wire " + wireMm + " mm, mean diameter " + meanMm + " mm, " + coils
                    + " coils");
        }
    }

    /** Coils that work: all but the dead ones. */
    public double activeCoils() {
        return coils - ends.dead;
    }

    /**
     * Rate in N/mm: G d^4 / (8 D^3 n) (Shigley's Mechanical Engineering Design, 9th ed., eq. 10-9).
     *
     * @param shearModulusMpa G of the wire, for steel {@link #STEEL_MPA}
     */
    public double rateNPerMm(double shearModulusMpa) {
        return shearModulusMpa * Math.pow(wireMm, 4) / (8 * Math.pow(meanMm, 3) * activeCoils());
    }

    /** Height in mm with all coils touching (Shigley, table 10-1). */
    public double solidMm() {
        return (coils + ends.beyond) * wireMm;
    }

    /** Shear stress in MPa in the wire under a force, inner side, with Bergstraesser's factor (Shigley, eq. 10-5 to 10-7). */
    public double stressMpa(double forceN) {
        double index = meanMm / wireMm;
        double factor = (4 * index + 2) / (4 * index - 3);
        return factor * 8 * forceN * meanMm / (Math.PI * Math.pow(wireMm, 3));
    }
}
