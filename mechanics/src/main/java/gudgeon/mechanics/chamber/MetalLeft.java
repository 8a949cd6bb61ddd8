package gudgeon.mechanics.chamber;

import java.util.Optional;

/**
 * The least thickness of metal left between a pocket and another face of the piston, and where. Negative means broken through, and
 * says by how much. Exact: from the extreme points of the pocket's floor and wall, not from samples. Other pockets are left out of
 * account, and so is the rounding of a cutter's corner, which only adds metal.
 *
 * @param mm least thickness, negative when broken through
 * @param xMm where: a point on one of the two faces, in the crown's frame (from the bore axis)
 * @param yMm where
 * @param zMm where, above the reference plane
 */
public record MetalLeft(double mm, double xMm, double yMm, double zMm) {
    /**
     * From a pocket to the top land. Where the pocket goes below the reference plane, the land's radius less the pocket's
     * farthest reach from the bore axis down there; where it lies wholly above that plane, in a dome, the distance from its
     * floor's rim to the land's upper edge.
     *
     * @throws IndexOutOfBoundsException when the crown has no such pocket
     */
    public static MetalLeft toEdge(Crown crown, int pocketIndex) {
        Pocket pocket = crown.pockets().get(pocketIndex);
        double land = crown.landDiameterMm() / 2;
        PocketReach reach = new PocketReach(pocket, land);
        Optional<PocketReach.Point> farthest = reach.farthestBelow(0);
        return farthest.map(point -> point.left(land - point.radius(), pocket))
                .orElseGet(() -> reach.rimToLandEdge().at(pocket));
    }

    /**
     * From a pocket to the top ring groove. Downwards the groove is taken to go on, as the next lands and grooves do, so that a
     * pocket deeper than the groove is judged by the groove's bottom. Broken through, the figure is how much lower and shallower
     * the groove would have to be.
     *
     * @throws IndexOutOfBoundsException when the crown has no such pocket
     * @throws IllegalArgumentException when the groove is as deep as the land's radius
     */
    public static MetalLeft toGroove(Crown crown, int pocketIndex, RingGroove groove) {
        Pocket pocket = crown.pockets().get(pocketIndex);
        double land = crown.landDiameterMm() / 2;
        double bottom = land - groove.depthMm();
        if (!(bottom > 0)) {
            throw new IllegalArgumentException("a ring groove " + groove.depthMm()
                    + " mm deep leaves nothing of a top land of " + crown.landDiameterMm() + " mm diameter");
        }
        PocketReach reach = new PocketReach(pocket, land);
        Optional<PocketReach.Point> beside = reach.farthestBelow(-groove.belowMm());
        if (beside.isPresent() && beside.get().radius() > bottom) {
            return intoGroove(pocket, reach, bottom, groove);
        }
        MetalLeft least = reach.circleToPocket(bottom, -groove.belowMm()).at(pocket);
        PocketReach.Point lowest = reach.lowest();
        if (lowest.radius() >= bottom) {
            least = least.orLess(lowest.left(lowest.z() + groove.belowMm(), pocket));
        }
        if (beside.isPresent()) {
            least = least.orLess(beside.get().left(bottom - beside.get().radius(), pocket));
        }
        return least;
    }

    /** How deep the pocket stands in the groove: by how much the groove would have to be lower and shallower to be clear of it. */
    private static MetalLeft intoGroove(Pocket pocket, PocketReach reach, double bottom, RingGroove groove) {
        double in = 0;
        double clear = groove.depthMm();
        while (clear - in > 1e-10) {
            double depth = (in + clear) / 2;
            double wall = bottom + depth;
            boolean within = reach.farthestBelow(-groove.belowMm() - depth)
                    .filter(point -> point.radius() > wall)
                    .isPresent();
            in = within ? depth : in;
            clear = within ? clear : depth;
        }
        double depth = in;
        return reach.farthestBelow(-groove.belowMm() - depth)
                .map(point -> point.left(-depth, pocket))
                .orElseThrow();
    }

    /**
     * From a pocket's lowest point to the crown's underside, which is taken as flat over the whole pocket.
     *
     * @param thicknessMm thickness of the crown under its reference plane
     * @throws IndexOutOfBoundsException when the crown has no such pocket
     */
    public static MetalLeft toUnderside(Crown crown, int pocketIndex, double thicknessMm) {
        Pocket pocket = crown.pockets().get(pocketIndex);
        PocketReach.Point lowest = new PocketReach(pocket, crown.landDiameterMm() / 2).lowest();
        return lowest.left(thicknessMm + lowest.z(), pocket);
    }

    private MetalLeft orLess(MetalLeft other) {
        return other.mm < mm ? other : this;
    }
}
