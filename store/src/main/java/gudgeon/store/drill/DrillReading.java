package gudgeon.store.drill;

import java.util.List;

/** What came of reading a drill's folder. */
public sealed interface DrillReading {
    /**
     * It can be played.
     *
     * @param drill the drill
     */
    record Read(Drill drill) implements DrillReading {}

    /**
     * It can't.
     *
     * @param sentences what is wrong, where, and what to do; at least one
     */
    record Refused(List<String> sentences) implements DrillReading {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }
}
