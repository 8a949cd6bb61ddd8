package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.CheckState;
import java.util.LinkedHashSet;
import java.util.Set;

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

    private boolean is(Check check) {
        CheckState state = build.check(check.id());
        return !state.lets()
                || check.holds().stream()
                        .flatMap(held -> structure.step(held).stream())
                        .anyMatch(held -> is(held) && !state.lets(held));
    }
}
