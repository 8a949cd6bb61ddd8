package gudgeon.rebuild.book;

import java.util.Optional;

/**
 * A size of the engine that a fitter measures.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param of the position whose part it is measured on
 * @param how where and how it is measured, may be empty
 * @param with the instrument wanted, may be empty
 * @param expect its service limits, if the book has them
 * @param note the writer's note, may be empty
 * @param where where it stands in the file
 */
public record Dimension(
        String id,
        String name,
        String of,
        String how,
        String with,
        Optional<Expect> expect,
        String note,
        Where where) {}
