package gudgeon.mechanics.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.crank.Crank;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Millimetres, degrees, rim and dwell of the spark. */
class SparkTest {
    /** J. B. Heywood, Internal Combustion Engine Fundamentals, 1988, eq. 2.5, with stroke 54 mm, rod 100 mm, 22 degrees. */
    @Test
    void theTravelOfTheTextbook() {
        Crank crank = new Crank(27, 100, 0, 0);
        double t = Math.toRadians(22);
        double down = 127 - 27 * Math.cos(t) - Math.sqrt(100 * 100 - Math.pow(27 * Math.sin(t), 2));
        assertThat(crank.travelBeforeTopMm(22)).isCloseTo(down, within(1e-9));
        assertThat(crank.degBeforeTop(down)).isCloseTo(22, within(1e-6));
    }

    /** A published worked example of a timing tape: 40 degrees on a damper of 133.4 mm are 46.6 mm (stated 46.58). */
    @Test
    void theArcOfThePublishedExample() {
        assertThat(new Rim(133.4).arcMm(40)).isCloseTo(46.58, within(0.03));
    }

    @Property
    void rimThereAndBack(
            @ForAll @DoubleRange(min = -180, max = 180) double deg,
            @ForAll @DoubleRange(min = 20, max = 600) double diameter) {
        Rim rim = new Rim(diameter);
        assertThat(rim.deg(rim.arcMm(deg))).isCloseTo(deg, within(1e-9));
    }

    /** A right-angled triangle of sides 3, 4 and 5: a hole that leans by its sharper angle runs 5 for 4 of the piston. */
    @Test
    void aLeaningGaugeRunsFartherThanThePiston() {
        Inclined hole = new Inclined(Math.toDegrees(Math.atan2(3, 4)));
        assertThat(hole.travelMm(5)).isCloseTo(4, within(1e-12));
        assertThat(hole.gaugeMm(4)).isCloseTo(5, within(1e-12));
        assertThat(new Inclined(0).travelMm(2.5)).isEqualTo(2.5);
        assertThatThrownBy(() -> new Inclined(61)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void dwellThereAndBack(@ForAll @DoubleRange(min = 0, max = 100) double percent) {
        Points points = new Points(1);
        assertThat(points.dwellPercent(points.dwellDeg(percent))).isCloseTo(percent, within(1e-9));
    }

    /** A lobe with flanks alike, closed from a to 360 - a about its summit: closed by d longer, each flank moves by d / 2. */
    @Property
    void aLongerDwellOpensLaterByHalf(
            @ForAll @DoubleRange(min = 60, max = 170) double flank,
            @ForAll @DoubleRange(min = -20, max = 20) double moved) {
        double dwell = 360 - 2 * flank;
        double other = 360 - 2 * (flank + moved);
        // the points open the flank before the summit: the farther, the earlier
        assertThat(new Points(1).opensLaterDeg(other, dwell)).isCloseTo(-moved, within(1e-9));
        assertThat(new Points(2).opensLaterDeg(other, dwell)).isCloseTo(-2 * moved, within(1e-9));
    }

    @Test
    void theArcOnTheDiscIsTheShortest() {
        assertThat(Disc.shortest(350, 10)).isCloseTo(20, within(1e-12));
        assertThat(Disc.shortest(10, 350)).isCloseTo(-20, within(1e-12));
        assertThat(Disc.nearest(12, 360)).isCloseTo(372, within(1e-12));
        assertThat(Disc.nearest(225, 540)).isCloseTo(585, within(1e-12));
        assertThat(Disc.reading(-1e-15)).isEqualTo(0);
    }
}
