package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Parts clamped by fasteners.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param order in what order it is tightened, in words, may be empty
 * @param sequence the maker's order of tightening, by hole; empty where the book does not have it
 * @param shape what it looks like, which decides an order that is worked out; empty where the book does not say
 * @param outline corners of its outline, seen from outside, in mm; may be empty
 * @param torque the maker's figure for its fasteners, in N·m
 * @param lubricated how that figure is meant
 * @param passes in how many passes it is tightened, if the book says so
 * @param gasket whether a gasket lies in it
 * @param warps whether it is apt to warp, so that it is loosened with care
 * @param again when it is to be tightened again; empty where it is not
 * @param note the writer's note, may be empty
 * @param holes its holes, as far as the book has them
 * @param where where it stands in the file
 */
public record Joint(
        String id,
        String name,
        String order,
        List<String> sequence,
        Optional<Shape> shape,
        List<Point> outline,
        Optional<Size> torque,
        Optional<Lubrication> lubricated,
        OptionalInt passes,
        boolean gasket,
        boolean warps,
        String again,
        String note,
        List<Hole> holes,
        Where where) {
    public Joint {
        sequence = List.copyOf(sequence);
        outline = List.copyOf(outline);
        holes = List.copyOf(holes);
    }

    /** What a joint looks like. */
    public enum Shape {
        /** Its holes lie on a circle. */
        RING,
        COVER,
        HEAD
    }

    /** The hole of that id. */
    public Optional<Hole> hole(String hole) {
        return holes.stream().filter(one -> one.id().equals(hole)).findFirst();
    }
}
