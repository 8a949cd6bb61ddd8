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
    private final List<Delivery> deliveries;
    private final Triangle daysAMinute;
    private final double[] pace = new double[COUNT];
    private final double[][] luck;

    Samples(Network network, List<Delivery> deliveries, Triangle daysAMinute) {
        this.network = network;
        this.deliveries = List.copyOf(deliveries);
        this.daysAMinute = daysAMinute;
        this.luck = new double[COUNT][deliveries.size()];
        SplittableRandom random = new SplittableRandom(SEED);
        for (int sample = 0; sample < COUNT; sample++) {
            pace[sample] = random.nextDouble();
            for (int delivery = 0; delivery < deliveries.size(); delivery++) {
                luck[sample][delivery] = random.nextDouble();
            }
        }
    }

    /** How each came out. */
    List<Outcome> outcomes() {
        return outcomes(Network.THE_BENCH, 0);
    }

    /** How each would have come out had one delivery been asked for later by so many days. */
    List<Outcome> outcomes(int late, double byDays) {
        List<Outcome> outcomes = new ArrayList<>(COUNT);
        for (int sample = 0; sample < COUNT; sample++) {
            double[] arrivals = new double[deliveries.size()];
            for (int delivery = 0; delivery < arrivals.length; delivery++) {
                arrivals[delivery] =
                        deliveries.get(delivery).at(luck[sample][delivery]) + (delivery == late ? byDays : 0);
            }
            outcomes.add(network.run(daysAMinute.at(pace[sample]), arrivals));
        }
        return outcomes;
    }

    /** When a delivery comes in each. */
    double[] arrivals(int delivery) {
        double[] arrivals = new double[COUNT];
        for (int sample = 0; sample < COUNT; sample++) {
            arrivals[sample] = deliveries.get(delivery).at(luck[sample][delivery]);
        }
        return arrivals;
    }

    /** When this share of some ends has come, from 0 to 1. */
    static double at(double share, double[] ends) {
        double[] sorted = ends.clone();
        Arrays.sort(sorted);
        int rank = (int) Math.ceil(share * sorted.length);
        return sorted[Math.max(0, Math.min(sorted.length - 1, rank - 1))];
    }
}
