package gudgeon.rebuild.fasten;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Quantity;
import gudgeon.mechanics.thread.ScrewThread;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LengthSpanTest {
    /** M6 in alloy: 9 mm and one pitch must hold; 28 clamped; 1 mm short of the bottom of 14. */
    @Test
    void aBlindHoleInAlloyLeavesASpan() {
        LengthSpan span = LengthSpan.of(blind(Quantity.exact(28), Quantity.exact(14)));
        assertThat(span.leastMm().orElseThrow()).isCloseTo(38, within(1e-9));
        assertThat(span.mostMm().orElseThrow()).isCloseTo(41, within(1e-9));
        assertThat(span.standard()).containsExactly(40.0);
        assertThat(span.verdict(Quantity.exact(40))).isEqualTo(LengthVerdict.RIGHT);
        assertThat(span.verdict(Quantity.exact(35))).isEqualTo(LengthVerdict.TOO_SHORT);
        assertThat(span.verdict(Quantity.exact(45))).isEqualTo(LengthVerdict.BOTTOMS);
        assertThat(span.verdict(Quantity.exact(41.5))).isEqualTo(LengthVerdict.DOUBTFUL);
        assertThat(span.proud(Quantity.exact(40)).orElseThrow().value()).isCloseTo(12, within(1e-9));
    }

    @Test
    void doubtNarrowsTheSpanAndMakesALengthDoubtful() {
        LengthSpan span = LengthSpan.of(blind(Quantity.stated(28, 0.5), Quantity.stated(14, 1)));
        assertThat(span.leastMm().orElseThrow()).isGreaterThan(38.4);
        assertThat(span.mostMm().orElseThrow()).isLessThan(40.2);
        assertThat(span.verdict(Quantity.stated(40, 1))).isEqualTo(LengthVerdict.DOUBTFUL);
        assertThat(span.verdict(Quantity.exact(45))).isEqualTo(LengthVerdict.BOTTOMS);
    }

    @Test
    void aThroughHoleEndsAtTheRoomBehindIt() {
        HoleSizes sizes = new HoleSizes(
                ScrewThread.of("M6"),
                Optional.of(Quantity.exact(10)),
                Optional.of(Quantity.exact(12)),
                "aluminium",
                true,
                true,
                Optional.of(Quantity.exact(2)));
        LengthSpan span = LengthSpan.of(sizes);
        assertThat(span.mostMm().orElseThrow()).isCloseTo(24, within(1e-9));
        assertThat(span.verdict(Quantity.exact(25))).isEqualTo(LengthVerdict.STANDS_IN);
        assertThat(span.verdict(Quantity.exact(20))).isEqualTo(LengthVerdict.RIGHT);
    }

    @Test
    void nothingIsProvedWhereNothingWasMeasured() {
        HoleSizes sizes = new HoleSizes(
                ScrewThread.of("M6"), Optional.empty(), Optional.empty(), "", false, false, Optional.empty());
        LengthSpan span = LengthSpan.of(sizes);
        assertThat(span.verdict(Quantity.exact(30))).isEqualTo(LengthVerdict.DOUBTFUL);
        assertThat(span.standard()).isEmpty();
        assertThat(span.reasons()).hasSize(2);
    }

    @Test
    void aHoleTooShallowIsSaidToBe() {
        LengthSpan span = LengthSpan.of(blind(Quantity.exact(28), Quantity.exact(8)));
        assertThat(span.standard()).isEmpty();
        assertThat(span.reasons()).anyMatch(reason -> reason.startsWith("No length does both"));
    }

    /** The example engine's own lengths are right by its own figures, and all stand proud alike on its cover. */
    @Test
    void theExampleIsConsistent() {
        for (JointNow joint : JointNow.all(TarnJoints.build(List.of()))) {
            for (HoleNow hole : joint.holes()) {
                HoleSizes.of(hole)
                        .ifPresent(sizes -> assertThat(LengthSpan.of(sizes)
                                        .verdict(hole.makersLength().orElseThrow()))
                                .as(hole.id())
                                .isEqualTo(LengthVerdict.RIGHT));
            }
        }
    }

    private static HoleSizes blind(Quantity stack, Quantity depth) {
        return new HoleSizes(
                ScrewThread.of("M6"),
                Optional.of(stack),
                Optional.of(depth),
                "aluminium",
                false,
                false,
                Optional.empty());
    }
}
