package gudgeon.mechanics.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class MetrologyLawsTest {
    @Property
    void scalingScalesValueAndDoubt(
            @ForAll("quantities") Quantity quantity, @ForAll @DoubleRange(min = -30, max = 30) double factor) {
        Quantity scaled = quantity.times(factor);
        assertThat(scaled.value()).isEqualTo(quantity.value() * factor);
        assertThat(scaled.standardUncertainty())
                .isEqualTo(quantity.standardUncertainty() * Math.abs(factor), within(1e-12));
    }

    @Property
    void anExactConstantAddsNoDoubt(
            @ForAll("quantities") Quantity quantity, @ForAll @DoubleRange(min = -100, max = 100) double constant) {
        assertThat(quantity.plus(constant).standardUncertainty()).isEqualTo(quantity.standardUncertainty());
        assertThat(quantity.plus(Quantity.exact(constant))).isEqualTo(quantity.plus(constant));
    }

    @Property
    void aSumIsNeverSurerThanItsParts(@ForAll("quantities") Quantity a, @ForAll("quantities") Quantity b) {
        double together = a.plus(b).standardUncertainty();
        assertThat(together).isGreaterThanOrEqualTo(a.standardUncertainty());
        assertThat(together).isEqualTo(b.minus(a).standardUncertainty(), within(1e-12));
    }

    @Property
    void sharesAddUpToOneLargestFirst(
            @ForAll @Size(min = 1, max = 8) List<@From("uncertain") Quantity> inputs,
            @ForAll @DoubleRange(min = -3, max = 3) double bend) {
        Budget budget = Budget.of(
                inputs, x -> Arrays.stream(x).map(v -> v + bend * v * v).sum());
        assertThat(budget.lines()).hasSize(inputs.size());
        assertThat(budget.lines().stream().mapToDouble(Budget.Line::share).sum())
                .isEqualTo(1, within(1e-9));
        assertThat(budget.lines()).isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
    }

    @Property
    void firstOrderOfASumIsTheSumItself(@ForAll("uncertain") Quantity a, @ForAll("uncertain") Quantity b) {
        Budget budget = Budget.of(List.of(a, b), x -> x[0] - x[1]);
        Quantity difference = a.minus(b);
        assertThat(budget.value()).isEqualTo(difference.value());
        assertThat(budget.standardUncertainty()).isEqualTo(difference.standardUncertainty(), within(1e-9));
    }

    @Property(tries = 20)
    void drawsOfALinearModelAgreeWithFirstOrder(
            @ForAll @Size(min = 1, max = 5) List<@From("uncertain") Quantity> inputs,
            @ForAll @DoubleRange(min = 0.1, max = 3) double slope,
            @ForAll long seed) {
        int draws = 20_000;
        Budget budget = Budget.of(inputs, x -> slope * Arrays.stream(x).sum());
        Propagation drawn = new MonteCarlo(seed, 1)
                .run(inputs, () -> x -> slope * DoubleStream.of(x).sum(), draws);
        // six standard errors: of a mean u / sqrt n; of a standard deviation at most u / sqrt(2 n), that of normal
        // draws
        double u = budget.standardUncertainty();
        assertThat(drawn.mean()).isEqualTo(budget.value(), within(6 * u / Math.sqrt(draws)));
        assertThat(drawn.standardUncertainty()).isEqualTo(u, within(6 * u / Math.sqrt(2.0 * draws)));
    }

    @Property
    void moreReadingsOfTheSameScatterNeverRaiseTheDoubt(
            @ForAll @DoubleRange(min = 0.01, max = 1) double scatter, @ForAll @IntRange(min = 1, max = 20) int pairs) {
        // pairs of readings either side of 50 have the same spread however many there are
        double fewer = Quantity.meanOf(pairsAbout(50, scatter, pairs)).standardUncertainty();
        double more = Quantity.meanOf(pairsAbout(50, scatter, pairs + 1)).standardUncertainty();
        assertThat(more).isLessThan(fewer);
    }

    @Property
    void theOrderOfReadingsDoesNotMatter(
            @ForAll @Size(min = 2, max = 9) List<@DoubleRange(min = 49, max = 51) Double> readings) {
        double[] given = readings.stream().mapToDouble(Double::doubleValue).toArray();
        double[] sorted = DoubleStream.of(given).sorted().toArray();
        assertThat(Quantity.meanOf(given).value())
                .isEqualTo(Quantity.meanOf(sorted).value(), within(1e-12));
        assertThat(Quantity.meanOf(given).standardUncertainty())
                .isEqualTo(Quantity.meanOf(sorted).standardUncertainty(), within(1e-12));
    }

    @Property
    void momentsJoinedAreThoseOfTheWhole(
            @ForAll @Size(min = 2, max = 30) List<@DoubleRange(min = -5, max = 5) Double> values,
            @ForAll @DoubleRange(min = 0, max = 1) double where) {
        double[] all = values.stream().mapToDouble(Double::doubleValue).toArray();
        int cut = 1 + (int) (where * (all.length - 2));
        Moments joined = Moments.of(all, 0, cut).and(Moments.of(all, cut, all.length));
        Moments whole = Moments.of(all, 0, all.length);
        assertThat(joined.count()).isEqualTo(whole.count());
        assertThat(joined.mean()).isEqualTo(whole.mean(), within(1e-12));
        assertThat(joined.squares()).isEqualTo(whole.squares(), within(1e-10));
    }

    @Provide
    Arbitrary<Quantity> uncertain() {
        Arbitrary<Double> value = Arbitraries.doubles().between(-100, 100);
        Arbitrary<Doubt> doubt = Combinators.combine(
                        Arbitraries.of(Distribution.class),
                        Arbitraries.doubles().between(0.01, 1))
                .as((distribution, u) -> new Doubt(Origin.STATED, distribution, u));
        return Combinators.combine(value, doubt.list().ofMinSize(1).ofMaxSize(3))
                .as(Quantity::new);
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Quantity> exact = Arbitraries.doubles().between(-100, 100).map(Quantity::exact);
        return Arbitraries.oneOf(uncertain(), exact);
    }

    private static double[] pairsAbout(double middle, double scatter, int pairs) {
        double[] readings = new double[2 * pairs];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = middle + (i % 2 == 0 ? scatter : -scatter);
        }
        return readings;
    }
}
