package gudgeon.mechanics.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.valvetrain.LawLift;
import gudgeon.mechanics.valvetrain.LiftEvents;
import gudgeon.mechanics.valvetrain.LiftLaw;
import gudgeon.mechanics.valvetrain.TimedLift;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FlanksTest {
    /** R. Nebrér, Calculate Cam degree (a published worked example): 1 mm at 40 before top and 60 after bottom, centre 100 after top. */
    @Test
    void theCentreOfThePublishedExample() {
        Flanks read = new Flanks(360 - 40, 540 + 60);
        assertThat(read.durationDeg()).isEqualTo(280);
        assertThat(read.centreDeg() - 360).isEqualTo(100);
    }

    /** A cam grinder's published worked example: opens 10 after top, closes 39 after bottom, 209 long, centre 114.5 after top. */
    @Test
    void theCentreOfAnOpeningAfterTop() {
        Flanks read = new Flanks(360 + 10, 540 + 39);
        assertThat(read.durationDeg()).isEqualTo(209);
        assertThat(read.centreDeg() - 360).isEqualTo(114.5);
    }

    /** A cam whose place is known is found there at every lift. */
    @Property
    void findsWhereACamWasPut(
            @ForAll @DoubleRange(min = 400, max = 500) double centre,
            @ForAll @DoubleRange(min = -60, max = 60) double moved,
            @ForAll @DoubleRange(min = 0.2, max = 7) double lift) {
        LawLift lobe = new LawLift(LiftLaw.POLYNOMIAL_345, 280, 8);
        Flanks book = flanks(new TimedLift(lobe, centre, 1, 0), lift);
        Flanks read = flanks(new TimedLift(lobe, centre + moved, 1, 0), lift);
        assertThat(read.laterDeg(book)).isCloseTo(moved, within(1e-4));
        assertThat(read.centreDeg()).isCloseTo(centre + moved, within(1e-4));
    }

    private static Flanks flanks(TimedLift lift, double at) {
        LiftEvents events = LiftEvents.of(lift, at);
        return new Flanks(events.opensDeg(), events.closesDeg());
    }

    @Test
    void refusesAValveThatClosesBeforeItOpens() {
        assertThatThrownBy(() -> new Flanks(400, 400)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Flanks(0, 541)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Flanks(Double.NaN, 541)).isInstanceOf(IllegalArgumentException.class);
    }
}
