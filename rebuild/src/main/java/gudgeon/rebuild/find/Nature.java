package gudgeon.rebuild.find;

/** What makes a crank go tight, as far as a test can tell. */
enum Nature {
    /** A valve meets the crown or another valve: only while a cam opens it. */
    VALVE,
    /** The crown meets the head. */
    HEAD,
    /** The spark plug reaches too far in. */
    PLUG,
    /** Nothing but the pressure of compression. */
    COMPRESSION,
    /** A ring or the piston catches in the bore. */
    RING,
    /** The crank, its rod or its bearings. */
    CRANK,
    /** What the crank drives on its way to the gearbox. */
    DRIVE,
    /** Something loose that lies in the way now and then. */
    LOOSE,
    /** None of the others. */
    UNLISTED
}
