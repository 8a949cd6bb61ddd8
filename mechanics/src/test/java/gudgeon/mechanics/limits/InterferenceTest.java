package gudgeon.mechanics.limits;

import static gudgeon.mechanics.limits.Material.ALUMINIUM;
import static gudgeon.mechanics.limits.Material.GREY_IRON;
import static gudgeon.mechanics.limits.Material.STEEL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class InterferenceTest {
    /**
     * Brown, Mark's Calculations for Machine Design, 2005, section 3.2.3, example 6: solid steel shaft of 100 mm in a steel collar of
     * 160 mm, radial interference 0.010 mm: 12.6 MPa; in inches 4 in, 6 in, 0.0005 in: 2.1 kpsi.
     */
    @Test
    void pressureIsThatOfTheWorkedExample() {
        assertThat(new Interference(100, 0.020, 0, 160, STEEL, STEEL).pressureMPa())
                .isCloseTo(12.6, within(0.06));
        double kpsi = new Interference(4 * 25.4, 0.001 * 25.4, 0, 6 * 25.4, STEEL, STEEL).pressureMPa() / 6.894757;
        assertThat(kpsi).isCloseTo(2.1, within(0.05));
    }

    /** Shigley's Mechanical Engineering Design, 9th ed., eq. 3-57: the form that eq. 3-56 takes for one material. */
    @Property
    void oneMaterialFollowsTheShorterFormula(
            @ForAll @DoubleRange(min = 0, max = 0.9) double bore,
            @ForAll @DoubleRange(min = 1.1, max = 5) double outside) {
        double ri = 20 * bore;
        double ro = 20 * outside;
        double expected = STEEL.elasticityMPa()
                * 0.02
                / (2 * Math.pow(20, 3))
                * (ro * ro - 400)
                * (400 - ri * ri)
                / (ro * ro - ri * ri);
        Interference it = new Interference(40, 0.04, 2 * ri, 2 * ro, STEEL, STEEL);
        assertThat(it.pressureMPa()).isCloseTo(expected, within(1e-9 * expected));
    }

    /**
     * An independent way: the equation of equilibrium u'' + u'/r - u/r2 = 0 integrated across both rings by Runge-Kutta, the pressure
     * found at which their walls meet.
     */
    @Test
    void pressureIsThatOfTheEquationOfEquilibrium() {
        double pressure = new Interference(47, 0.03, 35, 70, STEEL, ALUMINIUM).pressureMPa();
        double out = wallMoves(23.5, 35, pressure, ALUMINIUM);
        double in = wallMoves(23.5, 17.5, pressure, STEEL);
        assertThat(2 * (out - in)).isCloseTo(0.03, within(1e-7));
    }

    /** Radial shift of the wall at radius a under a pressure there, the other wall at b being free. */
    private static double wallMoves(double a, double b, double pressure, Material material) {
        double[] one = across(a, b, 1, 0, material);
        double[] two = across(a, b, 0, 1, material);
        double e = material.elasticityMPa();
        double nu = material.poisson();
        double f = e / (1 - nu * nu);
        double s = -pressure;
        double det = f * nu / a * two[2] - f * one[2];
        return s * two[2] / det;
    }

    /** Radial stress at b when u and u' at a are as given. */
    private static double[] across(double a, double b, double u, double v, Material material) {
        int steps = 4000;
        double h = (b - a) / steps;
        double r = a;
        double[] y = {u, v};
        for (int i = 0; i < steps; i++) {
            double[] k1 = slope(r, y);
            double[] k2 = slope(r + h / 2, new double[] {y[0] + h / 2 * k1[0], y[1] + h / 2 * k1[1]});
            double[] k3 = slope(r + h / 2, new double[] {y[0] + h / 2 * k2[0], y[1] + h / 2 * k2[1]});
            double[] k4 = slope(r + h, new double[] {y[0] + h * k3[0], y[1] + h * k3[1]});
            for (int j = 0; j < 2; j++) {
                y[j] += h / 6 * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]);
            }
            r += h;
        }
        double nu = material.poisson();
        return new double[] {y[0], y[1], material.elasticityMPa() / (1 - nu * nu) * (y[1] + nu * y[0] / b)};
    }

    private static double[] slope(double r, double... y) {
        return new double[] {y[1], -y[1] / r + y[0] / (r * r)};
    }

    /** A ring's forces balance: the mean hoop stress times the wall equals the pressure times the radius; Lame's parabola between. */
    @Test
    void hoopStressesAreLames() {
        Interference it = new Interference(40, 0.04, 20, 80, STEEL, GREY_IRON);
        double p = it.pressureMPa();
        assertThat(it.hoopAroundMPa()).isCloseTo(p * (6400 + 1600) / (6400 - 1600), within(1e-9));
        assertThat(it.hoopPartMPa()).isCloseTo(-2 * p * 1600 / (1600 - 400), within(1e-9));
        assertThat(new Interference(40, 0.04, 0, 80, STEEL, GREY_IRON).hoopPartMPa())
                .isNegative();
        assertThat(it.boreClosesMm()).isCloseTo(20 * 2 * p * 1600 / 1200 / STEEL.elasticityMPa(), within(1e-12));
        assertThat(it.pressForceN(15, 0.12)).isCloseTo(0.12 * p * Math.PI * 40 * 15, within(1e-6));
    }

    @Property
    void moreInterferenceAndAThickerBossPressHarder(
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double interference,
            @ForAll @DoubleRange(min = 50, max = 200) double outside) {
        double here = new Interference(47, interference, 30, outside, STEEL, ALUMINIUM).pressureMPa();
        assertThat(new Interference(47, 2 * interference, 30, outside, STEEL, ALUMINIUM).pressureMPa())
                .isCloseTo(2 * here, within(1e-9 * here));
        assertThat(new Interference(47, interference, 30, outside * 1.1, STEEL, ALUMINIUM).pressureMPa())
                .isGreaterThan(here);
    }

    @Test
    void whatCantBeIsRefused() {
        assertThatThrownBy(() -> new Interference(47, 0.03, 50, 70, STEEL, STEEL))
                .hasMessageContaining("diameters");
        assertThatThrownBy(() -> new Interference(47, 0.03, 0, 47, STEEL, STEEL))
                .hasMessageContaining("diameters");
        assertThatThrownBy(() -> new Interference(47, -0.03, 0, 70, STEEL, STEEL))
                .hasMessageContaining("interference");
        assertThatThrownBy(() -> new Interference(47, 0.03, 0, 70, STEEL, STEEL).pressForceN(0, 0.1))
                .hasMessageContaining("length");
        assertThatThrownBy(() -> new WarmSeat(0, STEEL, STEEL)).hasMessageContaining("size");
    }

    /** Callister and Rethwisch, 3rd ed., table B.6: 356.0 grows 21.5e-6 per degree, so 100 mm by 0.172 mm over 80 degrees. */
    @Test
    void aCaseGrowsAsTheHandbookSays() {
        WarmSeat seat = new WarmSeat(100, STEEL, ALUMINIUM);
        assertThat(seat.interferenceMm(0, 20, 100)).isCloseTo(-0.172, within(1e-9));
        assertThat(seat.interferenceMm(0, 100, 20)).isCloseTo(0.0936, within(1e-9));
    }

    @Property
    void temperaturesAskedForLeaveTheGapAskedFor(
            @ForAll @DoubleRange(min = 5, max = 200) double size,
            @ForAll @DoubleRange(min = -0.01, max = 0.1) double interference,
            @ForAll @DoubleRange(min = 0, max = 0.05) double gap,
            @ForAll @DoubleRange(min = -40, max = 40) double other) {
        WarmSeat seat = new WarmSeat(size, STEEL, ALUMINIUM);
        double around = seat.aroundCelsius(interference, gap, other);
        assertThat(seat.interferenceMm(interference, other, around)).isCloseTo(-gap, within(1e-9));
        double part = seat.partCelsius(interference, gap, other);
        assertThat(seat.interferenceMm(interference, part, other)).isCloseTo(-gap, within(1e-9));
    }

    @Test
    void aLightAlloyLoosensAndIronHoldsOn() {
        double loose = new WarmSeat(42, STEEL, ALUMINIUM).looseAtCelsius(0.02).orElseThrow();
        assertThat(new WarmSeat(42, STEEL, ALUMINIUM).interferenceMm(0.02, loose, loose))
                .isCloseTo(0, within(1e-12));
        assertThat(loose).isCloseTo(20 + 0.02 / (42 * 9.8e-6), within(1e-6));
        assertThat(new WarmSeat(42, STEEL, GREY_IRON).looseAtCelsius(0.02)).isEmpty();
    }
}
