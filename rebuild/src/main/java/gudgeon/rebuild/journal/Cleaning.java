package gudgeon.rebuild.journal;

/** How a part was cleaned. */
public enum Cleaning {
    WASHED("washed"),
    SCRAPED("scraped"),
    ULTRASONIC("cleaned in an ultrasonic bath"),
    BLASTED("blasted"),
    VAPOUR_BLASTED("vapour blasted");

    private final String words;

    Cleaning(String words) {
        this.words = words;
    }

    /** The words as a person reads them. */
    public String words() {
        return words;
    }

    /** Whether grit may be left in oilways and corners. */
    public boolean leavesGrit() {
        return this == BLASTED || this == VAPOUR_BLASTED;
    }
}
