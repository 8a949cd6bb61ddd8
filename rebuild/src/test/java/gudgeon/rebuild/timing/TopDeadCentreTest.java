package gudgeon.rebuild.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.journal.Proving.StopTouched;
import org.junit.jupiter.api.Test;

class TopDeadCentreTest {
    private static TopDeadCentre top(double forward, double backward) {
        return Timing.of(Tarn.after(new StopTouched(forward, backward, "")))
                .top()
                .orElseThrow();
    }

    @Test
    void saysHowFarToTurnTheDisc() {
        TopDeadCentre off = top(334, 31);
        assertThat(off.isSet()).isFalse();
        assertThat(off.offDeg().value()).isCloseTo(2.5, within(0.1));
        assertThat(off.sentences().toString()).contains("turning backward", "in place of 31.0°");
        assertThat(off.backwardWhenSetDeg()).isCloseTo(28.5, within(0.1));
        assertThat(off.forwardWhenSetDeg()).isCloseTo(331.5, within(0.1));
    }

    /** Set as it says, it reads as set. */
    @Test
    void turnedSoItIsSet() {
        TopDeadCentre off = top(10, 75);
        TopDeadCentre set = top(off.forwardWhenSetDeg(), off.backwardWhenSetDeg());
        assertThat(set.offDeg().value()).isCloseTo(0, within(1e-9));
        assertThat(set.isSet()).isTrue();
        assertThat(set.sentences().toString()).contains("leave it");
    }

    @Test
    void warnsOfAStopTooNearTheTopAndOfReadingsExchanged() {
        assertThat(top(355, 5).sentences().toString()).contains("Let it stand farther in");
        assertThat(top(30, 330).sentences().toString()).contains("exchanged");
    }
}
