package gudgeon.rebuild.schedule;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.plan.Doable;
import gudgeon.rebuild.plan.Plan;
import gudgeon.rebuild.schedule.Network.Outcome;
import gudgeon.rebuild.schedule.OnTheWay.Awaited;
import gudgeon.rebuild.sentence.Amount;
import gudgeon.rebuild.sentence.Sentence;
import gudgeon.rebuild.source.PartsList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Turns what is left of a build into jobs and deliveries, and what the samples say into dates. */
final class Scheduler {
    private static final int EVENING_MINUTES = 150;
    private static final int LATER_DAYS = 7;
    /** Less often than this nobody need care. */
    private static final double SELDOM = 0.01;

    private final Build build;
    private final Plan plan;
    private final LocalDate today;
    private final Pace pace;
    private final WorkLeft left;
    private final List<Awaited> awaited;
    private final Samples samples;
    private final List<Outcome> outcomes;

    Scheduler(Build build, Plan plan, LocalDate today) {
        this.build = build;
        this.plan = plan;
        this.today = today;
        this.pace = Pace.of(build);
        this.left = new WorkLeft(build, plan, new OnTheWay(build, PartsList.of(build, today), today), today);
        this.awaited = left.awaited();
        this.samples = new Samples(
                new Network(left.jobs()),
                awaited.stream().map(Awaited::delivery).toList(),
                pace.daysAMinute());
        this.outcomes = samples.outcomes();
    }

    Schedule schedule() {
        DateRange end = DateRange.of(today, ends(outcomes));
        List<Decider> deciders = deciders();
        List<String> assumptions = new ArrayList<>(pace.assumptions());
        assumptions.addAll(left.assumptions());
        return new Schedule(
                end,
                thisEvening(),
                deciders,
                toPlace(),
                arrivals(),
                holdPoints(),
                assumptions.stream().distinct().toList(),
                left.jobs().isEmpty()
                        ? "Nothing is left to do."
                        : "Done as likely as not by " + end.half() + ", in eight cases of ten between " + end.early()
                                + " and " + end.late() + ". " + deciders.get(0).sentence());
    }

    private static double[] ends(List<Outcome> of) {
        return of.stream().mapToDouble(Outcome::end).toArray();
    }

    /** What the plan has first, as long as the evening lasts. */
    private List<Doable> thisEvening() {
        List<Doable> evening = new ArrayList<>();
        int minutes = 0;
        for (Doable doable : plan.now()) {
            minutes += doable.minutes();
            if (!evening.isEmpty() && minutes > EVENING_MINUTES) {
                break;
            }
            evening.add(doable);
        }
        return evening;
    }

    private List<Decider> deciders() {
        List<Decider> deciders = new ArrayList<>();
        for (int by = Network.THE_BENCH; by < awaited.size(); by++) {
            int index = by;
            double share =
                    outcomes.stream().filter(one -> one.decidedBy() == index).count() / (double) Samples.COUNT;
            if (share >= SELDOM) {
                String what = by == Network.THE_BENCH
                        ? "the hours at the bench"
                        : awaited.get(by).what();
                deciders.add(new Decider(
                        by == Network.THE_BENCH ? "" : awaited.get(by).position(),
                        share,
                        "In " + Math.round(100 * share) + " % of cases the end hangs on " + what + "."));
            }
        }
        deciders.sort(Comparator.comparingDouble(decider -> -decider.share()));
        return deciders;
    }

    private List<ToPlace> toPlace() {
        double half = Samples.at(0.5, ends(outcomes));
        List<ToPlace> orders = new ArrayList<>();
        for (int index = 0; index < awaited.size(); index++) {
            Awaited one = awaited.get(index);
            if (one.toPlace()) {
                double later = Samples.at(0.5, samples.endsIfLate(index, LATER_DAYS));
                long days = Math.round(later - half);
                String name = build.structure().name(one.position());
                orders.add(new ToPlace(
                        one.position(),
                        name,
                        days,
                        Sentence.capital(name) + ": ordered a week later, the end moves by "
                                + (days == 0 ? "less than a day." : Amount.of(days, "day") + ".")));
            }
        }
        orders.sort(Comparator.comparingLong(order -> -order.costsDays()));
        return orders;
    }

    private List<Expected> arrivals() {
        List<Expected> arrivals = new ArrayList<>();
        for (int index = 0; index < awaited.size(); index++) {
            arrivals.add(new Expected(
                    awaited.get(index).position(),
                    awaited.get(index).what(),
                    DateRange.ofArrivals(today, samples.arrivals(index))));
        }
        arrivals.sort(Comparator.comparing(expected -> expected.day().half()));
        return arrivals;
    }

    private List<Expected> holdPoints() {
        List<Expected> points = new ArrayList<>();
        for (int job = 0; job < left.jobs().size(); job++) {
            String id = left.jobs().get(job).id();
            if (build.structure().check(id).filter(Check::isHoldPoint).isPresent()) {
                int index = job;
                double[] ends =
                        outcomes.stream().mapToDouble(one -> one.endOf(index)).toArray();
                points.add(new Expected(id, build.structure().name(id), DateRange.of(today, ends)));
            }
        }
        points.sort(Comparator.comparing(expected -> expected.day().half()));
        return points;
    }
}
