package gudgeon.rebuild.book;

import java.util.function.UnaryOperator;

/**
 * The barrel.
 *
 * @param bore diameter of the bore
 */
public record Cylinder(Size bore) {
    Cylinder each(UnaryOperator<Size> change) {
        return new Cylinder(change.apply(bore));
    }
}
