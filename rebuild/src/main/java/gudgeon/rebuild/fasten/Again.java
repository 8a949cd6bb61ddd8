package gudgeon.rebuild.fasten;

import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.book.Structure;
import gudgeon.rebuild.build.Build;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The tightening again of a joint, as after the first heat.
 *
 * @param joint which joint
 * @param step the step of the book that does it: the last of those that tighten the joint
 * @param tightened whether the joint was tightened in this rebuild, so that it is wanted
 * @param done whether it was done since
 * @param due whether all that it waits for is done, so that it is its turn
 */
public record Again(Joint joint, Step step, boolean tightened, boolean done, boolean due) {
    /** That of a joint; empty where the book does not ask for it or has no step that does it. */
    public static Optional<Again> of(Build build, JointNow joint) {
        if (joint.book().again().isEmpty()) {
            return Optional.empty();
        }
        List<Step> tightening = build.structure().steps().stream()
                .filter(step -> step.tightens().contains(joint.id()))
                .toList();
        return tightening.size() < 2
                ? Optional.empty()
                : Optional.of(of(build, joint, tightening.get(tightening.size() - 1), tightening));
    }

    private static Again of(Build build, JointNow joint, Step step, List<Step> tightening) {
        boolean tightened = joint.holes().stream().anyMatch(hole -> hole.pass() > 0)
                || tightening.stream()
                        .anyMatch(first -> !first.id().equals(step.id())
                                && build.step(first.id()).underHand());
        boolean done =
                joint.tightenedAgain().isPresent() || build.step(step.id()).done() > joint.loose();
        boolean due =
                step.needs().stream().allMatch(needed -> build.step(needed).stands());
        return new Again(joint.book(), step, tightened, done, tightened && !done && due);
    }

    /** Steps that were begun though they come after it and it was not done. */
    public List<Step> passedBy(Build build) {
        return !tightened || done
                ? List.of()
                : build.structure().steps().stream()
                        .filter(later -> build.step(later.id()).underHand())
                        .filter(later -> comesAfter(build.structure(), later, step.id()))
                        .toList();
    }

    /** When it is done, a sentence. */
    public String sentence() {
        return "Tighten the " + joint.name() + " again " + joint.again() + ".";
    }

    /** Whether a step needs another, or one that needs it. */
    private static boolean comesAfter(Structure structure, Step step, String other) {
        return needs(structure, step, new HashSet<>()).contains(other);
    }

    private static Set<String> needs(Structure structure, Step step, Set<String> seen) {
        for (String needed : step.needs()) {
            if (seen.add(needed)) {
                structure.step(needed).ifPresent(earlier -> needs(structure, earlier, seen));
            }
        }
        return seen;
    }
}
