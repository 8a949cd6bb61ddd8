package gudgeon.mechanics.diagnose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BeliefTest {
    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Published: a test that is right in 95 of 100 cases, a disease that 1 of 100 has, and a positive answer: the chance is 0.16.
     * D. J. C. MacKay, Information Theory, Inference, and Learning Algorithms, Cambridge 2003, example 2.3.
     */
    @Test
    void nastyDisease() {
        Belief after = Belief.ofOdds(1, 99).given(Math.log(0.95), Math.log(0.05));
        assertThat(after.chance(0)).isCloseTo(0.16, within(0.005));
    }

    /**
     * Published: a binary symmetric channel that flips 15 of 100, and an input that is 0 in 90 of 100: after a 1 came out, the chance
     * of a 1 sent is 0.39, and the mutual information is 0.15 bits. MacKay 2003, examples 9.1 and 9.5.
     */
    @Test
    void binarySymmetricChannel() {
        Belief input = Belief.ofOdds(0.9, 0.1);
        assertThat(input.given(Math.log(0.15), Math.log(0.85)).chance(1)).isCloseTo(0.39, within(0.005));
        assertThat(input.expectedBits(new double[][] {{0.85, 0.15}, {0.15, 0.85}}))
                .isCloseTo(0.15, within(0.005));
    }

    /** A fair choice among eight takes three bits, and a test that halves them tells one. */
    @Test
    void bitsOfEight() {
        Belief eight = Belief.ofOdds(1, 1, 1, 1, 1, 1, 1, 1);
        assertThat(eight.bits()).isCloseTo(3, within(1e-12));
        double[][] halves = new double[8][];
        for (int i = 0; i < halves.length; i++) {
            halves[i] = i < 4 ? new double[] {1, 0} : new double[] {0, 1};
        }
        assertThat(eight.expectedBits(halves)).isCloseTo(1, within(1e-12));
    }

    @Property
    void theOrderOfWhatWasSeenDoesNotMatter(
            @ForAll @Size(4) List<@DoubleRange(min = 0.01, max = 10) Double> odds,
            @ForAll @Size(4) List<@DoubleRange(min = -400, max = 5) Double> one,
            @ForAll @Size(4) List<@DoubleRange(min = -400, max = 5) Double> two) {
        Belief ab = Belief.ofOdds(array(odds)).given(array(one)).given(array(two));
        Belief ba = Belief.ofOdds(array(odds)).given(array(two)).given(array(one));
        double sum = 0;
        for (int i = 0; i < ab.size(); i++) {
            assertThat(ab.chance(i)).isCloseTo(ba.chance(i), within(1e-9));
            sum += ab.chance(i);
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    /** What a test is expected to tell is the entropy before less the mean entropy after, and neither negative nor more than all. */
    @Property
    void expectedBitsAreTheEntropyThatGoes(
            @ForAll @Size(3) List<@DoubleRange(min = 0.01, max = 10) Double> odds,
            @ForAll @Size(3) List<@DoubleRange(min = 0.01, max = 0.99) Double> yes) {
        Belief belief = Belief.ofOdds(array(odds));
        double[][] answers = new double[3][];
        double chanceOfYes = 0;
        for (int i = 0; i < answers.length; i++) {
            answers[i] = new double[] {yes.get(i), 1 - yes.get(i)};
            chanceOfYes += belief.chance(i) * yes.get(i);
        }
        double after = 0;
        for (int answer = 0; answer < 2; answer++) {
            double chance = answer == 0 ? chanceOfYes : 1 - chanceOfYes;
            after += chance
                    * belief.given(
                                    Math.log(answers[0][answer]),
                                    Math.log(answers[1][answer]),
                                    Math.log(answers[2][answer]))
                            .bits();
        }
        double expected = belief.expectedBits(answers);
        assertThat(expected).isCloseTo(belief.bits() - after, within(1e-9)).isBetween(0.0, belief.bits() + 1e-12);
    }

    @Test
    void refusesWhatCantBe() {
        assertThatIllegalArgumentException().isThrownBy(() -> Belief.ofOdds(0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Belief.ofOdds(1, -1));
        Belief two = Belief.ofOdds(1, 0);
        assertThatIllegalArgumentException().isThrownBy(() -> two.given(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> two.given(Double.NEGATIVE_INFINITY, 0))
                .withMessageContaining("no cause");
        assertThatIllegalArgumentException().isThrownBy(() -> two.expectedBits(new double[][] {{1, 1}, {0, 1}}));
    }
}
