package gudgeon.rebuild.book;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the book says of the first start.
 *
 * @param step the step that is the first start; empty where the book does not say
 * @param provedBy the checks that prove a point, by the point; a point that none proves is to be ticked
 * @param without points that this engine does not have
 */
public record FirstStart(String step, Map<StartPoint, List<String>> provedBy, Set<StartPoint> without) {
    /** That of a book that says nothing of it. */
    public static final FirstStart NOT_SAID = new FirstStart("", Map.of(), Set.of());

    public FirstStart {
        provedBy = Map.copyOf(provedBy);
        without = Set.copyOf(without);
    }

    /** The checks that prove a point; none where it is to be ticked. */
    public List<String> proving(StartPoint point) {
        return provedBy.getOrDefault(point, List.of());
    }
}
