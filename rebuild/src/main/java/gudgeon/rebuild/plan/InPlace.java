package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import java.util.List;

/** What is in the engine now, so that it stands in the way of what lies under it. */
final class InPlace {
    private InPlace() {}

    /** Whether a step is done, or any part of what it fits is in, so that something of it can come off. */
    static boolean any(Build build, Step step) {
        return build.step(step.id()).stands()
                || step.fits().stream()
                        .anyMatch(position -> !build.place(position).isOut());
    }

    /** Steps, other than the one that fits it, whose parts cover a position. */
    static List<Step> over(Build build, String position) {
        return build.structure().stepsBurying(position).stream()
                .filter(build::covers)
                .toList();
    }
}
