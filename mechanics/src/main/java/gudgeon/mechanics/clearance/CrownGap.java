package gudgeon.mechanics.clearance;

/** The gaps between a valve and the crown. */
public enum CrownGap {
    /** How far the piston could rise along the bore before it touches the valve. */
    BORE,
    /** How far the valve could be opened further along its stem before it touches the crown. */
    VALVE,
    /** The least distance between the two bodies. */
    NEAREST,
    /** The least distance between the valve's edge and the wall of its pocket. */
    SIDE
}
