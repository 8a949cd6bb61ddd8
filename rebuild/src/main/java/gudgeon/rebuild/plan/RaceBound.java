package gudgeon.rebuild.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What no order of some checks can cost less than. Of each two, one comes first and makes the other pay for the steps it calls for. A
 * step that several checks call for is paid once, so its cost is shared out among them; any shares give a bound, and shares are
 * shifted to where they count, to the dearer way round of no pair, by the exponentiated gradient (Kivinen and Warmuth, "Exponentiated
 * gradient versus gradient descent for linear predictors", Information and Computation 132 (1997); from memory).
 */
final class RaceBound {
    private static final int ROUNDS = 60;

    /** What one check pays for one step. */
    private static final class Payment {
        private final int late;
        private final double cost;
        private final int[] callers;
        private final double[] shares;

        /**
         * @param late the check that pays, by its place among the checks
         * @param cost what it pays
         * @param callers the checks of which the first to come makes it pay; they begin with equal shares
         */
        Payment(int late, double cost, int... callers) {
            this.late = late;
            this.cost = cost;
            this.callers = callers;
            this.shares = new double[callers.length];
            Arrays.fill(shares, 1.0 / callers.length);
        }
    }

    private final CheckRace race;
    private final List<Integer> checks;
    private final List<Payment> payments = new ArrayList<>();
    private double paidAnyway;

    /**
     * @param done steps that are done before the first of the checks
     */
    RaceBound(CheckRace race, List<Integer> checks, BitSet done) {
        this.race = race;
        this.checks = checks;
        for (int j = 0; j < checks.size(); j++) {
            for (CheckRace.Stake stake : race.stakes(checks.get(j))) {
                if (done.get(stake.step())) {
                    paidAnyway += stake.cost();
                } else {
                    addPayment(j, stake);
                }
            }
        }
    }

    private void addPayment(int late, CheckRace.Stake stake) {
        int[] callers = IntStream.range(0, checks.size())
                .filter(i -> i != late && race.calls(checks.get(i)).get(stake.step()) && !isFirst(late, i))
                .toArray();
        if (callers.length > 0) {
            payments.add(new Payment(late, stake.cost(), callers));
        }
    }

    /** Whether one check must come before another. */
    private boolean isFirst(int one, int other) {
        return race.first(checks.get(other)).get(checks.get(one));
    }

    /** The bound with equal shares. */
    double quick() {
        return paidAnyway + ofPairs(shares());
    }

    /**
     * The best bound found.
     *
     * @param deadline after which no more shares are shifted, by the system's nanosecond clock
     */
    double best(long deadline) {
        double best = 0;
        for (int round = 1; round <= ROUNDS; round++) {
            double[][] shares = shares();
            best = Math.max(best, ofPairs(shares));
            if (System.nanoTime() > deadline) {
                break;
            }
            double pace = 1 / Math.sqrt(round);
            payments.forEach(payment -> shift(payment, shares, pace));
        }
        return paidAnyway + best;
    }

    private double[][] shares() {
        double[][] shares = new double[checks.size()][checks.size()];
        for (Payment payment : payments) {
            for (int k = 0; k < payment.callers.length; k++) {
                shares[payment.callers[k]][payment.late] += payment.cost * payment.shares[k];
            }
        }
        return shares;
    }

    private double ofPairs(double[]... shares) {
        double bound = 0;
        for (int i = 0; i < checks.size(); i++) {
            for (int j = 0; j < i; j++) {
                boolean free = !isFirst(i, j) && !isFirst(j, i);
                bound += free ? Math.min(shares[i][j], shares[j][i]) : isFirst(i, j) ? shares[i][j] : shares[j][i];
            }
        }
        return bound;
    }

    private void shift(Payment payment, double[][] shares, double pace) {
        double sum = 0;
        for (int k = 0; k < payment.callers.length; k++) {
            int caller = payment.callers[k];
            boolean counts =
                    isFirst(caller, payment.late) || shares[caller][payment.late] < shares[payment.late][caller];
            payment.shares[k] *= counts ? Math.exp(pace) : 1;
            sum += payment.shares[k];
        }
        for (int k = 0; k < payment.callers.length; k++) {
            payment.shares[k] /= sum;
        }
    }
}
