package gudgeon.rebuild.book;

import java.util.List;
import java.util.Optional;

/**
 * A place in the engine that a part fills.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param quantity how many parts fill it, from 1
 * @param spaces the space it lives in, or the two it seals between; empty where the book does not say
 * @param singleUse whether its part may not be used again once removed
 * @param critical whether a copy must be compared before it goes in
 * @param mark which way round it goes, may be empty
 * @param compare what is worth comparing on a new part
 * @param sizes which of the book's figures are of its part, such as {@code pistons} or {@code valves.exhaust}; may be empty
 * @param pressed thickness of a gasket as the book's figures have it, in mm
 * @param seatFit how tight its part sits, if the book says so
 * @param bearing designation of the rolling bearing that its part is, such as "6203 C3"; may be empty
 * @param oversizes of a piston: how far over the standard bore it is also made, in mm
 * @param note the writer's note, may be empty
 * @param where where it stands in the file
 */
public record Position(
        String id,
        String name,
        int quantity,
        List<Space> spaces,
        boolean singleUse,
        boolean critical,
        String mark,
        List<String> compare,
        String sizes,
        Optional<Size> pressed,
        Optional<SeatFit> seatFit,
        String bearing,
        List<Double> oversizes,
        String note,
        Where where) {
    public Position {
        spaces = List.copyOf(spaces);
        compare = List.copyOf(compare);
        oversizes = List.copyOf(oversizes);
    }

    /** Whether it keeps two spaces apart. */
    public boolean seals() {
        return spaces.size() > 1;
    }
}
