package gudgeon.rebuild.find;

import gudgeon.rebuild.plan.Buy;
import java.util.List;

/**
 * A test not made yet, and what it is worth.
 *
 * @param test the test
 * @param bits information expected of it about which suspect it is, in bits, 0 or more
 * @param minutes work of it with all that has to come off before and to go back and be proved again after it
 * @param buy what has to be bought since taking off destroys it
 * @param off names of the steps that have to be undone for it
 * @param bitsPerHour information expected for an hour of such work
 * @param working how the figures were worked out, a sentence
 */
public record NextTest(
        Test test, double bits, int minutes, List<Buy> buy, List<String> off, double bitsPerHour, String working) {
    /** A test of which less is expected, in bits, is not worth making. */
    private static final double LEAST_BITS = 0.05;

    public NextTest {
        buy = List.copyOf(buy);
        off = List.copyOf(off);
    }

    /** Whether enough is expected of it to be worth making. */
    public boolean tells() {
        return bits >= LEAST_BITS;
    }
}
