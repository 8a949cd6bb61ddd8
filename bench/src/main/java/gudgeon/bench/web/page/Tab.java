package gudgeon.bench.web.page;

/** The pages of a build, in the order of the work. */
public enum Tab {
    TODAY("Today", ""),
    STRIP("Strip", "/strip"),
    MEASURE("Measure", "/measure"),
    OPTIONS("Options", "/options"),
    PARTS("Parts", "/parts"),
    FASTENERS("Fasteners", "/fasteners"),
    ASSEMBLE("Assemble", "/assemble"),
    FAULT("Fault", "/fault"),
    TIMING("Timing", "/timing"),
    START("Start", "/start"),
    UNDO("Undo", "/undo"),
    ENGINE("Engine", "/engine"),
    JOURNAL("Journal", "/journal"),
    PRINTS("Prints", "/prints"),
    RECORD("Record", "/record");

    private final String word;
    private final String path;

    Tab(String word, String path) {
        this.word = word;
        this.path = path;
    }

    /** The word as a person reads it. */
    public String word() {
        return word;
    }

    /** What stands behind the build's address. */
    public String path() {
        return path;
    }
}
