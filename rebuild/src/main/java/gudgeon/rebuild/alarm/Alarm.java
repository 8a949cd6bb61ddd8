package gudgeon.rebuild.alarm;

import java.util.List;

/**
 * Something that will go wrong if the work goes on.
 *
 * @param kind which kind of trouble
 * @param severity how bad it is
 * @param at id of the position, step or check where it is; empty where it is the whole build
 * @param what what is wrong, a sentence
 * @param why why that is trouble, a sentence
 * @param todo what to do, a sentence
 * @param evidence numbers of the entries that show it
 * @param figures figures that show it, each a sentence with its unit
 */
public record Alarm(
        AlarmKind kind,
        Severity severity,
        String at,
        String what,
        String why,
        String todo,
        List<Long> evidence,
        List<String> figures) {
    public Alarm {
        evidence = List.copyOf(evidence);
        figures = List.copyOf(figures);
    }

    /** How bad an alarm is. */
    public enum Severity {
        /** Going on spoils parts, or buries what must come out again. */
        STOP("stop"),
        /** To be looked at before it is too late. */
        LOOK("look");

        private final String word;

        Severity(String word) {
            this.word = word;
        }

        /** The word as a person reads it. */
        public String word() {
            return word;
        }
    }

    /** Whether another alarm is about the same trouble at the same place. */
    public boolean isSameAs(Alarm other) {
        return kind == other.kind && at.equals(other.at);
    }
}
