package gudgeon.mechanics.bolt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.limits.Material;
import gudgeon.mechanics.thread.ScrewThread;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TighteningTest {
    private static final Bolt M6 = new Bolt(ScrewThread.of("M6"), StrengthClass.C_8_8, Head.WASHER);

    private static Seat alloy(double engagedMm) {
        return new Seat(Optional.of(Material.ALUMINIUM), OptionalDouble.of(engagedMm), Optional.of(Material.ALUMINIUM));
    }

    private static final Seat NUT = new Seat(Optional.empty(), OptionalDouble.empty(), Optional.empty());

    @Test
    void inDeepThreadTheBoltIsTheWeakest() {
        assertThat(new Tightening(M6, alloy(14), Friction.OILED).weakest()).isEqualTo(Limit.BOLT);
        assertThat(new Tightening(M6, alloy(14), Friction.OILED).mostNm())
                .isEqualTo(new Tightening(M6, NUT, Friction.OILED).mostNm());
    }

    @Test
    void inShallowThreadTheAlloyIsTheWeakest() {
        Tightening shallow = new Tightening(M6, alloy(6), Friction.OILED);
        assertThat(shallow.weakest()).isEqualTo(Limit.THREAD);
        assertThat(shallow.mostNm()).isLessThan(new Tightening(M6, alloy(8), Friction.OILED).mostNm());
    }

    @Test
    void aSmallHeadPressesIntoSoftMetalFirst() {
        Bolt bare = new Bolt(M6.thread(), M6.strength(), Head.HEXAGON);
        assertThat(new Tightening(bare, alloy(14), Friction.DRY).weakest()).isEqualTo(Limit.BEARING);
    }

    /** At the limit for each friction, the pull is exactly what the weakest bears. */
    @Test
    void theMostTorqueMakesThePullThatTheWeakestBears() {
        for (Friction friction : Friction.values()) {
            Tightening tightening = new Tightening(M6, alloy(9), friction);
            assertThat(tightening.mostPreloadN(tightening.mostNm()))
                    .isCloseTo(tightening.bearsN().get(tightening.weakest()), within(1e-6));
            assertThat(tightening.inHandNm(tightening.mostNm())).isCloseTo(0, within(1e-12));
        }
    }

    @Test
    void aDryFigureOnOiledThreadPullsHarder() {
        Tightening dry = new Tightening(M6, alloy(14), Friction.DRY);
        Tightening oiled = new Tightening(M6, alloy(14), Friction.OILED);
        assertThat(oiled.usualPreloadN(10)).isGreaterThan(1.3 * dry.usualPreloadN(10));
        assertThat(dry.inHandNm(10)).isPositive();
        assertThat(oiled.inHandNm(10)).isNegative();
        double eased = dry.sameAt(Friction.OILED, 10);
        assertThat(oiled.usualPreloadN(eased)).isCloseTo(dry.usualPreloadN(10), within(1e-9));
    }

    @Test
    void frictionMakesASpan() {
        Tightening tightening = new Tightening(M6, alloy(14), Friction.OILED);
        assertThat(tightening.leastPreloadN(8))
                .isLessThan(tightening.usualPreloadN(8))
                .isLessThan(tightening.mostPreloadN(8) * 0.7);
    }
}
