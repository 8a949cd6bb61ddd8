package gudgeon.rebuild.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.rebuild.schedule.Network.Job;
import gudgeon.rebuild.schedule.Network.Outcome;
import gudgeon.rebuild.schedule.Samples.Delivery;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Small cases that can be worked out by hand, or by trying every order. */
class NetworkTest {
    private static final double HOUR_A_DAY = 1.0 / 60;

    private static Job job(String id, double minutes, List<Integer> after, List<Integer> awaits, double setDays) {
        return new Job(id, minutes, after, awaits, setDays);
    }

    @Test
    void workOfOnePersonAddsUp() {
        Outcome outcome = new Network(List.of(
                        job("a", 60, List.of(), List.of(), 0),
                        job("b", 120, List.of(), List.of(), 0),
                        job("c", 30, List.of(0), List.of(), 0)))
                .run(HOUR_A_DAY, new double[0]);
        assertThat(outcome.end()).isEqualTo(3.5, within(1e-12));
        assertThat(outcome.decidedBy()).isEqualTo(Network.THE_BENCH);
    }

    @Test
    void aPartThatComesAfterAllElseIsDoneDecidesTheEnd() {
        Network network = new Network(
                List.of(job("a", 120, List.of(), List.of(), 0), job("b", 60, List.of(0), List.of(0, 1), 0)));
        Outcome late = network.run(HOUR_A_DAY, new double[] {1, 10});
        assertThat(late.end()).isEqualTo(11, within(1e-12));
        assertThat(late.decidedBy()).isEqualTo(1);
        Outcome early = network.run(HOUR_A_DAY, new double[] {1, 2});
        assertThat(early.end()).isEqualTo(3, within(1e-12));
        assertThat(early.decidedBy()).isEqualTo(Network.THE_BENCH);
    }

    @Test
    void whatMustSetIsBegunFirstAndOtherWorkGoesOnMeanwhile() {
        Network network = new Network(List.of(
                job("sort", 60, List.of(), List.of(), 0),
                job("paint", 60, List.of(), List.of(0), 2),
                job("on the paint", 60, List.of(1), List.of(), 0)));
        Outcome outcome = network.run(HOUR_A_DAY, new double[] {0});
        assertThat(outcome.end()).isEqualTo(4, within(1e-12));
        assertThat(outcome.endOf(0)).isEqualTo(2, within(1e-12));
        Outcome late = network.run(HOUR_A_DAY, new double[] {5});
        assertThat(late.end()).isEqualTo(9, within(1e-12));
        assertThat(late.decidedBy()).as("through the setting back to the part").isZero();
    }

    @Test
    void noOrderWithoutSettingEndsSooner() {
        Random random = new Random(5);
        for (int run = 0; run < 200; run++) {
            int deliveries = 3;
            List<Job> jobs = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                List<Integer> after = new ArrayList<>();
                for (int j = 0; j < i; j++) {
                    if (random.nextInt(4) == 0) {
                        after.add(j);
                    }
                }
                List<Integer> awaits = random.nextBoolean() ? List.of(random.nextInt(deliveries)) : List.of();
                jobs.add(job("j" + i, 10 + random.nextInt(200), after, awaits, 0));
            }
            double[] arrivals = {random.nextInt(12), random.nextInt(12), random.nextInt(12)};
            assertThat(new Network(jobs).run(HOUR_A_DAY, arrivals).end())
                    .isEqualTo(soonest(jobs, arrivals, new BitSet(), 0), within(1e-9));
        }
    }

    /** The soonest end over every order. */
    private static double soonest(List<Job> jobs, double[] arrivals, BitSet done, double now) {
        if (done.cardinality() == jobs.size()) {
            return now;
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < jobs.size(); i++) {
            Job next = jobs.get(i);
            if (!done.get(i) && next.after().stream().allMatch(done::get)) {
                double begun = next.awaits().stream()
                        .mapToDouble(delivery -> arrivals[delivery])
                        .reduce(now, Math::max);
                BitSet then = (BitSet) done.clone();
                then.set(i);
                best = Math.min(best, soonest(jobs, arrivals, then, begun + next.minutes() * HOUR_A_DAY));
            }
        }
        return best;
    }

    @Test
    void theRangeOfTheBenchAloneIsThatOfItsTriangle() {
        Triangle pace = new Triangle(0.75 * HOUR_A_DAY, HOUR_A_DAY, 1.75 * HOUR_A_DAY);
        Samples samples = new Samples(
                new Network(List.of(job("a", 600, List.of(), List.of(), 0), job("b", 1800, List.of(0), List.of(), 0))),
                List.of(),
                pace);
        double[] ends = samples.outcomes().stream().mapToDouble(Outcome::end).toArray();
        for (double share : new double[] {0.1, 0.5, 0.9}) {
            assertThat(Samples.at(share, ends)).isEqualTo(2400 * pace.at(share), within(0.6));
        }
    }

    @Test
    void theLastOfTwoDeliveriesComesAsOftenAsWorkedOut() {
        Triangle early = new Triangle(0, 10, 20);
        Triangle later = new Triangle(5, 15, 25);
        Samples samples = new Samples(
                new Network(List.of(job("a", 0, List.of(), List.of(0, 1), 0))),
                List.of(new Delivery(early, 0), new Delivery(later, 0)),
                new Triangle(1, 1, 1));
        List<Outcome> outcomes = samples.outcomes();
        double[] ends = outcomes.stream().mapToDouble(Outcome::end).toArray();
        // both have come by then with the product of their shares
        double half = Samples.at(0.5, ends);
        assertThat(early.shareUpTo(half) * later.shareUpTo(half)).isEqualTo(0.5, within(0.035));
        double first =
                outcomes.stream().filter(outcome -> outcome.decidedBy() == 0).count() / (double) Samples.COUNT;
        assertThat(first).isEqualTo(shareOfFirstLast(early, later), within(0.035));
    }

    private static double shareOfFirstLast(Triangle one, Triangle other) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += other.shareUpTo(one.at((i + 0.5) / steps));
        }
        return sum / steps;
    }

    @Test
    void whatIsLateByNowComesLaterThanNow() {
        Triangle days = new Triangle(4, 7, 20);
        Delivery delivery = new Delivery(days, 15);
        assertThat(delivery.at(0)).isEqualTo(0, within(1e-9));
        assertThat(delivery.at(1)).isEqualTo(5, within(1e-9));
        // of those later than 15 days, half come by 20 - 5 / sqrt 2
        assertThat(delivery.at(0.5)).isEqualTo(5 - 5 / Math.sqrt(2), within(1e-9));
    }

    @Test
    void aTriangleIsUndoneByItsShares() {
        Triangle skew = new Triangle(3, 4, 12);
        for (double share = 0; share <= 1; share += 0.05) {
            assertThat(skew.shareUpTo(skew.at(share))).isEqualTo(share, within(1e-9));
        }
        assertThat(new Triangle(7, 7, 7).at(0.3)).isEqualTo(7);
        assertThat(new Triangle(7, 7, 9).at(0)).isEqualTo(7);
        assertThat(new Triangle(5, 9, 9).at(1)).isEqualTo(9);
    }
}
