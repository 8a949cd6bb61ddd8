package gudgeon.mechanics.clearance;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** The sweep against plain sampling of the head's surface in a solid that answers yes or no, in randomised cases. */
class SecondOpinionTest {
    /** A sampled head misses what lies between its points: in mm, for 40 rings and 480 spokes on a slope. */
    private static final double BETWEEN_POINTS = 0.2;

    @Test
    void samplingNeverFindsLessAndHardlyMore() {
        SoftAssertions softly = new SoftAssertions();
        int compared = 0;
        for (int seed = 0; seed < 30; seed++) {
            TopEnd topEnd = SweepLawsTest.random(seed);
            DenseSampling dense = new DenseSampling(topEnd);
            Curves curves = new Sweep().curves(topEnd, 15);
            for (int i : new int[] {23, 24, 26}) {
                double theta = curves.thetaDeg()[i];
                if (dense.overlaps(0, theta, 40, 360)) {
                    softly.assertThat(curves.boreMm()[0][i]).as("bore " + seed).isLessThan(1e-6);
                    softly.assertThat(curves.valveMm()[0][i])
                            .as("valve " + seed)
                            .isLessThan(1e-6);
                    softly.assertThat(curves.nearestMm()[0][i])
                            .as("nearest " + seed)
                            .isLessThan(1e-6);
                } else if (curves.boreMm()[0][i] > 0.05) {
                    double bore = dense.boreGap(0, theta, 40, 480);
                    double valve = dense.valveGap(0, theta, 40, 480);
                    softly.assertThat(curves.boreMm()[0][i])
                            .as("bore " + seed)
                            .isBetween(bore - BETWEEN_POINTS, bore + 1e-4);
                    softly.assertThat(curves.valveMm()[0][i])
                            .as("valve " + seed)
                            .isBetween(valve - BETWEEN_POINTS, valve + 1e-4);
                    softly.assertThat(curves.nearestMm()[0][i])
                            .as("nearest " + seed)
                            .isBetween(0.0, Math.min(bore, valve) + 1e-4);
                    compared++;
                }
            }
        }
        softly.assertAll();
        assertThat(compared).isGreaterThan(30);
    }
}
