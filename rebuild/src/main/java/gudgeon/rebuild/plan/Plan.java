package gudgeon.rebuild.plan;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What can be done now, what waits, and how far the rebuild has come: a pure function of the build and the time.
 *
 * @param now steps and checks that can be done with what is in hand, best first
 * @param waiting the other steps and checks that are left, in the order that follows from the book
 * @param nextHoldPoint the next check that holds a step and neither passed nor was waived
 * @param progress how far the rebuild has come
 */
public record Plan(List<Doable> now, List<Waiting> waiting, Optional<Check> nextHoldPoint, Progress progress) {
    public Plan {
        now = List.copyOf(now);
        waiting = List.copyOf(waiting);
    }

    /**
     * The plan of a build.
     *
     * @param now when it is asked for, so that what has to set is waited for
     */
    public static Plan of(Build build, Instant now) {
        return new Planner(build, now).plan();
    }
}
