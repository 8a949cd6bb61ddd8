package gudgeon.rebuild.runin;

import java.util.List;

/**
 * What is done after a stage of running in.
 *
 * @param kind what it is
 * @param id id of the step, check, joint or fluid
 * @param name what it is, as a fitter says it
 * @param done number of the entry that did it since the stage was over, 0 if none did
 */
public record Work(Kind kind, String id, String name, long done) {
    /** What is done. */
    public enum Kind {
        STEP("Do"),
        CHECK("Check"),
        JOINT("Tighten again"),
        FLUID("Change");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What is done with it, as a person reads it. */
        public String words() {
            return words;
        }
    }

    /** Whether it was done. */
    public boolean isDone() {
        return done > 0;
    }

    /** What is to be done, such as "Change: engine oil". */
    public String words() {
        return kind.words() + ": " + name;
    }

    /** What can hurt in changing a fluid; of the others the book's own steps and checks say it. */
    public List<String> cautions() {
        return kind == Kind.FLUID
                ? List.of(
                        "Hot oil burns. Let it out warm and not hot, wear gloves, and take the old to where it is collected.")
                : List.of();
    }
}
