package gudgeon.bench.web.entry;

import java.util.List;

/**
 * What came of sending entries.
 *
 * @param state {@code kept}, {@code clashed}, {@code refused} or {@code asked}
 * @param sentences what changed meanwhile, why they can't be taken down, or what is asked
 * @param seen number of the last entry there is now
 * @param questions readings to be asked about first
 */
public record Answer(String state, List<String> sentences, long seen, List<Question> questions) {
    public Answer {
        sentences = List.copyOf(sentences);
        questions = List.copyOf(questions);
    }

    Answer(String state, List<String> sentences, long seen) {
        this(state, sentences, seen, List.of());
    }

    /** Nothing is taken down before these are answered. */
    static Answer asked(List<Question> questions, long seen) {
        List<String> sentences =
                questions.stream().flatMap(one -> one.sentences().stream()).toList();
        return new Answer("asked", sentences, seen, questions);
    }

    /** Whether it is on disk. */
    public boolean isKept() {
        return state.equals("kept");
    }

    /** Whether the person is asked first. */
    public boolean isAsked() {
        return state.equals("asked");
    }

    /** What is said above the sentences. */
    public String title() {
        return switch (state) {
            case "clashed" -> "Changed on another device";
            case "asked" -> questions.size() == 1 ? "Is this right?" : "Are these right?";
            default -> "Not taken down";
        };
    }
}
