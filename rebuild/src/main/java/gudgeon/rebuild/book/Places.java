package gudgeon.rebuild.book;

import java.util.List;

/**
 * Where on a part a dimension is measured.
 *
 * @param heights the heights or places, in the order in which they are measured; none where there is one place only
 * @param axes the directions measured at each of them; none where there is one only
 */
public record Places(List<String> heights, List<String> axes) {
    /** One place that needs no name. */
    public static final Places ONE = new Places(List.of(), List.of());

    public Places {
        heights = List.copyOf(heights);
        axes = List.copyOf(axes);
    }

    /** Every place by name, in the order in which they are measured; one empty name where there is one place only. */
    public List<String> all() {
        if (heights.isEmpty()) {
            return axes.isEmpty() ? List.of("") : axes;
        }
        return heights.stream()
                .flatMap(height -> axes.isEmpty()
                        ? List.of(height).stream()
                        : axes.stream().map(axis -> at(height, axis)))
                .toList();
    }

    /** The name of the place at a height and on an axis. */
    public String at(String height, String axis) {
        return height + ", " + axis;
    }
}
