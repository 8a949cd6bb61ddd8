package gudgeon.bench.web.entry;

import java.util.List;

/**
 * What came of sending entries.
 *
 * @param state {@code kept}, {@code clashed} or {@code refused}
 * @param sentences what changed meanwhile, or why they can't be taken down
 * @param seen number of the last entry there is now
 */
public record Answer(String state, List<String> sentences, long seen) {
    public Answer {
        sentences = List.copyOf(sentences);
    }

    /** Whether it is on disk. */
    public boolean isKept() {
        return state.equals("kept");
    }
}
