package gudgeon.rebuild.schedule;

import gudgeon.rebuild.schedule.Network.Outcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Many courses of events of one network. The same every time it is asked for, and the same draws whatever is asked of it, so that
 * what differs is never chance.
 */
final class Samples {
    /** Enough that the half-date moves by less than a day from one seed to another where the range is some months. */
    static final int COUNT = 2000;

    private static final long SEED = 1898;

    /**
     * Something on its way.
     *
     * @param days how long it takes in all
     * @param gone how many of these are gone; below the most of them
     */
    record Delivery(Triangle days, double gone) {
        /** When it comes, in days from now, if this share of such deliveries comes sooner. */
        double at(double share) {
            return days.at(share, gone) - gone;
        }
    }

    private final Network network;
    private final double[] daysAMinute = new double[COUNT];
    private final double[][] arrivals;
    private final List<Outcome> outcomes = new ArrayList<>(COUNT);

    Samples(Network network, List<Delivery> deliveries, Triangle daysAMinute) {
        this.network = network;
        this.arrivals = new double[COUNT][deliveries.size()];
        SplittableRandom random = new SplittableRandom(SEED);
        for (int sample = 0; sample < COUNT; sample++) {
            this.daysAMinute[sample] = daysAMinute.at(random.nextDouble());
            for (int delivery = 0; delivery < deliveries.size(); delivery++) {
                arrivals[sample][delivery] = deliveries.get(delivery).at(random.nextDouble());
            }
            outcomes.add(network.run(this.daysAMinute[sample], arrivals[sample]));
        }
    }

    /** How each came out. */
    List<Outcome> outcomes() {
        return List.copyOf(outcomes);
    }

    /** When each would have ended, in days, had one delivery been asked for later by so many days. */
    double[] endsIfLate(int late, double byDays) {
        double[] ends = new double[COUNT];
        for (int sample = 0; sample < COUNT; sample++) {
            double later = arrivals[sample][late] + byDays;
            if (network.isSame(outcomes.get(sample), late, later)) {
                ends[sample] = outcomes.get(sample).end();
            } else {
                double[] moved = arrivals[sample].clone();
                moved[late] = later;
                ends[sample] = network.run(daysAMinute[sample], moved).end();
            }
        }
        return ends;
    }

    /** When a delivery comes in each. */
    double[] arrivals(int delivery) {
        double[] days = new double[COUNT];
        for (int sample = 0; sample < COUNT; sample++) {
            days[sample] = arrivals[sample][delivery];
        }
        return days;
    }

    /** When this share of some ends has come, from 0 to 1. */
    static double at(double share, double[] ends) {
        double[] sorted = ends.clone();
        Arrays.sort(sorted);
        int rank = (int) Math.ceil(share * sorted.length);
        return sorted[Math.max(0, Math.min(sorted.length - 1, rank - 1))];
    }
}
