package gudgeon.rebuild.decide;

import gudgeon.mechanics.metrology.Quantity;

/**
 * A size over all its places.
 *
 * @param least where it is least
 * @param greatest where it is greatest
 */
record Extent(Quantity least, Quantity greatest) {
    static Extent of(Quantity everywhere) {
        return new Extent(everywhere, everywhere);
    }

    /** What is left of this over the other: the least of one over the greatest of the other, and the other way. */
    Extent minus(Extent other) {
        return new Extent(least.minus(other.greatest), greatest.minus(other.least));
    }
}
