package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MonteCarloTest {
    private static final Quantity NORMAL = Quantity.of(0, new Doubt(Origin.STATED, Distribution.NORMAL, 1));
    private static final Quantity RECTANGULAR = Quantity.of(0, new Doubt(Origin.STATED, Distribution.RECTANGULAR, 1));

    @ParameterizedTest
    @ValueSource(ints = {2, 5})
    void oneSeedGivesTheSameBitsOnAnyNumberOfThreads(int threads) {
        List<Quantity> inputs = List.of(NORMAL, RECTANGULAR, Quantity.read(4, 0.01, 0.03), Quantity.exact(2));
        Propagation alone = new MonteCarlo(42, 1).run(inputs, () -> MonteCarloTest::sum, 123_456);
        assertThat(new MonteCarlo(42, threads).run(inputs, () -> MonteCarloTest::sum, 123_456))
                .isEqualTo(alone);
        assertThat(new MonteCarlo(43, threads).run(inputs, () -> MonteCarloTest::sum, 123_456))
                .isNotEqualTo(alone);
        Propagation settledAlone = new MonteCarlo(42, 1).untilStable(inputs, () -> MonteCarloTest::sum, 2_000_000);
        assertThat(new MonteCarlo(42, threads).untilStable(inputs, () -> MonteCarloTest::sum, 2_000_000))
                .isEqualTo(settledAlone);
    }

    @Test
    void aRunUntilStableIsTheFixedRunOfAsManyDraws() {
        List<Quantity> inputs = Collections.nCopies(4, NORMAL);
        Propagation settled = new MonteCarlo(7, 2).untilStable(inputs, () -> MonteCarloTest::sum, 2_000_000);
        Propagation fixed = new MonteCarlo(7, 2).run(inputs, () -> MonteCarloTest::sum, settled.draws());
        assertThat(settled.stable()).isTrue();
        assertThat(fixed.stable()).isFalse();
        assertThat(settled.mean()).isEqualTo(fixed.mean());
        assertThat(settled.standardUncertainty()).isEqualTo(fixed.standardUncertainty());
        assertThat(settled.interval()).isEqualTo(fixed.interval());
    }

    @Test
    void stableMeansWithinTheToleranceOfTheTruth() {
        // JCGM 101:2008, 9.2.2: u = 2.0 to two digits, so the tolerance is 0.05; the interval is known to be 2 x 1.96
        Propagation settled =
                new MonteCarlo(11, 2).untilStable(Collections.nCopies(4, NORMAL), () -> MonteCarloTest::sum, 2_000_000);
        assertThat(settled.draws() % MonteCarlo.BLOCK).isZero();
        assertThat(settled.draws()).isLessThan(2_000_000);
        assertThat(settled.mean()).isEqualTo(0, within(0.05));
        assertThat(settled.standardUncertainty()).isEqualTo(2, within(0.05));
        assertThat(settled.interval().low()).isEqualTo(-3.92, within(0.05));
        assertThat(settled.interval().high()).isEqualTo(3.92, within(0.05));
    }

    @Test
    void itSaysSoWhenTheGreatestNumberOfDrawsDoesNotSettleIt() {
        // u = 0.99: the tolerance is half of 0.01, which 30 000 draws cannot reach at the ends of the interval
        List<Quantity> input = List.of(NORMAL.times(0.99));
        Propagation unsettled = new MonteCarlo(5, 2).untilStable(input, () -> x -> x[0], 34_567);
        assertThat(unsettled.stable()).isFalse();
        assertThat(unsettled.draws()).isEqualTo(30_000);
    }

    @Test
    void aFigureWithoutDoubtIsStableAtOnce() {
        Propagation certain = new MonteCarlo(5, 2).untilStable(List.of(Quantity.exact(0.1)), () -> x -> x[0], 100_000);
        assertThat(certain.stable()).isTrue();
        assertThat(certain.draws()).isEqualTo(2 * MonteCarlo.BLOCK);
        assertThat(certain.mean()).isEqualTo(0.1);
        assertThat(certain.standardUncertainty()).isZero();
        assertThat(certain.shareBelow(0.1)).isZero();
        assertThat(certain.shareBelow(0.2)).isEqualTo(1);
    }

    @Test
    void shareBelowIsTheDistributionFunction() {
        // standard normal distribution function: 0.02275 at -2, 0.84134 at +1 (any table of it)
        Quantity gap = Quantity.of(1, new Doubt(Origin.STATED, Distribution.NORMAL, 0.5));
        Propagation drawn = new MonteCarlo(3, 2).run(List.of(gap), () -> x -> x[0], 400_000);
        assertThat(drawn.shareBelow(0)).isEqualTo(0.02275, within(0.001));
        assertThat(drawn.shareBelow(1.5)).isEqualTo(0.84134, within(0.002));
    }

    @Test
    void aTriangularDoubtHasItsStandardDeviationAndItsBounds() {
        // JCGM 100:2008, 4.4.6: 100 degrees between 96 and 104, likeliest in the middle, gives u = 1.6
        Quantity temperature = Quantity.of(100, new Doubt(Origin.STATED, Distribution.TRIANGULAR, 4 / Math.sqrt(6)));
        Propagation drawn = new MonteCarlo(3, 2).run(List.of(temperature), () -> x -> x[0], 400_000);
        assertThat(drawn.standardUncertainty()).isEqualTo(1.6, within(0.05));
        assertThat(drawn.shareBelow(96)).isZero();
        assertThat(drawn.shareBelow(104)).isEqualTo(1);
        // one eighth of a triangle lies beyond half its half-width
        assertThat(drawn.shareBelow(98)).isEqualTo(0.125, within(0.003));
    }

    @Test
    void intervalEndsAreTheDrawsThatTheStandardNames() {
        // JCGM 101:2008, 7.7.2 for M = 10 000 and p = 0.95: q = 9500, r = 250, so the 250th and the 9750th draw
        double[] ascending = new double[10_000];
        for (int i = 0; i < ascending.length; i++) {
            ascending[i] = i + 1;
        }
        assertThat(Propagation.interval(ascending, 0, 10_000, 0.95)).isEqualTo(new Propagation.Interval(250, 9750));
    }

    @Test
    void toleranceIsHalfAUnitOfTheLastDigit() {
        // JCGM 101:2008, 7.9.2, examples: 0.000 35 g to two digits gives 0.000 005; 2 K to one digit gives 0.5
        assertThat(Propagation.tolerance(0.00035, 2)).isEqualTo(0.000005, within(1e-18));
        assertThat(Propagation.tolerance(2, 1)).isEqualTo(0.5);
        assertThat(Propagation.tolerance(0.0999, 2)).isEqualTo(0.005, within(1e-15));
    }

    @Test
    void everyThreadHasItsOwnModel() {
        AtomicInteger models = new AtomicInteger();
        new MonteCarlo(1, 3)
                .run(
                        Collections.nCopies(4, NORMAL),
                        () -> {
                            models.incrementAndGet();
                            return MonteCarloTest::sum;
                        },
                        100_000);
        assertThat(models).hasValue(3);
    }

    @Test
    void theDrawLoopAllocatesNothing() {
        List<Quantity> inputs = List.of(NORMAL, RECTANGULAR, Quantity.read(4, 0.01, 0.03), Quantity.exact(2));
        MonteCarlo alone = new MonteCarlo(9, 1);
        alone.run(inputs, () -> MonteCarloTest::sum, 200_000); // lets classes load
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        alone.run(inputs, () -> MonteCarloTest::sum, 200_000);
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        // the draws twice, and what merging twenty runs needs; an object for each draw would take 16 bytes more
        assertThat(allocated).isLessThan(200_000 * 8L * 3 + 300_000);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aModelWithoutAnAnswerIsSaidSo(int threads) {
        MonteCarlo monteCarlo = new MonteCarlo(1, threads);
        assertThatThrownBy(() -> monteCarlo.run(List.of(NORMAL), () -> x -> Math.log(x[0]), 50_000))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("NaN at draw");
    }

    @Test
    void nonsenseIsRefused() {
        MonteCarlo monteCarlo = new MonteCarlo(1, 1);
        assertThatThrownBy(() -> new MonteCarlo(1, 0)).hasMessageContaining("one thread or more");
        assertThatThrownBy(() -> monteCarlo.run(List.of(NORMAL), () -> x -> x[0], 99))
                .hasMessageContaining("100");
        assertThatThrownBy(() -> monteCarlo.untilStable(List.of(NORMAL), () -> x -> x[0], 19_999))
                .hasMessageContaining("20000");
        Propagation drawn = monteCarlo.run(List.of(NORMAL), () -> x -> x[0], 100);
        assertThatThrownBy(() -> drawn.interval(1)).hasMessageContaining("between 0 and 1");
    }

    private static double sum(double[] x) {
        return x[0] + x[1] + x[2] + x[3];
    }
}
