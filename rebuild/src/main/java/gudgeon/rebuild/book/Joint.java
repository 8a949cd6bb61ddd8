package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;

/**
 * Parts clamped by fasteners.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param order in what order it is tightened, may be empty
 * @param note the writer's note, may be empty
 * @param holes its holes, as far as the book has them
 * @param where where it stands in the file
 */
public record Joint(String id, String name, String order, String note, List<Hole> holes, Where where) {
    public Joint {
        holes = List.copyOf(holes);
    }

    /**
     * A place that a fastener goes.
     *
     * @param id its name in the joint
     * @param thread its thread, such as M6
     * @param length length of its fastener under the head, in mm
     * @param depth usable depth of its thread, in mm
     * @param through whether it goes right through
     * @param note the writer's note, may be empty
     */
    public record Hole(
            String id, String thread, Optional<Size> length, Optional<Size> depth, boolean through, String note) {}
}
