package gudgeon.rebuild.schedule;

import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.plan.Reason;
import gudgeon.rebuild.plan.Waiting;
import gudgeon.rebuild.schedule.Network.Job;
import gudgeon.rebuild.schedule.OnTheWay.Awaited;
import gudgeon.rebuild.sentence.Amount;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** The steps and checks that are left as jobs, and the parts that they wait for as deliveries. */
final class WorkLeft {
    private static final double MINUTES_A_DAY = 24 * 60;

    private final Build build;
    private final LocalDate today;
    private final Map<String, Awaited> awaited = new LinkedHashMap<>();
    private final List<Job> jobs = new ArrayList<>();
    private final List<String> assumptions = new ArrayList<>();

    WorkLeft(Build build, Plan plan, OnTheWay onTheWay, LocalDate today) {
        this.build = build;
        this.today = today;
        Map<String, List<Reason>> reasons = new HashMap<>();
        plan.now().forEach(doable -> reasons.put(doable.id(), List.of()));
        plan.waiting().forEach(waiting -> reasons.put(waiting.id(), waiting.reasons()));
        List<String> lacking = reasons.values().stream()
                .flatMap(List::stream)
                .filter(reason -> reason.kind() == Reason.Kind.PART)
                .map(Reason::id)
                .distinct()
                .sorted()
                .toList();
        lacking.stream().filter(onTheWay::isWanted).forEach(position -> awaited.put(position, onTheWay.of(position)));
        int unseen = lacking.size() - awaited.size();
        if (unseen > 0) {
            assumptions.add("Nobody said yet whether the parts of " + Amount.of(unseen, "position")
                    + " are there, or that they were repaired: taken as ready.");
        }
        addJobs(plan, reasons);
        assumptions.addAll(onTheWay.assumptions());
        assumptions.add(
                "Parts and machinists are waited for side by side, all orders are placed today, and a bench that is slow at"
                        + " one step is slow at all.");
    }

    List<Job> jobs() {
        return jobs;
    }

    /** What is waited for, in the order of the jobs' deliveries. */
    List<Awaited> awaited() {
        return List.copyOf(awaited.values());
    }

    List<String> assumptions() {
        return assumptions;
    }

    private void addJobs(Plan plan, Map<String, List<Reason>> reasons) {
        Set<String> left = new LinkedHashSet<>();
        Stream.concat(
                        plan.now().stream().map(Doable::id),
                        plan.waiting().stream().map(Waiting::id))
                .forEach(left::add);
        List<String> order = build.structure().precedence().order().stream()
                .filter(left::contains)
                .toList();
        Map<String, Integer> index = new HashMap<>();
        List<String> positions = List.copyOf(awaited.keySet());
        List<String> untimed =
                order.stream().filter(id -> Pace.likely(build, id) == 0).toList();
        double usual = order.stream()
                .mapToInt(id -> Pace.likely(build, id))
                .filter(minutes -> minutes > 0)
                .average()
                .orElse(0);
        for (String id : order) {
            List<Integer> after = build.structure().precedence().before(id).stream()
                    .filter(index::containsKey)
                    .map(before -> index.getOrDefault(before, 0))
                    .toList();
            List<Integer> awaits = reasons.getOrDefault(id, List.of()).stream()
                    .filter(reason -> reason.kind() == Reason.Kind.PART && positions.contains(reason.id()))
                    .map(reason -> positions.indexOf(reason.id()))
                    .distinct()
                    .toList();
            double minutes = untimed.contains(id) ? usual : Pace.likely(build, id);
            index.put(id, jobs.size());
            jobs.add(new Job(id, minutes, after, awaits, setDays(id)));
        }
        if (!untimed.isEmpty()) {
            assumptions.add(
                    "The book has no minutes for " + Amount.of(untimed.size(), "step or check", "steps and checks")
                            + ": each taken as " + Math.round(usual) + " min, the mean of the others.");
        }
        stillSetting(order, index);
    }

    private double setDays(String id) {
        return build.structure().step(id).map(Step::setMinutes).orElse(0) / MINUTES_A_DAY;
    }

    /** What is done and still sets: told by the day only, so that it is never taken as set too soon. */
    private void stillSetting(List<String> order, Map<String, Integer> index) {
        for (Step step : build.structure().steps()) {
            double rest = build.step(step.id())
                    .doneAt()
                    .map(at -> setDays(step.id())
                            - ChronoUnit.DAYS.between(LocalDate.ofInstant(at, ZoneOffset.UTC), today))
                    .orElse(0.0);
            if (step.setMinutes() > 0 && rest > 0 && !index.containsKey(step.id())) {
                order.stream()
                        .filter(id -> build.structure().precedence().before(id).contains(step.id()))
                        .forEach(id -> assumptions.add("'" + step.name() + "' may still have to set before '"
                                + build.structure().name(id) + "'; not counted."));
            }
        }
    }
}
