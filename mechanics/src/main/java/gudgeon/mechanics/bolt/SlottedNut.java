package gudgeon.mechanics.bolt;

/**
 * A nut that can only be locked in some positions: a castle nut at its slots, a nut with a tab washer at its flats. It is tightened
 * to the low end of its torque and turned on to the next position, never back.
 *
 * @param positions positions in a full turn, 1 or more: six for a castle nut with one hole through the bolt, or a hexagon
 */
public record SlottedNut(int positions) {
    public SlottedNut {
        if (positions < 1) {
            throw new IllegalArgumentException("a nut has at least one position to be locked in, got " + positions);
        }
    }

    /** Most that it has to be turned on to its next position, degrees. */
    public double mostTurnDeg() {
        return 360.0 / positions;
    }
}
