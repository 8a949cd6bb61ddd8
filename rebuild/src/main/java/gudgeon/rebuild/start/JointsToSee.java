package gudgeon.rebuild.start;

import gudgeon.rebuild.book.Joint;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fasten.Again;
import gudgeon.rebuild.fasten.HoleNow;
import gudgeon.rebuild.fasten.JointNow;
import gudgeon.rebuild.fasten.Tightness;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.start.StartItem.Kind;
import gudgeon.rebuild.start.StartItem.Standing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Joints of this rebuild that are not at full torque, not marked, or due to be tightened again. */
final class JointsToSee {
    private JointsToSee() {}

    static List<StartItem> items(Build build, BeforeStart before) {
        return build.structure().joints().stream()
                .filter(joint -> isOfThisRebuild(build, before, joint))
                .flatMap(joint -> item(build, JointNow.of(build, joint)))
                .toList();
    }

    /** Whether a step that comes before the start and tightens it was done here: one not done is told as a step. */
    private static boolean isOfThisRebuild(Build build, BeforeStart before, Joint joint) {
        return before.steps().stream()
                .filter(step -> step.tightens().contains(joint.id()))
                .map(Step::id)
                .anyMatch(step -> build.step(step).underHand());
    }

    private static Stream<StartItem> item(Build build, JointNow joint) {
        Tightness tightness = Tightness.of(joint);
        Optional<Again> again = Again.of(build, joint).filter(Again::due);
        if (again.isPresent()) {
            return Stream.of(item(joint, again.get().sentence(), true));
        }
        if (joint.holes().isEmpty()) {
            return Stream.empty();
        }
        if (tightness.isHalfDone() && !tightness.isTight()) {
            return Stream.of(item(joint, "It is half tightened. " + tightness.sentence(), true));
        }
        if (!tightness.isTight()) {
            return Stream.of(item(joint, "Its step is done, and no torque of it is written down.", false));
        }
        List<String> unmarked = joint.holes().stream()
                .filter(hole -> !hole.marked())
                .map(HoleNow::id)
                .toList();
        return unmarked.isEmpty()
                ? Stream.empty()
                : Stream.of(
                        item(joint, "At full torque, and not marked across: " + Sentence.list(unmarked) + ".", false));
    }

    private static StartItem item(JointNow joint, String sentence, boolean stops) {
        return new StartItem(
                Kind.JOINT,
                joint.id(),
                Sentence.capital(joint.book().name()),
                sentence,
                Standing.OPEN,
                stops,
                joint.loose() == 0 ? List.of() : List.of(joint.loose()),
                List.of());
    }
}
