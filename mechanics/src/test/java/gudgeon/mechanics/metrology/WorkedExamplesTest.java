package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The worked examples of JCGM 101:2008, clause 9, with its results. Figures of 9.2 and 9.3 are quoted from memory. */
class WorkedExamplesTest {
    private static final int DRAWS = 1_000_000;
    private static final MonteCarlo MONTE_CARLO = new MonteCarlo(20081, 2);

    @Test
    void fourNormalInputs() {
        // 9.2.2: u = 2.00, 95 % interval [-3.92, 3.92]
        List<Quantity> inputs = Collections.nCopies(4, quantity(0, Distribution.NORMAL, 1));
        Propagation drawn = MONTE_CARLO.run(inputs, () -> WorkedExamplesTest::sum, DRAWS);
        expect(drawn, 0, 2.00, -3.92, 3.92, 0.02);
        assertThat(drawn.confirms(Budget.of(inputs, WorkedExamplesTest::sum), 2))
                .isTrue();
    }

    @Test
    void fourRectangularInputs() {
        // 9.2.3: u = 2.00, 95 % interval [-3.88, 3.88]
        List<Quantity> inputs = Collections.nCopies(4, quantity(0, Distribution.RECTANGULAR, 1));
        Propagation drawn = MONTE_CARLO.run(inputs, () -> WorkedExamplesTest::sum, DRAWS);
        expect(drawn, 0, 2.00, -3.88, 3.88, 0.02);
        // a second opinion in closed form: the upper tail of a sum of four uniform deviates is (4 - s)^4 / 24
        // (Irwin-Hall distribution)
        double end = 2 * Math.sqrt(3) * (2 - Math.pow(24 * 0.025, 0.25));
        assertThat(drawn.interval().high()).isEqualTo(end, within(0.015));
    }

    @Test
    void rectangularInputsOfWhichOneRulesAll() {
        // 9.2.4: u = 10.1, 95 % interval [-17.0, 17.0], for which first order gives [-19.8, 19.8]
        List<Quantity> inputs = new ArrayList<>(Collections.nCopies(3, quantity(0, Distribution.RECTANGULAR, 1)));
        inputs.add(quantity(0, Distribution.RECTANGULAR, 10));
        Propagation drawn = MONTE_CARLO.run(inputs, () -> WorkedExamplesTest::sum, DRAWS);
        expect(drawn, 0, 10.1, -17.0, 17.0, 0.06);
        Budget budget = Budget.of(inputs, WorkedExamplesTest::sum);
        assertThat(1.96 * budget.standardUncertainty()).isEqualTo(19.8, within(0.15));
        assertThat(drawn.confirms(budget, 2)).isFalse();
    }

    @Test
    void massCalibration() {
        // 9.3, in milligrams: first order u = 0.0539; drawn 1.2341, u = 0.0754, shortest 95 % interval [1.0834,
        // 1.3825].
        // The shortest interval of a figure spread evenly about its mean is as wide as the symmetric one, but where it
        // lies is a matter of the draws: so its width is compared here.
        List<Quantity> inputs = List.of(
                quantity(100_000.000, Distribution.NORMAL, 0.050),
                quantity(1.234, Distribution.NORMAL, 0.020),
                Quantity.stated(1.20, 0.10),
                Quantity.stated(8000, 1000),
                Quantity.stated(8000, 50));
        ToDoubleFunction<double[]> model = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        Propagation drawn = MONTE_CARLO.run(inputs, () -> model, DRAWS);
        assertThat(drawn.mean()).isEqualTo(1.2341, within(0.0003));
        Propagation.Interval interval = drawn.interval();
        assertThat(interval.high() - interval.low()).isEqualTo(1.3825 - 1.0834, within(0.001));
        assertThat((interval.high() + interval.low()) / 2).isEqualTo(1.234, within(0.0008));
        assertThat(drawn.standardUncertainty()).isEqualTo(0.0754, within(0.0002));
        Budget budget = Budget.of(inputs, model);
        assertThat(budget.standardUncertainty()).isEqualTo(0.0539, within(0.00005));
        assertThat(drawn.confirms(budget, 1)).isFalse();
    }

    @Test
    void endGaugeWithItsSecondOrderTerms() {
        // JCGM 100:2008, H.1.7: with the two second-order terms of 11.7 nm and 1.7 nm, 32 nm becomes 34 nm
        Propagation drawn = MONTE_CARLO.run(EndGauge.inputs(), () -> EndGauge::departure, DRAWS);
        assertThat(drawn.mean()).isEqualTo(838, within(0.5));
        assertThat(drawn.standardUncertainty()).isEqualTo(34, within(0.5));
    }

    @Test
    void gaugeBlock() {
        // 9.5: departure 838 nm, u = 36 nm, 99 % interval [745, 931] nm
        Propagation drawn = MONTE_CARLO.run(GaugeBlock.inputs(), () -> GaugeBlock::departure, DRAWS);
        assertThat(drawn.mean()).isEqualTo(838, within(0.5));
        assertThat(drawn.standardUncertainty()).isEqualTo(36, within(0.5));
        assertThat(drawn.interval(0.99).low()).isEqualTo(745, within(1.0));
        assertThat(drawn.interval(0.99).high()).isEqualTo(931, within(1.0));
    }

    private static void expect(Propagation drawn, double mean, double u, double low, double high, double tolerance) {
        assertThat(drawn.draws()).isEqualTo(DRAWS);
        assertThat(drawn.mean()).isEqualTo(mean, within(tolerance));
        assertThat(drawn.standardUncertainty()).isEqualTo(u, within(tolerance));
        assertThat(drawn.interval().low()).isEqualTo(low, within(tolerance));
        assertThat(drawn.interval().high()).isEqualTo(high, within(tolerance));
    }

    private static Quantity quantity(double value, Distribution distribution, double u) {
        return Quantity.of(value, new Doubt(Origin.STATED, distribution, u));
    }

    private static double sum(double[] x) {
        return x[0] + x[1] + x[2] + x[3];
    }
}
