package gudgeon.rebuild.schedule;

import gudgeon.rebuild.journal.Days;

/**
 * A triangular distribution: what is known when three figures are. Mode and ends as in JCGM 101:2008, 6.4.5, there for the
 * symmetrical one; the skew one is textbook.
 *
 * @param least the least
 * @param likely the likeliest, from {@code least} to {@code most}
 * @param most the most
 */
record Triangle(double least, double likely, double most) {
    Triangle {
        if (!(least <= likely && likely <= most)) {
            throw new IllegalArgumentException("a triangle runs from least over likely to most");
        }
    }

    static Triangle of(Days days) {
        return new Triangle(days.least(), days.likely(), days.most());
    }

    /** The share of cases up to a value, from 0 to 1. */
    double shareUpTo(double value) {
        if (value >= most) {
            return 1;
        }
        if (value <= least) {
            return 0;
        }
        return value <= likely
                ? (value - least) * (value - least) / ((most - least) * (likely - least))
                : 1 - (most - value) * (most - value) / ((most - least) * (most - likely));
    }

    /** The value that this share of cases, from 0 to 1, does not pass. */
    double at(double share) {
        if (most <= least) {
            return least;
        }
        return share <= (likely - least) / (most - least)
                ? least + Math.sqrt(share * (most - least) * (likely - least))
                : most - Math.sqrt((1 - share) * (most - least) * (most - likely));
    }

    /**
     * The same for what is known not to have happened up to a value.
     *
     * @param past a value below {@link #most}
     */
    double at(double share, double past) {
        double gone = shareUpTo(past);
        return Math.max(past, at(gone + share * (1 - gone)));
    }
}
