package gudgeon.mechanics.limits;

import java.util.List;

/** A designation that a standard doesn't hold, with all that is wrong with it. */
public final class UnknownDesignation extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient List<String> sentences;

    UnknownDesignation(List<String> sentences) {
        super(String.join(" ", sentences));
        this.sentences = List.copyOf(sentences);
    }

    UnknownDesignation(String sentence) {
        this(List.of(sentence));
    }

    /** What is wrong, a sentence each. */
    public List<String> sentences() {
        return sentences;
    }
}
