package gudgeon.rebuild.book;

import java.util.function.UnaryOperator;

/** A crown's form on its reference plane. */
public sealed interface CrownEntry {
    /** The same with every size changed. */
    CrownEntry each(UnaryOperator<Size> change);

    /** Flat on its reference plane. */
    record Flat() implements CrownEntry {
        @Override
        public Flat each(UnaryOperator<Size> change) {
            return this;
        }
    }

    /**
     * A spherical cap on the reference plane.
     *
     * @param height its height
     * @param base diameter of the circle it stands on
     */
    record Dome(Size height, Size base) implements CrownEntry {
        @Override
        public Dome each(UnaryOperator<Size> change) {
            return new Dome(change.apply(height), change.apply(base));
        }
    }

    /**
     * A spherical cap sunk into the reference plane.
     *
     * @param depth its depth
     * @param rim diameter of its rim
     */
    record Dish(Size depth, Size rim) implements CrownEntry {
        @Override
        public Dish each(UnaryOperator<Size> change) {
            return new Dish(change.apply(depth), change.apply(rim));
        }
    }
}
