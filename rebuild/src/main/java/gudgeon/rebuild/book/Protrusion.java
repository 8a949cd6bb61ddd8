package gudgeon.rebuild.book;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** How high a crown's reference plane stands above the deck at top dead centre, and what that follows from. */
public sealed interface Protrusion {
    /**
     * The height in mm, negative below the deck.
     *
     * @param value the value to take for each size, in its unit, such as {@link Size#value}
     */
    double mm(ToDoubleFunction<Size> value);

    /** The sizes that it follows from. */
    List<Size> sizes();

    /** The formula in words. */
    String formula();

    /** Measured with this piston, or with one taken to be as high. */
    record Measured(Size protrusion) implements Protrusion {
        @Override
        public double mm(ToDoubleFunction<Size> value) {
            return value.applyAsDouble(protrusion);
        }

        @Override
        public List<Size> sizes() {
            return List.of(protrusion);
        }

        @Override
        public String formula() {
            return "measured";
        }
    }

    /** Measured with the piston now fitted, and moved by the difference of the two compression heights. */
    record Exchanged(Size protrusion, Size fittedHeight, Size height) implements Protrusion {
        @Override
        public double mm(ToDoubleFunction<Size> value) {
            return value.applyAsDouble(protrusion) + value.applyAsDouble(height) - value.applyAsDouble(fittedHeight);
        }

        @Override
        public List<Size> sizes() {
            return List.of(protrusion, fittedHeight, height);
        }

        @Override
        public String formula() {
            return "protrusion measured with the piston now fitted + this piston's compression height"
                    + " - that of the piston now fitted";
        }
    }

    /** Worked out from crank, rod, piston and deck height: the pin's height at top dead centre is sqrt((L + r)² - e²). */
    record Stacked(CrankSizes crank, CrankSizes.DeckHeight deck, Size height) implements Protrusion {
        @Override
        public double mm(ToDoubleFunction<Size> value) {
            double reach = value.applyAsDouble(crank.rod()) + value.applyAsDouble(crank.stroke()) / 2;
            double offset = value.applyAsDouble(crank.pinOffset());
            double pin = Math.sqrt(reach * reach - offset * offset);
            return pin
                    + value.applyAsDouble(height)
                    - value.applyAsDouble(deck.crankcase())
                    - value.applyAsDouble(deck.barrel());
        }

        @Override
        public List<Size> sizes() {
            return List.of(crank.stroke(), crank.rod(), crank.pinOffset(), height, deck.crankcase(), deck.barrel());
        }

        @Override
        public String formula() {
            return "√((rod + stroke/2)² - pin offset²) + compression height - deck height of case and barrel";
        }
    }
}
