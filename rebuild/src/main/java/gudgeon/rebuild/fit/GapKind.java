package gudgeon.rebuild.fit;

/** The seven gaps, each with the words a fitter reads. */
public enum GapKind {
    BORE("bore gap", "how far the piston could still rise before it touches the valve"),
    VALVE("valve gap", "how far the valve could be pushed further open before it touches the crown"),
    NEAREST("nearest gap", "the least distance between valve and crown, what clay shows"),
    SIDE("side gap", "the valve's edge to the wall of its pocket"),
    VALVE_TO_VALVE("valve to valve", "the two heads to each other in the overlap"),
    WALL("wall gap", "the valve's edge to the bore wall"),
    DECK("deck gap", "the crown's flat to the head's flat at top dead centre");

    private final String term;
    private final String meaning;

    GapKind(String term, String meaning) {
        this.term = term;
        this.meaning = meaning;
    }

    /** The gap's name. */
    public String term() {
        return term;
    }

    /** What it means at the bench. */
    public String meaning() {
        return meaning;
    }
}
