package gudgeon.rebuild.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Another engine whose parts look like this one's.
 *
 * @param id its name in the book
 * @param name what a fitter calls it
 * @param note the writer's note, may be empty
 * @param parts what is known of its parts, by position: sizes by the dimension's id, each in the dimension's unit
 * @param where where it stands in the file
 */
public record FamilyMember(
        String id, String name, String note, Map<String, Map<String, SizeOfPart>> parts, Where where) {
    /**
     * A size of its part.
     *
     * @param value in the dimension's unit
     * @param written as it stands in the file
     */
    public record SizeOfPart(double value, String written) {}

    public FamilyMember {
        parts = Map.copyOf(parts);
    }

    /** The sizes of its part for a position; none where nothing is known. */
    public Map<String, SizeOfPart> part(String position) {
        return new LinkedHashMap<>(parts.getOrDefault(position, Map.of()));
    }

    /** One size of its part for a position, if it is known. */
    public Optional<SizeOfPart> size(String position, String dimension) {
        return Optional.ofNullable(parts.getOrDefault(position, Map.of()).get(dimension));
    }
}
