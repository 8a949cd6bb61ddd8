package gudgeon.mechanics.limits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which shims of a stock, each one once, leave an end float within limits. An exact search over all sums, in whole micrometres.
 *
 * @param floatMm end float measured without any of these shims, mm, 0 to 20
 * @param leastMm least float wanted, mm, 0 or more
 * @param mostMm most float wanted, mm, not below the least
 * @param stockMm thicknesses in stock, one for each piece, mm, above 0; up to 200 pieces
 */
public record Shims(double floatMm, double leastMm, double mostMm, List<Double> stockMm) {
    private static final double LARGEST_FLOAT_MM = 20;
    private static final int MOST_PIECES = 200;

    /** The shims to put in, thickest first, and the float they leave. */
    public record Choice(List<Double> shimsMm, double floatMm) {
        public Choice {
            shimsMm = List.copyOf(shimsMm);
        }
    }

    /**
     * What to buy when the stock has none that do.
     *
     * @param leastMm thinnest that would do, mm
     * @param mostMm thickest that would do, mm
     * @param withMm shims of the stock that go in beside it, thickest first
     */
    public record Wanted(double leastMm, double mostMm, List<Double> withMm) {
        public Wanted {
            withMm = List.copyOf(withMm);
        }
    }

    /** A sum that can be made: its last shim, and the sum before it. */
    private record Sum(int shim, @Nullable Sum before, int count) {}

    /** @throws IllegalArgumentException outside the ranges above */
    public Shims {
        if (!(floatMm >= 0 && floatMm <= LARGEST_FLOAT_MM)) {
            throw new IllegalArgumentException("end float must be 0 to 20 mm, got " + floatMm);
        }
        if (!(leastMm >= 0 && mostMm >= leastMm && Double.isFinite(mostMm))) {
            throw new IllegalArgumentException(
                    "float wanted must go upwards from 0 or more, got " + leastMm + " to " + mostMm + " mm");
        }
        stockMm = List.copyOf(stockMm);
        if (stockMm.size() > MOST_PIECES || stockMm.stream().anyMatch(t -> !(t >= 0.001 && t <= LARGEST_FLOAT_MM))) {
            throw new IllegalArgumentException("a stock has up to 200 shims of 0.001 to 20 mm, got " + stockMm);
        }
    }

    /** The choice that leaves the float nearest to the middle of what is wanted, with the fewest shims; empty when none is within. */
    public Optional<Choice> choice() {
        Sum[] sums = sums();
        int twiceMiddle = 2 * micrometres(floatMm) - micrometres(leastMm) - micrometres(mostMm);
        int best = -1;
        for (int sum = 0; sum < sums.length; sum++) {
            int left = micrometres(floatMm) - sum;
            if (sums[sum] != null
                    && left >= micrometres(leastMm)
                    && left <= micrometres(mostMm)
                    && (best < 0 || better(sums, sum, best, twiceMiddle))) {
                best = sum;
            }
        }
        return best < 0
                ? Optional.empty()
                : Optional.of(new Choice(shims(sums[best]), (micrometres(floatMm) - best) / 1000.0));
    }

    private static boolean better(Sum[] sums, int sum, int best, int twiceMiddle) {
        int off = Math.abs(2 * sum - twiceMiddle);
        int offBest = Math.abs(2 * best - twiceMiddle);
        return off < offBest || (off == offBest && count(sums[sum]) < count(sums[best]));
    }

    /**
     * One shim to buy that would do, with as much of the stock as leaves it no thinner than asked; empty when the float is already
     * below what is wanted, so that no shim helps.
     *
     * @param thinnestMm thinnest shim that is sold, mm, above 0
     */
    public Optional<Wanted> wanted(double thinnestMm) {
        int middle = (2 * micrometres(floatMm) - micrometres(leastMm) - micrometres(mostMm)) / 2;
        Sum[] sums = sums();
        for (int sum = Math.min(sums.length - 1, middle - micrometres(thinnestMm)); sum >= 0; sum--) {
            if (sums[sum] != null) {
                double left = floatMm - sum / 1000.0;
                return Optional.of(new Wanted(Math.max(thinnestMm, left - mostMm), left - leastMm, shims(sums[sum])));
            }
        }
        return Optional.empty();
    }

    /** For each sum in micrometres up to the float: how it is made with the fewest shims, or null. */
    private @Nullable Sum[] sums() {
        @Nullable Sum[] sums = new @Nullable Sum[micrometres(floatMm) + 1];
        sums[0] = new Sum(0, null, 0);
        for (double thickness : stockMm) {
            int shim = micrometres(thickness);
            for (int sum = sums.length - 1; sum >= shim; sum--) {
                Sum before = sums[sum - shim];
                if (before != null && (sums[sum] == null || count(sums[sum]) > before.count() + 1)) {
                    sums[sum] = new Sum(shim, before, before.count() + 1);
                }
            }
        }
        return sums;
    }

    private static int count(@Nullable Sum sum) {
        return sum == null ? Integer.MAX_VALUE : sum.count();
    }

    private static List<Double> shims(@Nullable Sum made) {
        List<Double> shims = new ArrayList<>();
        for (Sum sum = made; sum != null && sum.before() != null; sum = sum.before()) {
            shims.add(sum.shim() / 1000.0);
        }
        shims.sort(Collections.reverseOrder());
        return shims;
    }

    private static int micrometres(double mm) {
        return (int) Math.round(mm * 1000);
    }
}
