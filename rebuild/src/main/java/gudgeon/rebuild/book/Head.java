package gudgeon.rebuild.book;

import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The cylinder head.
 *
 * @param chamber volume of the combustion chamber below the joint face, plug and shut valves fitted, in cm³; without it
 *     no compression ratio can be worked out
 */
public record Head(Optional<Size> chamber) {
    Head each(UnaryOperator<Size> change) {
        return new Head(chamber.map(change));
    }
}
