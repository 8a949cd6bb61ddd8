package gudgeon.mechanics.joint;

import java.util.List;
import java.util.stream.DoubleStream;

/** The lengths that screws are made in, mm: ISO 888 (from memory), without those it asks to avoid. */
public final class StandardLengths {
    private static final double[] SHORT = {2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25};

    private StandardLengths() {}

    /** All from 2 to 200 mm, in order. */
    public static List<Double> all() {
        DoubleStream fives = DoubleStream.iterate(30, l -> l <= 70, l -> l + 5);
        DoubleStream tens = DoubleStream.iterate(80, l -> l <= 160, l -> l + 10);
        DoubleStream twenties = DoubleStream.of(180, 200);
        return DoubleStream.concat(
                        DoubleStream.concat(DoubleStream.of(SHORT), fives), DoubleStream.concat(tens, twenties))
                .boxed()
                .toList();
    }

    /**
     * Those of a span.
     *
     * @param leastMm shortest wanted, mm
     * @param mostMm longest wanted, mm; may be infinite
     */
    public static List<Double> between(double leastMm, double mostMm) {
        return all().stream()
                .filter(length -> length >= leastMm && length <= mostMm)
                .toList();
    }
}
