package gudgeon.store.drill;

import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * An entry of a drill's journal as it is written.
 *
 * @param json its object, never changed
 * @param number its number in the drill; 0 for one that a variant puts in
 */
public record Line(ObjectNode json, int number) {
    String type() {
        return json.path("type").asText();
    }

    String text(String field) {
        return json.path(field).asText();
    }

    /** A copy to be changed. */
    Line copy() {
        return new Line(json.deepCopy(), number);
    }
}
