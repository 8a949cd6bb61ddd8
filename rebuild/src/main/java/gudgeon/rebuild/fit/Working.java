package gudgeon.rebuild.fit;

import java.util.List;

/**
 * How a figure was worked out.
 *
 * @param formula the formula in words and symbols
 * @param inputs the inputs it used
 * @param source where the formula is published, or that it is common practice
 */
public record Working(String formula, List<Input> inputs, String source) {
    public Working {
        inputs = List.copyOf(inputs);
    }
}
