package gudgeon.rebuild.build;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Where a step stands.
 *
 * @param status where it stands
 * @param begun number of the entry that began it, 0 if none did
 * @param done number of the entry that ended it, 0 if none did
 * @param doneAt when it was done
 * @param unproven checks that hold it and that neither stood as passed nor were waived when it was begun
 * @param why why it was stopped or undone, may be empty
 */
public record StepState(
        Status status, long begun, long done, Optional<Instant> doneAt, List<String> unproven, String why) {
    static final StepState OPEN = new StepState(Status.OPEN, 0, 0, Optional.empty(), List.of(), "");
    static final StepState AS_FOUND = new StepState(Status.AS_FOUND, 0, 0, Optional.empty(), List.of(), "");

    public StepState {
        unproven = List.copyOf(unproven);
    }

    /** Where a step stands. */
    public enum Status {
        /** Not begun, or undone again. */
        OPEN,
        BEGUN,
        STOPPED,
        DONE,
        /** Done before the rebuild began, and never taken apart. */
        AS_FOUND
    }

    /** Whether what it fits is together, so that it covers. */
    public boolean stands() {
        return status == Status.DONE || status == Status.AS_FOUND;
    }

    /** Whether someone has begun it in this rebuild and it was not undone: what it would bury is about to be, or is, buried. */
    public boolean underHand() {
        return status == Status.BEGUN || status == Status.DONE;
    }
}
