package gudgeon.mechanics.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.crank.Crank;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StopReadingsTest {
    private static final Crank STRAIGHT = new Crank(25, 92, 0, 0);

    /** A published worked example of a degree wheel's readings, 36.75 one way and 35.25 the other: 36 on each side when set. */
    @Test
    void theMiddleOfThePublishedExample() {
        StopReadings read = new StopReadings(360 - 36.75, 35.25);
        assertThat(read.halfDeg()).isCloseTo(36, within(1e-9));
        assertThat(Disc.shortest(0, read.topDeg(STRAIGHT))).isCloseTo(-0.75, within(1e-9));
    }

    /** The crank's own angles at a travel, which are worked out another way, put on a disc that is wrongly set. */
    @Property
    void findsTopDeadCentreWhateverTheDiscReadsThere(
            @ForAll @DoubleRange(min = 0.5, max = 45) double travel,
            @ForAll @DoubleRange(min = -3, max = 3) double offset,
            @ForAll @DoubleRange(min = 0, max = 359.9) double top) {
        Crank crank = new Crank(25, 92, offset, 0);
        StopReadings read = new StopReadings(
                Disc.reading(top - crank.degBeforeTop(travel)), Disc.reading(top + crank.degAfterTop(travel)));
        assertThat(Disc.shortest(read.topDeg(crank), top)).isCloseTo(0, within(1e-8));
        assertThat(read.travelMm(crank)).isCloseTo(travel, within(1e-8));
    }

    @Property
    void mirroredReadingsGiveTheMirroredTop(
            @ForAll @DoubleRange(min = 1, max = 170) double half,
            @ForAll @DoubleRange(min = 0, max = 359) double middle,
            @ForAll @DoubleRange(min = -3, max = 3) double offset) {
        StopReadings read = new StopReadings(Disc.reading(middle - half), Disc.reading(middle + half));
        StopReadings mirrored = new StopReadings(Disc.reading(-middle - half), Disc.reading(-middle + half));
        double top = read.topDeg(new Crank(25, 92, offset, 0));
        double other = mirrored.topDeg(new Crank(25, 92, -offset, 0));
        assertThat(Disc.shortest(Disc.reading(-other), top)).isCloseTo(0, within(1e-8));
    }

    /** By hand: pin offset 3, throw 20, rod 60, at the stop 5 mm down; the two angles from the triangle's sides. */
    @Test
    void aPinOffsetMovesTheMiddle() {
        Crank crank = new Crank(20, 60, 3, 0);
        double before = crank.degBeforeTop(5);
        double after = crank.degAfterTop(5);
        double height = Math.sqrt(80 * 80 - 9) - 5;
        double lean = Math.toDegrees(Math.atan(3 / Math.sqrt(80 * 80 - 9)) - Math.atan(3 / height));
        assertThat((after - before) / 2).isCloseTo(lean, within(1e-9));
        StopReadings read = new StopReadings(360 - before, after);
        assertThat(Disc.shortest(0, read.middleDeg())).isCloseTo(lean, within(1e-9));
        assertThat(Disc.shortest(0, read.topDeg(crank))).isCloseTo(0, within(1e-9));
    }

    @Test
    void refusesWhatNoDiscReads() {
        assertThatThrownBy(() -> new StopReadings(360, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StopReadings(10, 10)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StopReadings(Double.NaN, 10)).isInstanceOf(IllegalArgumentException.class);
    }
}
