package gudgeon.mechanics.diagnose;

import java.util.Arrays;

/**
 * Chances of causes that exclude each other, one of which it is. Immutable.
 *
 * <p>Bayes' rule: D. J. C. MacKay, <i>Information Theory, Inference, and Learning Algorithms</i>, Cambridge 2003, section 2.3;
 * entropy and expected information: ibid., sections 2.4 and 8.1.
 */
public final class Belief {
    private static final double LN_2 = Math.log(2);
    private static final double SUM_TOLERANCE = 1e-9;

    private final double[] chances;

    private Belief(double[] chances) {
        this.chances = chances;
    }

    /**
     * Chances in the proportion of odds.
     *
     * @param odds one or more, each 0 or more and finite, not all 0
     * @throws IllegalArgumentException if they are not
     */
    public static Belief ofOdds(double... odds) {
        double sum = 0;
        for (double one : odds) {
            if (!(one >= 0 && one < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("odds are 0 or more and finite, got " + one);
            }
            sum += one;
        }
        if (!(sum > 0 && sum < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the odds must come to a finite sum above 0, got " + sum);
        }
        double whole = sum;
        return new Belief(Arrays.stream(odds).map(one -> one / whole).toArray());
    }

    /** How many causes there are. */
    public int size() {
        return chances.length;
    }

    /**
     * The chance of a cause, from 0 to 1.
     *
     * @throws IndexOutOfBoundsException if there is no such cause
     */
    public double chance(int cause) {
        return chances[cause];
    }

    /**
     * What is to be believed after something was seen: chance times likelihood, brought to a sum of 1.
     *
     * @param logLikelihood natural logarithm of the probability, or of its density, of what was seen with each cause; negative
     *     infinity where a cause rules it out
     * @throws IllegalArgumentException if there are not as many as causes, or no cause that is possible allows it
     */
    public Belief given(double... logLikelihood) {
        if (logLikelihood.length != chances.length) {
            throw new IllegalArgumentException(
                    chances.length + " causes need as many likelihoods, got " + logLikelihood.length);
        }
        double[] log = new double[chances.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < log.length; i++) {
            log[i] = Math.log(chances[i]) + logLikelihood[i];
            most = Math.max(most, log[i]);
        }
        if (!Double.isFinite(most)) {
            throw new IllegalArgumentException("no cause explains what was seen");
        }
        // less the greatest, so that likelihoods too small for a double still compare
        double greatest = most;
        return ofOdds(Arrays.stream(log).map(one -> Math.exp(one - greatest)).toArray());
    }

    /** Entropy: how much is still to be told, in bits; 0 when one cause is sure. */
    public double bits() {
        double nats = 0;
        for (double chance : chances) {
            nats -= chance > 0 ? chance * Math.log(chance) : 0;
        }
        return nats / LN_2;
    }

    /**
     * What a test is expected to tell: the mutual information between the cause and the answer, in bits, from 0 to {@link #bits}.
     *
     * @param answers chance of each answer, by cause and answer: {@code answers[cause][answer]}; those of a cause sum to 1
     * @throws IllegalArgumentException if there are not as many rows as causes, or a row does not sum to 1
     */
    public double expectedBits(double[][] answers) {
        if (answers.length != chances.length) {
            throw new IllegalArgumentException(chances.length + " causes need as many rows, got " + answers.length);
        }
        double[] marginal = new double[answers[0].length];
        for (int i = 0; i < answers.length; i++) {
            if (answers[i].length != marginal.length
                    || Math.abs(Arrays.stream(answers[i]).sum() - 1) > SUM_TOLERANCE) {
                throw new IllegalArgumentException("the chances of a cause's answers sum to 1: row " + i);
            }
            for (int a = 0; a < marginal.length; a++) {
                marginal[a] += chances[i] * answers[i][a];
            }
        }
        double nats = 0;
        for (int i = 0; i < answers.length; i++) {
            for (int a = 0; a < marginal.length; a++) {
                double joint = chances[i] * answers[i][a];
                nats += joint > 0 ? joint * Math.log(answers[i][a] / marginal[a]) : 0;
            }
        }
        return Math.max(0, nats / LN_2);
    }
}
