package gudgeon.rebuild.book;

import java.util.List;

/**
 * How a dimension follows from others.
 *
 * @param as by what rule
 * @param of ids of the dimensions that it follows from
 */
public record Derivation(As as, List<String> of) {
    public Derivation {
        of = List.copyOf(of);
    }

    /** A rule by which a dimension follows from others. */
    public enum As {
        /** Of a hole and what sits in it, in this order: hole less shaft, wherever they are measured. */
        CLEARANCE(2, 2),
        /** Of one: the greatest difference between two axes at one height. */
        OVALITY(1, 1),
        /** Of one: the greatest difference between two heights on one axis. */
        TAPER(1, 1),
        /** Of one: how far it lies outside the range of a new part. */
        WEAR(1, 1),
        /** The first less all others. */
        DIFFERENCE(2, 9);

        private final int fewest;
        private final int most;

        As(int fewest, int most) {
            this.fewest = fewest;
            this.most = most;
        }

        /** Whether it can be worked out of so many dimensions. */
        boolean takes(int count) {
            return fewest <= count && count <= most;
        }

        /** Of how many it is worked out, in words. */
        String counts() {
            return fewest == most ? String.valueOf(fewest) : fewest + " to " + most;
        }
    }
}
