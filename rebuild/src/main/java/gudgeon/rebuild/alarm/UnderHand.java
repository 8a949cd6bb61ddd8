package gudgeon.rebuild.alarm;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.StepState;
import java.util.stream.Stream;

/** Steps that were begun in this rebuild and not undone: what they would bury is about to be, or is, buried. */
final class UnderHand {
    private UnderHand() {}

    static Stream<Step> steps(Build build) {
        return build.structure().steps().stream()
                .filter(step -> build.step(step.id()).underHand());
    }

    /** Number of the entry that a step went on with last. */
    static long number(StepState state) {
        return Math.max(state.begun(), state.done());
    }
}
