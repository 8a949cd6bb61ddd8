package gudgeon.mechanics.bore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gudgeon.mechanics.metrology.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class WornBoreTest {
    private static final Quantity NONE = Quantity.exact(0);

    private static WornBore.Least least(double unworn, double along, double across, double score, double allowance) {
        return new WornBore(
                        Quantity.exact(unworn), Quantity.exact(along), Quantity.exact(across), Quantity.exact(score))
                .least(Quantity.exact(allowance));
    }

    @Test
    void wearOnOneSideCountsTwiceOnTheOldCentreAndOnceOnAShiftedOne() {
        WornBore.Least least = least(39, 39, 39.20, 0, 0);
        assertThat(least.evenWear().value()).isEqualTo(39.20, within(1e-12));
        assertThat(least.shiftedCentre().value()).isEqualTo(39.20, within(1e-12));
        assertThat(least.oldCentre().value()).isEqualTo(39.40, within(1e-12));
    }

    @Test
    void allowanceAndScoreAreAdded() {
        WornBore.Least least = least(39, 39, 39.20, 0.03, 0.05);
        assertThat(least.evenWear().value()).isEqualTo(39.33, within(1e-12));
        assertThat(least.oldCentre().value()).isEqualTo(39.56, within(1e-12));
        // nothing worn away, only a score: it is all that has to go
        assertThat(least(39, 39, 39, 0.03, 0).shiftedCentre().value()).isEqualTo(39.03, within(1e-12));
        assertThat(least(39, 39, 39, 0, 0.05).oldCentre().value()).isEqualTo(39.10, within(1e-12));
    }

    /** The least circle that holds the unworn circle and both worn walls, found by trying centres, not by the formula. */
    @Test
    void theShiftedCentreIsTheBestOfAllCentres() {
        RandomGenerator random = RandomGenerator.of("L64X128MixRandom");
        for (int trial = 0; trial < 200; trial++) {
            double across = random.nextDouble(0.3);
            double along = random.nextDouble(0.3);
            double formula =
                    least(50, 50 + along, 50 + across, 0, 0).shiftedCentre().value();
            assertThat(formula).isEqualTo(leastByTrial(25, along, across), within(0.002));
        }
    }

    private static double leastByTrial(double radius, double a, double b) {
        double best = Double.POSITIVE_INFINITY;
        for (double s = 0; s <= 0.2; s += 0.001) {
            for (double t = 0; t <= 0.2; t += 0.001) {
                double unworn = Math.hypot(s, t) + radius;
                double first = Math.hypot(radius + a - s, t);
                double second = Math.hypot(radius + b - t, s);
                best = Math.min(best, 2 * Math.max(unworn, Math.max(first, second)));
            }
        }
        return best;
    }

    @Test
    void theOrderNeverChanges() {
        RandomGenerator random = RandomGenerator.of("L64X128MixRandom");
        for (int trial = 0; trial < 1000; trial++) {
            WornBore.Least least = least(
                    40,
                    40 + random.nextDouble(-0.05, 0.4),
                    40 + random.nextDouble(-0.05, 0.4),
                    random.nextDouble(0.1),
                    0.05);
            assertThat(least.shiftedCentre().value())
                    .isBetween(
                            least.evenWear().value() - 1e-9, least.oldCentre().value() + 1e-9);
        }
    }

    @Test
    void cleaningUpIsProvedOrNotByTheDoubt() {
        // wear 0.20 one axis, allowance 0.05 a side: 39.30 on a shifted centre, 39.50 on the old one
        Quantity allowance = Quantity.exact(0.05);
        WornBore sharp = new WornBore(Quantity.exact(39), Quantity.exact(39), Quantity.exact(39.20), NONE);
        assertThat(sharp.least(allowance).with(39.51)).isEqualTo(CleansUp.ON_ANY_CENTRE);
        assertThat(sharp.least(allowance).with(39.49)).isEqualTo(CleansUp.ON_A_SHIFTED_CENTRE);
        assertThat(sharp.least(allowance).with(39.29)).isEqualTo(CleansUp.NO);
        WornBore blunt =
                new WornBore(Quantity.stated(39, 0.03), Quantity.exact(39), Quantity.stated(39.20, 0.03), NONE);
        assertThat(blunt.least(allowance).with(39.29)).isEqualTo(CleansUp.UNPROVEN);
        assertThat(blunt.least(allowance).with(39.51)).isEqualTo(CleansUp.ON_A_SHIFTED_CENTRE);
        assertThat(blunt.least(allowance).with(39.25)).isEqualTo(CleansUp.NO);
        // worn the same both ways: 39.30 only if wear is even, 39.334 on a shifted centre
        WornBore round = new WornBore(Quantity.exact(39), Quantity.exact(39.20), Quantity.exact(39.20), NONE);
        assertThat(round.least(allowance).with(39.31)).isEqualTo(CleansUp.UNPROVEN);
        assertThat(round.least(allowance).with(39.34)).isEqualTo(CleansUp.ON_A_SHIFTED_CENTRE);
    }

    @Test
    void theDoubtOfWearCountsTwiceOnTheOldCentre() {
        double u = Quantity.stated(39, 0.01).standardUncertainty();
        WornBore worn = new WornBore(Quantity.exact(39), Quantity.exact(39), Quantity.stated(39.20, 0.01), NONE);
        assertThat(worn.least(NONE).oldCentre().standardUncertainty()).isEqualTo(2 * u, within(1e-12));
        assertThat(worn.least(NONE).evenWear().standardUncertainty()).isEqualTo(u, within(1e-12));
        assertThat(worn.least(Quantity.stated(0.05, 0.01)).evenWear().standardUncertainty())
                .isEqualTo(u * Math.sqrt(5), within(1e-12));
    }

    @Test
    void impossibleSizesAreRefused() {
        List<Throwable> refused = new ArrayList<>();
        assertThatThrownBy(() -> new WornBore(NONE, NONE, NONE, NONE)).satisfies(refused::add);
        assertThatThrownBy(() -> new WornBore(Quantity.exact(39), NONE, NONE, Quantity.exact(-1)))
                .satisfies(refused::add);
        assertThat(refused)
                .allSatisfy(fault -> assertThat(fault)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageStartingWith("a worn bore has an unworn diameter above 0"));
    }
}
