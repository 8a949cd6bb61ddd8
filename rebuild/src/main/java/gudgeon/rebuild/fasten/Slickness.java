package gudgeon.rebuild.fasten;

import gudgeon.mechanics.bolt.Friction;
import gudgeon.rebuild.book.Lubrication;

/** How what is on a thread makes it slide. */
public final class Slickness {
    private Slickness() {}

    /** The friction to reckon with. */
    static Friction of(Lubrication lubrication) {
        return switch (lubrication) {
            case DRY -> Friction.DRY;
            case OILED -> Friction.OILED;
            case GREASED -> Friction.GREASED;
            case LOCKED -> Friction.LOCKED;
        };
    }

    /** Whether one slides more easily than another, so that the same torque pulls harder. */
    public static boolean isSlicker(Lubrication one, Lubrication other) {
        return of(one).usual() < of(other).usual()
                && of(one).least() < of(other).least();
    }
}
