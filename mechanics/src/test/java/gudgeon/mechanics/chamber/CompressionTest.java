package gudgeon.mechanics.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.crank.Crank;
import org.junit.jupiter.api.Test;

class CompressionTest {
    private static final double INCH = 25.4;

    private static Compression plain(Crank crank, double chamberCm3, double gasketMm, double gasketBoreMm) {
        return new Compression(50, crank, new CrownVolumes(0, 0, 0), chamberCm3, gasketMm, gasketBoreMm);
    }

    /**
     * The worked example of "Calculating Compression", Circle Track, February 2011: bore 4 in, swept 43.731 cu in, piston 5 cc,
     * deck 0.41469 cu in, gasket 0.020 in = 0.251328 cu in, chamber 64 cc, ratio 9.97. Its stroke and deck height follow from
     * its volumes: 3.48 in and 0.033 in. The rod, which does not matter, is ours.
     */
    @Test
    void agreesWithAPublishedWorkedExample() {
        Crank crank = new Crank(3.48 * INCH / 2, 6 * INCH, 0, -0.033 * INCH);
        Compression c = new Compression(4 * INCH, crank, new CrownVolumes(0, 5, 0), 64, 0.020 * INCH, 4 * INCH);
        double cubicInch = INCH * INCH * INCH / 1000;
        assertThat(c.sweptCm3() / cubicInch).isCloseTo(43.731, within(0.001));
        assertThat(c.deckCm3() / cubicInch).isCloseTo(0.41469, within(1e-5));
        assertThat(c.gasketCm3() / cubicInch).isCloseTo(0.251328, within(1e-6));
        assertThat(c.staticRatio()).isCloseTo(9.97, within(0.005));
    }

    /**
     * Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.6 (from memory), for a crank without offset:
     * V / Vc = 1 + (rc - 1) / 2 [R + 1 - cos(theta) - sqrt(R^2 - sin^2(theta))], R rod over crank radius.
     */
    @Test
    void theTrappedRatioIsTheTextbooksCylinderVolume() {
        Compression c = plain(new Crank(25, 92, 0, -0.2), 9.8, 1, 51);
        double ratio = 92.0 / 25;
        for (double theta : new double[] {540, 560, 600, 640, 700}) {
            double t = Math.toRadians(theta);
            double bracket = ratio + 1 - Math.cos(t) - Math.sqrt(ratio * ratio - Math.sin(t) * Math.sin(t));
            assertThat(c.trappedRatio(theta)).isCloseTo(1 + (c.staticRatio() - 1) / 2 * bracket, within(1e-12));
        }
    }

    @Test
    void anInletThatShutsAtBottomDeadCentreTrapsTheWholeStroke() {
        Crank crank = new Crank(25, 92, 4, -0.2);
        Compression c = plain(crank, 9.8, 1, 51);
        double lowest = 0;
        for (double theta = 530; theta < 550; theta += 0.001) {
            lowest = Math.max(lowest, c.trappedRatio(theta));
        }
        // the offset pin lengthens the stroke, and the lowest point of the crank's own motion is that stroke
        assertThat(c.sweptCm3()).isGreaterThan(Math.PI * 25 * 25 * 50 / 1000);
        assertThat(lowest).isCloseTo(c.staticRatio(), within(1e-9));
    }

    @Test
    void volumesAddUp() {
        Crank crank = new Crank(25, 92, 0, -0.2);
        double ring = Compression.sideRingCm3(50, 49.6, 4.5);
        Compression c = new Compression(50, crank, new CrownVolumes(3, 0, 2), 9.8, 1, 51, ring);
        // upright cylinders: deck 0.2 mm of the bore, 1 mm of the gasket's own hole, a ring 0.2 mm wide of 49.8 mm mean
        // diameter
        assertThat(ring).isCloseTo(Math.PI * 49.8 * 0.2 * 4.5 / 1000, within(1e-12));
        double exact = 9.8 + Math.PI * (625 * 0.2 + 25.5 * 25.5) / 1000 + ring - 3 + 2;
        assertThat(c.clearanceCm3()).isCloseTo(exact, within(1e-12));
        assertThat(plain(new Crank(25, 92, 0, 0.3), 9.8, 1, 51).deckCm3())
                .isCloseTo(-Math.PI * 625 * 0.3 / 1000, within(1e-12));
    }

    @Test
    void sizesThatContradictEachOtherAreRefusedWithASentence() {
        Crank proud = new Crank(25, 92, 0, 7);
        assertThatThrownBy(() -> plain(proud, 9.8, 1, 51).staticRatio())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no volume is left above the piston");
        assertThatThrownBy(() -> plain(proud, 0, 1, 51)).hasMessageContaining("chamber 0.0 cm3");
        assertThatThrownBy(() -> plain(proud, 9, -1, 51)).hasMessageContaining("gasket -1.0 mm");
    }
}
