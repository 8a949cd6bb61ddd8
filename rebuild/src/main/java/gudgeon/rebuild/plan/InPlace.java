package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Place;
import java.util.List;

/** What is in the engine now, so that it stands in the way of what lies under it. */
final class InPlace {
    private InPlace() {}

    /** Whether a step is done, or any part of what it fits is in, so that something of it can come off. */
    static boolean any(Build build, Step step) {
        return build.step(step.id()).stands() || step.fits().stream().anyMatch(position -> is(build, position));
    }

    /** Whether a part of a position is in. */
    static boolean is(Build build, String position) {
        return build.place(position).status() != Place.Status.OUT;
    }

    /** Steps, other than the one that fits it, whose parts cover a position. */
    static List<Step> over(Build build, String position) {
        return build.structure().stepsCovering(position).stream()
                .filter(step -> !step.fits().contains(position))
                .filter(build::covers)
                .toList();
    }
}
