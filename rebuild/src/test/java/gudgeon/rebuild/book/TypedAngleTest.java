package gudgeon.rebuild.book;

import static gudgeon.rebuild.book.ValveEntry.Kind.EXHAUST;
import static gudgeon.rebuild.book.ValveEntry.Kind.INLET;
import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TypedAngleTest {
    @Test
    void readsAnglesAsManualsGiveThem() {
        assertThat(TypedAngle.of("12 btdc").crankDeg(INLET, true)).isEqualTo(348);
        assertThat(TypedAngle.of("12.5° ATDC").crankDeg(EXHAUST, false)).isEqualTo(372.5);
        assertThat(TypedAngle.of("45 abdc").crankDeg(INLET, false)).isEqualTo(585);
        assertThat(TypedAngle.of("45 deg bbdc").crankDeg(EXHAUST, true)).isEqualTo(135);
        assertThat(TypedAngle.of("tdc").crankDeg(INLET, true)).isEqualTo(360);
    }

    @Test
    void takesABareNumberForTheTurnThatLiesNearer() {
        assertThat(TypedAngle.of("348").crankDeg(INLET, true)).isEqualTo(348);
        assertThat(TypedAngle.of("12").crankDeg(INLET, true)).isEqualTo(372);
        assertThat(TypedAngle.of("225").crankDeg(INLET, false)).isEqualTo(585);
        assertThat(TypedAngle.of("585").crankDeg(INLET, false)).isEqualTo(585);
        assertThat(TypedAngle.of("135").crankDeg(EXHAUST, true)).isEqualTo(135);
        assertThat(TypedAngle.of("10").crankDeg(EXHAUST, false)).isEqualTo(370);
    }

    /** A book's reader and a person's reading agree on where an angle lies. */
    @Property
    void theSameAsInTheBook(@ForAll @DoubleRange(min = 0, max = 90) double deg) {
        String text = Words.number(deg);
        double rounded = Double.parseDouble(text);
        assertThat(TypedAngle.of(text + " abdc").crankDeg(INLET, false)).isEqualTo(540 + rounded);
        assertThat(TypedAngle.of(text + " bbdc").crankDeg(EXHAUST, true)).isEqualTo(180 - rounded);
    }

    @Test
    void refusesAnglesOutOfRangeWithWhatToType() {
        assertThat(TypedAngle.of("720")).isInstanceOf(TypedAngle.Refused.class);
        assertThat(TypedAngle.of("-3")).isInstanceOf(TypedAngle.Refused.class);
        assertThat(TypedAngle.of("170 btdc")).isInstanceOf(TypedAngle.Refused.class);
        assertThat(TypedAngle.of("about ten")).isInstanceOf(TypedAngle.Refused.class);
        assertThat(((TypedAngle.Refused) TypedAngle.of("2 mm atdc")).sentence()).contains("12 btdc");
    }
}
