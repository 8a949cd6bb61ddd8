package gudgeon.rebuild.desk;

import java.util.List;

/** What the desk says to a question. */
public sealed interface DeskAnswer {
    /**
     * The question has an answer.
     *
     * @param heading the answer in one sentence
     * @param figures its figures, in the order of reading
     * @param sentences what follows from them
     * @param cautions what can hurt someone or spoil a part, and what comes before this answer
     * @param sources where the formulas and tables come from
     */
    record Told(
            String heading,
            List<DeskFigure> figures,
            List<String> sentences,
            List<String> cautions,
            List<String> sources)
            implements DeskAnswer {
        public Told {
            figures = List.copyOf(figures);
            sentences = List.copyOf(sentences);
            cautions = List.copyOf(cautions);
            sources = List.copyOf(sources);
        }
    }

    /**
     * The question can't be answered as it stands.
     *
     * @param sentences all that is wrong with it, and what to do
     */
    record Refused(List<String> sentences) implements DeskAnswer {
        public Refused {
            sentences = List.copyOf(sentences);
        }
    }
}
