package gudgeon.rebuild.journal;

/** Whether two devices say what can't both stand, the later one not having seen the earlier. */
public final class Contradiction {
    private Contradiction() {}

    /**
     * Whether an entry contradicts one that its device had not seen.
     *
     * @param earlier an entry of the journal
     * @param number its number in the journal, from 1
     * @param later an entry made without knowing it
     */
    public static boolean between(Entry earlier, long number, Entry later) {
        return later.seen() < number
                && !later.device().equals(earlier.device())
                && !earlier.fact().about().isEmpty()
                && earlier.fact().about().equals(later.fact().about())
                && opposed(earlier.fact(), later.fact());
    }

    private static boolean opposed(Fact earlier, Fact later) {
        boolean answers = isAnswer(earlier)
                && (isAnswer(later) || later instanceof Fact.StepBegun)
                && !earlier.getClass().equals(later.getClass());
        // what was done elsewhere would be lost from sight: the second device thinks of another state of the same thing
        boolean sameThing = changes(earlier) && changes(later) && !earlier.equals(later);
        return answers || sameThing;
    }

    /** What a step or check came to. */
    private static boolean isAnswer(Fact fact) {
        return fact instanceof Fact.OfCheck || (fact instanceof Fact.OfStep && !(fact instanceof Fact.StepBegun));
    }

    private static boolean changes(Fact fact) {
        return fact instanceof Fact.BookChanged
                || fact instanceof Fact.Fitted
                || fact instanceof Fact.Disposed
                || fact instanceof Fact.Corrected;
    }
}
