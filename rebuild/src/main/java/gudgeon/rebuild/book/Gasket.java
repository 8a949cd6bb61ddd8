package gudgeon.rebuild.book;

import java.util.function.UnaryOperator;

/**
 * A head gasket to choose.
 *
 * @param id its name in the book
 * @param pressed thickness when pressed
 * @param bore diameter of its hole
 */
public record Gasket(String id, Size pressed, Size bore) {
    Gasket each(UnaryOperator<Size> change) {
        return new Gasket(id, change.apply(pressed), change.apply(bore));
    }
}
