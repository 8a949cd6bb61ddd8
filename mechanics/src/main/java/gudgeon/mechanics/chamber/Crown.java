package gudgeon.mechanics.chamber;

import java.util.List;

/**
 * A piston crown: its form, the diameter at its top land, and the pockets cut into it.
 *
 * @param form flat, dome or dish
 * @param landDiameterMm diameter at the top land, greater than 0
 * @param pockets any number of pockets
 */
public record Crown(CrownForm form, double landDiameterMm, List<Pocket> pockets) {
    public Crown {
        if (!(landDiameterMm > 0)) {
            throw new IllegalArgumentException("top land diameter must be above 0 mm, got " + landDiameterMm);
        }
        pockets = List.copyOf(pockets);
    }

    /** The crown of the same piston turned by half a turn about the bore axis. */
    public Crown turned() {
        return new Crown(
                form, landDiameterMm, pockets.stream().map(Pocket::turned).toList());
    }
}
