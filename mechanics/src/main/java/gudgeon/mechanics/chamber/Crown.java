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

    /** Height in mm of the surface above the reference plane at (x, y) in mm, before any pocket is cut. */
    public double surfaceMm(double xMm, double yMm) {
        return form.surfaceMm(Math.hypot(xMm, yMm));
    }

    /**
     * Whether a point, in mm from the reference plane's centre, is metal: within the top land, not above the surface, and in no
     * pocket. Downwards the crown is taken to go on for ever.
     */
    public boolean metalAt(double xMm, double yMm, double zMm) {
        return Math.hypot(xMm, yMm) <= landDiameterMm / 2
                && zMm <= surfaceMm(xMm, yMm)
                && pockets.stream().noneMatch(pocket -> pocket.space().contains(xMm, yMm, zMm));
    }

    /** The crown of the same piston turned by half a turn about the bore axis. */
    public Crown turned() {
        return new Crown(
                form, landDiameterMm, pockets.stream().map(Pocket::turned).toList());
    }
}
