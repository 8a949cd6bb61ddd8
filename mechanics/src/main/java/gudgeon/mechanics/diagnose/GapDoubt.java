package gudgeon.mechanics.diagnose;

import java.util.ArrayList;
import java.util.List;

/**
 * By how much a gap may be other than it was worked out: normal with the gap's standard uncertainty, and with some chance a size was
 * mistaken, so that it is off by far more.
 *
 * @param standardMm standard uncertainty of the gap in mm, 0 or more
 * @param mistaken chance from 0 to 1 that a size is not what it is taken for
 * @param mistakenMm standard deviation of the gap then, in mm, 0 or more
 */
public record GapDoubt(double standardMm, double mistaken, double mistakenMm) {
    private static final double REACH = 4;
    private static final int STEPS = 160;

    /** How much less the gap is, in mm, and how likely. */
    record Less(double mm, double weight) {}

    public GapDoubt {
        if (!(standardMm >= 0 && mistaken >= 0 && mistaken <= 1 && mistakenMm >= 0)
                || !Double.isFinite(standardMm + mistakenMm)) {
            throw new IllegalArgumentException("doubts are 0 or more and a chance lies from 0 to 1");
        }
    }

    /** Amounts by which the gap may be less, with weights that sum to 1. */
    List<Less> spread() {
        List<Less> all = new ArrayList<>();
        add(standardMm, 1 - mistaken, all);
        add(mistakenMm, mistaken, all);
        return all;
    }

    private static void add(double deviation, double share, List<Less> to) {
        if (share == 0) {
            return;
        }
        if (deviation == 0) {
            to.add(new Less(0, share));
            return;
        }
        double sum = 0;
        for (int i = -STEPS / 2; i <= STEPS / 2; i++) {
            sum += bell(i);
        }
        for (int i = -STEPS / 2; i <= STEPS / 2; i++) {
            to.add(new Less(deviation * z(i), share * bell(i) / sum));
        }
    }

    private static double z(int i) {
        return REACH * i / (STEPS / 2.0);
    }

    private static double bell(int i) {
        return Math.exp(-z(i) * z(i) / 2);
    }
}
