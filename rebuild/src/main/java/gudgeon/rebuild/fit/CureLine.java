package gudgeon.rebuild.fit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One way to bring the gaps to what is wanted, or the word that it cannot work.
 *
 * @param works whether it brings every gap to what is wanted
 * @param what what to do, such as "Exhaust pocket cut to 3.4 mm deep (now 2.1 mm)"
 * @param costs what it costs, one sentence each: compression, deck gap, metal left, timing
 * @param whyNot why it cannot work, empty when it does
 * @param toValue the size to make, in mm, degrees or teeth, where there is one
 */
public record CureLine(boolean works, String what, List<String> costs, String whyNot, OptionalDouble toValue) {
    public CureLine {
        costs = List.copyOf(costs);
    }
}
