package gudgeon.rebuild.sheet;

import java.util.List;

/**
 * Lines that belong together.
 *
 * @param heading what they say, a word or two
 * @param lines the lines, one or more
 */
public record Passage(String heading, List<String> lines) {
    public Passage {
        lines = List.copyOf(lines);
    }
}
