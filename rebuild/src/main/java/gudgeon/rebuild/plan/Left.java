package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import gudgeon.rebuild.build.StepState;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;

/** What is left to do of a build. */
final class Left {
    private final Build build;
    private final Structure structure;

    Left(Build build) {
        this.build = build;
        this.structure = build.structure();
    }

    /** The steps and checks that are left, in the order that follows from the book. */
    Set<String> ids() {
        Set<String> left = new LinkedHashSet<>();
        for (String id : structure.precedence().order()) {
            if (structure.step(id).filter(this::is).isPresent()
                    || structure.check(id).filter(this::is).isPresent()) {
                left.add(id);
            }
        }
        return left;
    }

    private boolean is(Step step) {
        return !build.step(step.id()).stands();
    }

    /** A check of what was never taken apart is not part of this rebuild, unless a step that is left waits for it. */
    private boolean is(Check check) {
        CheckState state = build.check(check.id());
        if (state.status() != CheckState.Status.OPEN) {
            return !state.lets();
        }
        Set<Step> related = new LinkedHashSet<>();
        Stream.of(check.clears(), check.needs(), check.with(), check.holds())
                .flatMap(ids -> ids.stream())
                .forEach(id ->
                        structure.step(id).or(() -> structure.stepFitting(id)).ifPresent(related::add));
        return related.isEmpty()
                || related.stream().anyMatch(step -> build.step(step.id()).status() != StepState.Status.AS_FOUND);
    }
}
