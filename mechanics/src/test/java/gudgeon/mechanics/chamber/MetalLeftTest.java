package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MetalLeftTest {
    private static final double LAND = 24.8;
    private static final RingGroove GROOVE = new RingGroove(4.5, 2.2);

    @Test
    void aroundAnUprightPocketItIsPlainArithmetic() {
        Crown crown = Examples.with(Examples.FLAT, new Pocket(20, 3, 11, 90, 0));
        MetalLeft edge = MetalLeft.toEdge(crown, 0);
        assertThat(edge.mm()).isCloseTo(24.8 - 21, within(1e-9));
        assertThat(edge.yMm()).isCloseTo(21, within(1e-9));
        assertThat(edge.xMm()).isCloseTo(0, within(1e-9));
        // the groove's inner corner is at radius 22.6, 4.5 down; the pocket's floor ends at 21, 3 down
        MetalLeft groove = MetalLeft.toGroove(crown, 0, GROOVE);
        assertThat(groove.mm()).isCloseTo(Math.hypot(1.6, 1.5), within(1e-9));
        assertThat(groove.yMm()).isCloseTo(22.6, within(1e-6));
        assertThat(groove.zMm()).isEqualTo(-4.5);
        MetalLeft underside = MetalLeft.toUnderside(crown, 0, 5);
        assertThat(underside.mm()).isCloseTo(2, within(1e-9));
        assertThat(underside.zMm()).isCloseTo(-3, within(1e-9));
    }

    @Test
    void overTheGrooveItIsTheHeightAndBesideItTheWidth() {
        Crown over = Examples.with(Examples.FLAT, new Pocket(20, 3, 14, 0, 0));
        assertThat(MetalLeft.toGroove(over, 0, GROOVE).mm()).isCloseTo(1.5, within(1e-9));
        Crown beside = Examples.with(Examples.FLAT, new Pocket(20, 6, 11, 0, 0));
        assertThat(MetalLeft.toGroove(beside, 0, GROOVE).mm()).isCloseTo(1.6, within(1e-9));
    }

    @Test
    void brokenThroughIsNegative() {
        Crown crown = Examples.with(Examples.FLAT, new Pocket(20, 6, 15, 300, 0));
        assertThat(MetalLeft.toEdge(crown, 0).mm()).isCloseTo(-0.2, within(1e-9));
        // 25 - 22.6 into the groove's 2.2, but only 6 - 4.5 down into it
        assertThat(MetalLeft.toGroove(crown, 0, GROOVE).mm()).isCloseTo(-1.5, within(1e-9));
        assertThat(MetalLeft.toUnderside(crown, 0, 5).mm()).isCloseTo(-1, within(1e-9));
    }

    @Test
    void aLeaningPocketComesNearestAtItsLip() {
        // leaning outward the wall runs out upwards: at the plane its ellipse reaches offset + R / cos(tilt)
        Crown crown = Examples.with(Examples.FLAT, new Pocket(20, 4, 11, 0, 20));
        double lip = 11 + 10 / Math.cos(Math.toRadians(20));
        MetalLeft edge = MetalLeft.toEdge(crown, 0);
        assertThat(edge.mm()).isCloseTo(24.8 - lip, within(1e-9));
        assertThat(edge.zMm()).isCloseTo(0, within(1e-9));
        // and the floor's outer end is its lowest
        double lowest = -4 * Math.cos(Math.toRadians(20)) - 10 * Math.sin(Math.toRadians(20));
        assertThat(MetalLeft.toUnderside(crown, 0, 9).mm()).isCloseTo(9 + lowest, within(1e-9));
    }

    @Test
    void aPocketHighInADomeIsMeasuredToTheLandsUpperEdge() {
        Crown crown = Examples.with(Examples.DOME, new Pocket(20, -1, 8, 45, 0));
        assertThat(MetalLeft.toEdge(crown, 0).mm()).isCloseTo(Math.hypot(24.8 - 18, 1), within(1e-9));
    }

    @Test
    void aGrooveAsDeepAsThePistonIsRefused() {
        Crown crown = Examples.leaningPair();
        assertThatThrownBy(() -> MetalLeft.toGroove(crown, 0, new RingGroove(4, 25)))
                .hasMessageContaining("leaves nothing");
        assertThatThrownBy(() -> new RingGroove(0, 2)).hasMessageContaining("above 0");
    }

    /** Every leaning pocket against a fine sample of its floor and wall: never more than the sample finds, and hardly less. */
    @Test
    void isTheLeastOfAFineSample() {
        Random random = new Random(20);
        int clear = 0;
        for (int i = 0; i < 60; i++) {
            Pocket pocket = new Pocket(
                    14 + 12 * random.nextDouble(),
                    6 * random.nextDouble(),
                    14 * random.nextDouble(),
                    360 * random.nextDouble(),
                    -30 + 60 * random.nextDouble());
            Crown crown = Examples.with(Examples.FLAT, pocket);
            Sample sample = new Sample(pocket);
            agree("edge", pocket, MetalLeft.toEdge(crown, 0).mm(), LAND - sample.farthest);
            agree("underside", pocket, MetalLeft.toUnderside(crown, 0, 5).mm(), 5 + sample.lowest);
            double groove = MetalLeft.toGroove(crown, 0, GROOVE).mm();
            if (sample.toGroove > 0.05) {
                clear++;
                agree("groove", pocket, groove, sample.toGroove);
            } else if (sample.toGroove == 0) {
                assertThat(groove).as("groove %s", pocket).isNegative();
            }
        }
        assertThat(clear).isGreaterThan(20);
    }

    private static void agree(String what, Pocket pocket, double exact, double sampled) {
        assertThat(exact).as("%s %s", what, pocket).isBetween(sampled - 0.03, sampled + 1e-6);
    }

    /** Points of a pocket's floor and wall, from the definition of a pocket. */
    private static final class Sample {
        double farthest;
        double lowest = Double.POSITIVE_INFINITY;
        double toGroove = Double.POSITIVE_INFINITY;

        Sample(Pocket p) {
            int around = 1440;
            for (int i = 0; i < around; i++) {
                double phi = 2 * Math.PI * i / around;
                for (int j = 0; j <= 100; j++) {
                    look(p, p.diameterMm() / 2 * j / 100, phi, 0);
                }
                for (int j = 0; j <= 400; j++) {
                    look(p, p.diameterMm() / 2, phi, 0.05 * j);
                }
            }
        }

        private void look(Pocket p, double rho, double phi, double up) {
            double tilt = Math.toRadians(p.tiltDeg());
            double along = rho * Math.cos(phi);
            double high = up - p.depthMm();
            double x = p.offsetMm() + high * Math.sin(tilt) + along * Math.cos(tilt);
            double y = rho * Math.sin(phi);
            double z = high * Math.cos(tilt) - along * Math.sin(tilt);
            double r = Math.hypot(x, y);
            if (z <= 0) {
                farthest = Math.max(farthest, r);
            }
            if (r <= LAND) {
                lowest = Math.min(lowest, z);
                double in = Math.max(LAND - GROOVE.depthMm() - r, 0);
                double above = Math.max(z + GROOVE.belowMm(), 0);
                toGroove = Math.min(toGroove, Math.hypot(in, above));
            }
        }
    }
}
