package gudgeon.mechanics.bore;

import gudgeon.mechanics.metrology.Budget;
import gudgeon.mechanics.metrology.Quantity;
import java.util.List;

/**
 * A worn bore, and the least bore that leaves nothing of its old wall. Lengths in mm.
 *
 * <p>Two diameters say how much is worn away, but not on which side. If all wear along one axis is on one side, the wall there
 * lies a whole w = d - d0 outside the unworn bore, twice what the diameter alone suggests. So three answers are kept apart. The
 * tool's own allowance is added to each on both sides, and a score counts as a hollow of its depth below the worst wear.
 *
 * @param unwornMm d0, diameter where no ring runs, below the rings' travel or as new, greater than 0
 * @param alongMm largest diameter found along the pin at any height, score apart
 * @param acrossMm largest diameter found across the pin at any height, score apart
 * @param scoreMm depth of the deepest score below the wall around it, 0 or more
 */
public record WornBore(Quantity unwornMm, Quantity alongMm, Quantity acrossMm, Quantity scoreMm) {
    public WornBore {
        if (!(unwornMm.value() > 0) || !(scoreMm.value() >= 0)) {
            throw new IllegalArgumentException("a worn bore has an unworn diameter above 0 and scores 0 or deeper, got "
                    + unwornMm.value() + " mm and " + scoreMm.value() + " mm");
        }
    }

    /**
     * The least diameters that clean up, each with its doubt.
     *
     * @param evenWear if wear is as much on one side as on the other: no smaller bore can do, wherever its centre is
     * @param shiftedCentre wherever the wear is, if the new centre may be moved towards it. Wear is taken to be on the same side at
     *     all heights: a bore that leans needs more, up to {@code oldCentre}
     * @param oldCentre wherever the wear is, bored on the old centre
     */
    public record Least(Budget evenWear, Budget shiftedCentre, Budget oldCentre) {
        /** Whether a bore of so many millimetres cleans up; doubts are expanded by 2, about 95 % (JCGM 100:2008, 6.3.3). */
        public CleansUp with(double boreMm) {
            if (boreMm >= high(oldCentre)) {
                return CleansUp.ON_ANY_CENTRE;
            }
            if (boreMm >= high(shiftedCentre)) {
                return CleansUp.ON_A_SHIFTED_CENTRE;
            }
            return boreMm < evenWear.value() - 2 * evenWear.standardUncertainty() ? CleansUp.NO : CleansUp.UNPROVEN;
        }

        private static double high(Budget least) {
            return least.value() + 2 * least.standardUncertainty();
        }
    }

    /**
     * The least bores that clean this one up.
     *
     * @param allowanceMm metal that boring and honing need on each side to cut clean all round, 0 or more, with its own doubt
     */
    public Least least(Quantity allowanceMm) {
        List<Budget> budgets =
                Budget.ofAll(List.of(unwornMm, alongMm, acrossMm, scoreMm, allowanceMm), WornBore::leastMm);
        return new Least(budgets.get(0), budgets.get(1), budgets.get(2));
    }

    private static double[] leastMm(double[] x) {
        double unworn = x[0];
        double score = Math.max(0, x[3]);
        double cut = 2 * x[4];
        double along = Math.max(0, x[1] - unworn);
        double across = Math.max(0, x[2] - unworn);
        double worst = Math.max(along, across);
        return new double[] {
            unworn + worst + score + cut,
            unworn + 2 * shiftedDepth(worst + score, Math.min(along, across) + (worst > 0 ? score : 0)) + cut,
            unworn + 2 * (worst + score) + cut
        };
    }

    /**
     * How much larger the radius must be when the centre is moved for the best, with walls a and b, a the larger, outside the old
     * circle on two axes at right angles. Moved by (s, t), the new circle must hold the old one, so be larger by |(s, t)|, and hold
     * both walls, a - s and b - t. All three are equal at the best, hence the root; where b is at most half of a it does not
     * matter. To first order in wear over bore: its own geometry, no source.
     */
    private static double shiftedDepth(double a, double b) {
        return b <= a / 2 ? a / 2 : a + b - Math.sqrt(2 * a * b);
    }
}
