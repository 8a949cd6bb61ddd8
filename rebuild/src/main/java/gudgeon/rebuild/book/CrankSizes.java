package gudgeon.rebuild.book;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Crank and rod.
 *
 * @param stroke the throw across, twice the crank radius
 * @param rod length between eye centres
 * @param pinOffset the gudgeon pin's x, positive towards the major thrust side
 * @param protrusion height of the crown's reference plane above the deck at top dead centre, measured with the book's
 *     first piston; negative below the deck
 * @param deckHeight crank axis to deck, if stated
 */
public record CrankSizes(
        Size stroke, Size rod, Size pinOffset, Optional<Size> protrusion, Optional<DeckHeight> deckHeight) {
    /**
     * Height from the crank's axis to the deck.
     *
     * @param crankcase crank axis to the face the barrel stands on
     * @param barrel barrel between its faces, base gasket pressed included
     */
    public record DeckHeight(Size crankcase, Size barrel) {
        DeckHeight each(UnaryOperator<Size> change) {
            return new DeckHeight(change.apply(crankcase), change.apply(barrel));
        }
    }

    CrankSizes each(UnaryOperator<Size> change) {
        return new CrankSizes(
                change.apply(stroke),
                change.apply(rod),
                change.apply(pinOffset),
                protrusion.map(change),
                deckHeight.map(height -> height.each(change)));
    }
}
