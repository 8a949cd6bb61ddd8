package gudgeon.rebuild.fasten;

import java.util.List;

/** A question with something in it that can't be used. */
public final class Unanswerable extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> sentences;

    Unanswerable(List<String> sentences) {
        super(String.join(" ", sentences));
        this.sentences = List.copyOf(sentences);
    }

    /** All that can't be used, a sentence each. */
    public List<String> sentences() {
        return sentences;
    }
}
