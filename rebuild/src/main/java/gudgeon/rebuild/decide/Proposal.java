package gudgeon.rebuild.decide;

import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.journal.Disposition;
import gudgeon.rebuild.sentence.Sentence;
import java.util.List;
import java.util.Optional;

/**
 * What is proposed for a position's part, and what the person decided; the two are kept apart.
 *
 * @param position the position
 * @param part the part entered for it; empty for the one that came off
 * @param disposition what is proposed; empty where it can't be told before more is measured or tried
 * @param what what is to be done, a sentence
 * @param reasons why, sentences; the first decides
 * @param decided what the person decided last, if anything
 */
public record Proposal(
        Position position,
        String part,
        Optional<Disposition> disposition,
        String what,
        List<String> reasons,
        Optional<Decision> decided) {
    public Proposal {
        reasons = List.copyOf(reasons);
    }

    /**
     * What the person decided.
     *
     * @param disposition what is to become of it
     * @param why why, may be empty
     * @param number number of the entry that says so
     */
    public record Decision(Disposition disposition, String why, long number) {}

    /** The proposal in a word or two. */
    public String words() {
        return disposition.map(Disposition::words).orElse("not to be told yet");
    }

    /** Whether the person keeps a part that the proposal would not. */
    public boolean isKeptAgainstIt() {
        return decided.map(Decision::disposition)
                .filter(one -> one == Disposition.USE_AGAIN || one == Disposition.CLEAN)
                .filter(one -> disposition
                        .map(proposed -> proposed == Disposition.REPLACE || proposed == Disposition.REPAIR)
                        .orElse(true))
                .isPresent();
    }

    /** What was decided beside what is proposed, a sentence; empty where nothing was decided. */
    public String decision() {
        return decided.map(one -> "Decided: " + one.disposition().words() + "."
                        + (one.why().isBlank()
                                ? ""
                                : " " + Sentence.of(one.why().strip()))
                        + (isKeptAgainstIt() ? " The proposal would not keep it." : ""))
                .orElse("");
    }
}
