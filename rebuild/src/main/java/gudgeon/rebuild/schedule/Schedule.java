package gudgeon.rebuild.schedule;

import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import java.time.LocalDate;
import java.util.List;

/**
 * When a rebuild will be done, and what to do about it: a pure function of the build, its plan and the day. The dates are sampled,
 * the same every time.
 *
 * @param end when all is done and set
 * @param thisEvening what to do now, best first, as much as an evening holds; at least one if anything can be done
 * @param deciders what the end hangs on, the most often first
 * @param toPlace orders still to be placed, the one first that costs most if it waits
 * @param arrivals what is on its way, or will be once ordered, by its likely day
 * @param holdPoints checks that hold a step, by their likely day
 * @param assumptions what was assumed, sentences
 * @param sentence the end and what it hangs on
 */
public record Schedule(
        DateRange end,
        List<Doable> thisEvening,
        List<Decider> deciders,
        List<ToPlace> toPlace,
        List<Expected> arrivals,
        List<Expected> holdPoints,
        List<String> assumptions,
        String sentence) {
    public Schedule {
        thisEvening = List.copyOf(thisEvening);
        deciders = List.copyOf(deciders);
        toPlace = List.copyOf(toPlace);
        arrivals = List.copyOf(arrivals);
        holdPoints = List.copyOf(holdPoints);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The schedule of a build.
     *
     * @param plan its plan on that day
     * @param today the day from which it counts
     */
    public static Schedule of(Build build, Plan plan, LocalDate today) {
        return new Scheduler(build, plan, today).schedule();
    }
}
