package gudgeon.mechanics.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Quantity;
import org.junit.jupiter.api.Test;

class SpringTest {
    private static final double INCH = 25.4;
    private static final double LBF = 4.4482216152605;
    private static final double PSI_IN_MPA = LBF / (INCH * INCH);

    /**
     * Shigley's Mechanical Engineering Design, 9th ed., example 10-1 (from memory): music wire of 0.037 in, outside diameter 7/16
     * in, which it rounds to a mean diameter of 0.400 in, squared ends, 12 1/2 coils, G 11.85 Mpsi. Rate 4.13 lbf/in, solid length 0.500 in; 6.46 lbf makes about 146 kpsi.
     */
    @Test
    void agreesWithAPublishedWorkedExample() {
        CoilSpring spring = new CoilSpring(0.037 * INCH, 0.400 * INCH, 12.5, CoilSpring.Ends.CLOSED);
        assertThat(spring.activeCoils()).isEqualTo(10.5);
        double rate = spring.rateNPerMm(11.85e6 * PSI_IN_MPA);
        assertThat(rate / LBF * INCH).isCloseTo(4.13, within(0.005));
        assertThat(spring.solidMm() / INCH).isCloseTo(0.500, within(0.0006));
        assertThat(spring.stressMpa(6.46 * LBF) / PSI_IN_MPA / 1000).isCloseTo(146, within(1.0));
    }

    @Test
    void groundEndsAreSolidAtOneWireForEachCoil() {
        assertThat(new CoilSpring(3, 20, 6, CoilSpring.Ends.CLOSED_GROUND).solidMm())
                .isEqualTo(18);
        assertThat(new CoilSpring(3, 20, 6, CoilSpring.Ends.PLAIN).solidMm()).isEqualTo(21);
        assertThat(new CoilSpring(3, 20, 6, CoilSpring.Ends.PLAIN_GROUND).activeCoils())
                .isEqualTo(5);
    }

    @Test
    void sinkingOpensTheSpringAndShimsCloseItAgain() {
        FittedSpring fitted = new FittedSpring(Quantity.exact(28), Quantity.exact(19.5), Quantity.exact(7));
        assertThat(fitted.marginMm().value()).isEqualTo(1.5, within(1e-12));
        FittedSpring sunk = fitted.after(Quantity.exact(0.6), Quantity.exact(0));
        assertThat(sunk.marginMm().value()).isEqualTo(2.1, within(1e-12));
        assertThat(sunk.forceShutN(33, 12)).isEqualTo(12 * 4.4, within(1e-9));
        FittedSpring shimmed = sunk.after(Quantity.exact(0), Quantity.exact(0.6));
        assertThat(shimmed.marginMm().value()).isEqualTo(1.5, within(1e-12));
        assertThat(shimmed.forceShutN(33, 12)).isEqualTo(60, within(1e-9));
        assertThat(shimmed.forceOpenN(33, 12)).isEqualTo(144, within(1e-9));
    }

    @Test
    void theDoubtsOfAllThreeSizesStayInTheMargin() {
        FittedSpring fitted =
                new FittedSpring(Quantity.stated(28, 0.1), Quantity.stated(19.5, 0.1), Quantity.stated(7, 0.05));
        double u = Math.sqrt((0.01 + 0.01 + 0.0025) / 3);
        assertThat(fitted.marginMm().standardUncertainty()).isEqualTo(u, within(1e-12));
        assertThat(fitted.mostShimsMm(1.0)).isEqualTo(0.5 - 2 * u, within(1e-12));
    }

    @Test
    void aSpringThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new CoilSpring(3, 3, 6, CoilSpring.Ends.PLAIN))
                .hasMessageContaining("wider than the wire");
        assertThatThrownBy(() -> new CoilSpring(3, 20, 2, CoilSpring.Ends.CLOSED))
                .hasMessageContaining("more than 2.0");
    }
}
