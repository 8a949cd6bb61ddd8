package gudgeon.mechanics.valvetrain;

/** Lift of a valve along its stem over the crank angle. Implementations are immutable and safe to share between threads. */
@FunctionalInterface
public interface Lift {
    /** Lift in mm, never negative, at a crank angle in degrees (any real value, taken modulo 720). */
    double mmAt(double thetaDeg);
}
