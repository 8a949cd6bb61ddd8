package gudgeon.rebuild.fit;

import java.util.List;

/** A choice that can't be tried with this book: each reason a sentence, fit to be shown. */
public final class UnknownChoice extends RuntimeException {
    private final List<String> sentences;

    /** Refuses a choice for the reasons given. */
    public UnknownChoice(List<String> sentences) {
        super(String.join(" ", sentences));
        this.sentences = List.copyOf(sentences);
    }

    /** What is wrong and what to do, one sentence or more. */
    public List<String> sentences() {
        return sentences;
    }
}
