package gudgeon.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Engine;
import gudgeon.rebuild.book.EngineBook;
import gudgeon.rebuild.book.Structure;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The order in which least is undone. */
class BestOrderTest {
    private static final Duration LIMIT = Duration.ofSeconds(20);
    private static final Chances CHANCES = Chances.usual();

    private static EngineBook book(Structure structure) {
        return new EngineBook(new Engine("Tarn 98", "Merrow & Tull", ""), Optional.empty(), structure);
    }

    /** What an order costs, worked out from the sentence that defines it. */
    private static double costByHand(Structure structure, List<String> order) {
        Map<String, Long> clearing = new HashMap<>();
        structure.checks().forEach(check -> check.clears().forEach(p -> clearing.merge(p, 1L, Long::sum)));
        double cost = 0;
        for (var check : structure.checks()) {
            for (String suspect : check.clears()) {
                for (var step : structure.allCovering(suspect)) {
                    boolean buries = order.contains(step.id())
                            && order.indexOf(step.id()) < order.indexOf(check.id())
                            && !step.fits().contains(suspect);
                    double minutes = 1.5 * (step.minutes() == 0 ? 10 : step.minutes());
                    cost += buries ? CHANCES.notSaid() / clearing.getOrDefault(suspect, 1L) * minutes : 0;
                }
            }
        }
        return cost;
    }

    @Property(tries = 300)
    void noOrderAtAllCostsLessInSmallCases(@ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int checks) {
        noneCostsLess(AnyStructure.of(seed, 7 - checks, checks));
    }

    @Property(tries = 300)
    void noOrderAtAllCostsLessWhereChecksContest(@ForAll long seed) {
        noneCostsLess(AnyStructure.contested(seed, 3, 3));
    }

    private static void noneCostsLess(Structure structure) {
        BestOrder best = BestOrder.of(book(structure), CHANCES, LIMIT);
        double[] least = {Double.POSITIVE_INFINITY};
        AllOrders.of(structure.precedence(), order -> least[0] = Math.min(least[0], costByHand(structure, order)));
        assertThat(best.proven()).isTrue();
        assertThat(best.cost()).isCloseTo(least[0], within(1e-4 + 1e-5 * least[0]));
        assertThat(best.bound()).isLessThanOrEqualTo(least[0] * (1 + 1e-5) + 1e-9);
        assertThat(costByHand(structure, best.order())).isCloseTo(best.cost(), within(1e-9 + 1e-9 * least[0]));
        assertThat(costByHand(structure, best.bookOrder()))
                .isCloseTo(best.bookCost(), within(1e-9 + 1e-9 * best.bookCost()));
    }

    @Property(tries = 40)
    void noOrderOfSixChecksCostsLess(@ForAll long seed) {
        Structure structure = AnyStructure.contested(seed, 8, 6);
        double least = leastOfAll(
                structure, List.of(), structure.checks().stream().map(Check::id).toList());
        BestOrder best = BestOrder.of(book(structure), CHANCES, LIMIT);
        assertThat(best.proven()).isTrue();
        assertThat(best.cost()).isCloseTo(least, within(1e-4 + 1e-5 * least));
    }

    /** Of all orders of the checks, each after the steps that must come before it and no others. */
    private static double leastOfAll(Structure structure, List<String> done, List<String> left) {
        if (left.isEmpty()) {
            return costByHand(structure, done);
        }
        double least = Double.POSITIVE_INFINITY;
        for (String next : left) {
            Set<String> order = new LinkedHashSet<>(done);
            order.addAll(structure.precedence().allBefore(next));
            order.add(next);
            List<String> others =
                    left.stream().filter(check -> !check.equals(next)).toList();
            least = Math.min(least, leastOfAll(structure, List.copyOf(order), others));
        }
        return least;
    }

    @Property(tries = 200)
    void everyOrderIsOneThatCanBeDone(@ForAll long seed) {
        canBeDone(AnyStructure.of(seed, 12, 8));
        canBeDone(AnyStructure.contested(seed, 8, 8));
    }

    private static void canBeDone(Structure structure) {
        BestOrder best = BestOrder.of(book(structure), CHANCES, LIMIT);
        assertThat(best.order())
                .containsExactlyInAnyOrderElementsOf(structure.precedence().nodes());
        for (String node : best.order()) {
            assertThat(best.order().subList(0, best.order().indexOf(node)))
                    .containsAll(structure.precedence().before(node));
        }
        assertThat(best.bookOrder())
                .containsExactlyInAnyOrderElementsOf(structure.precedence().nodes());
        assertThat(best.cost()).isLessThanOrEqualTo(best.bookCost() + 1e-9);
        assertThat(BestOrder.of(book(structure), CHANCES, LIMIT)).isEqualTo(best);
    }

    @Test
    void theCasesHaveContests() {
        int contests = 0;
        for (long seed = 0; seed < 300; seed++) {
            Structure structure = AnyStructure.contested(seed, 3, 3);
            CheckRace race = new Orders(
                            structure, Set.copyOf(structure.precedence().nodes()), new Burying(structure, p -> 0.05))
                    .race();
            contests += Rivals.of(race).size() < race.size() ? 1 : 0;
        }
        assertThat(contests).isGreaterThan(10);
    }

    @Test
    void aLargeEngineIsPutInOrderWithinTheLimitAndWithABound() {
        Duration limit = Duration.ofSeconds(4);
        for (Structure structure : List.of(AnyStructure.contested(7, 999, 400), AnyStructure.of(7, 1000, 400))) {
            Instant begun = Instant.now();
            BestOrder best = BestOrder.of(book(structure), CHANCES, limit);
            // twice the limit, since the tests share their machine
            assertThat(Duration.between(begun, Instant.now())).isLessThan(limit.multipliedBy(2));
            assertThat(structure.positions()).hasSizeGreaterThan(1990);
            assertThat(best.cost()).isLessThan(best.bookCost());
            assertThat(best.bound()).isBetween(0.7 * best.cost(), best.cost());
        }
    }
}
