package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class BudgetTest {
    private static final Quantity UNIT = Quantity.of(0, new Doubt(Origin.STATED, Distribution.NORMAL, 1));

    @Test
    void endGaugeOfTheGuide() {
        // JCGM 100:2008, H.1: departure 838 nm, combined standard uncertainty 32 nm, 16 effective degrees of freedom;
        // table H.1: parts of 25, 9.7, 0, 2.9, 0 and 16.6 nm
        Budget budget = Budget.of(EndGauge.inputs(), EndGauge::departure);
        assertThat(budget.value()).isEqualTo(838, within(0.5));
        assertThat(budget.standardUncertainty()).isEqualTo(32, within(0.5));
        assertThat(Math.floor(budget.effectiveDegreesOfFreedom())).isEqualTo(16);
        assertThat(budget.lines()).extracting(Budget.Line::input).startsWith(0, 5, 1, 3);
        double[] parts = {25, 16.6, 9.7, 2.9, 0, 0};
        for (int i = 0; i < parts.length; i++) {
            assertThat(budget.lines().get(i).standardUncertainty()).isEqualTo(parts[i], within(0.05));
        }
    }

    @Test
    void sensitivitiesAreThoseOfTheModel() {
        Budget budget = Budget.of(List.of(UNIT, UNIT.times(2)), x -> 5 + 3 * x[0] - 4 * x[1]);
        assertThat(budget.lines().get(0).input()).isEqualTo(1);
        assertThat(budget.lines().get(0).sensitivity()).isEqualTo(-4, within(1e-12));
        assertThat(budget.lines().get(0).share()).isEqualTo(64.0 / 73, within(1e-12));
        assertThat(budget.lines().get(1).sensitivity()).isEqualTo(3, within(1e-12));
        assertThat(budget.standardUncertainty()).isEqualTo(Math.sqrt(73), within(1e-12));
    }

    @Test
    void aKinkDoesNotHideTheDoubt() {
        // the least of two flanks that cross at the estimate: the mean square departure from it is exactly u squared
        Budget budget = Budget.of(List.of(UNIT), x -> Math.min(x[0], -x[0]));
        assertThat(budget.lines().get(0).sensitivity()).isZero();
        assertThat(budget.standardUncertainty()).isEqualTo(1);
        Propagation drawn = new MonteCarlo(1, 1).run(List.of(UNIT), () -> x -> Math.min(x[0], -x[0]), 200_000);
        double rootMeanSquare = Math.hypot(drawn.mean(), drawn.standardUncertainty());
        assertThat(budget.standardUncertainty()).isEqualTo(rootMeanSquare, within(0.01));
    }

    @Test
    void severalFiguresShareTheirEvaluations() {
        AtomicInteger evaluations = new AtomicInteger();
        List<Quantity> inputs = List.of(UNIT, Quantity.exact(7), UNIT);
        List<Budget> budgets = Budget.ofAll(inputs, x -> {
            evaluations.incrementAndGet();
            return new double[] {x[0] + x[1], x[2] * 2, x[1]};
        });
        assertThat(evaluations).hasValue(1 + 2 * 2);
        assertThat(budgets).extracting(Budget::value).containsExactly(7.0, 0.0, 7.0);
        assertThat(budgets).extracting(Budget::standardUncertainty).containsExactly(1.0, 2.0, 0.0);
        assertThat(budgets.get(2).lines()).extracting(Budget.Line::share).containsOnly(0.0);
    }

    @Test
    void aFigureThatDoesNotExistHasNoBudget() {
        Budget none = Budget.of(List.of(UNIT), x -> Double.NaN);
        assertThat(none.value()).isNaN();
        assertThat(none.lines()).isEmpty();
        assertThat(none.standardUncertainty()).isZero();
    }

    @Test
    void whereAFigureEndsTheOtherSideStandsForBoth() {
        Budget above = Budget.of(List.of(UNIT), x -> x[0] > 0.5 ? Double.POSITIVE_INFINITY : 3 * x[0]);
        Budget below = Budget.of(List.of(UNIT), x -> x[0] < -0.5 ? Double.NaN : 3 * x[0]);
        assertThat(above.standardUncertainty()).isEqualTo(3);
        assertThat(below.standardUncertainty()).isEqualTo(3);
        assertThat(below.lines().get(0).sensitivity()).isEqualTo(3);
    }
}
