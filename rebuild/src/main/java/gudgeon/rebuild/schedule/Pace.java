package gudgeon.rebuild.schedule;

import gudgeon.rebuild.book.Check;
import gudgeon.rebuild.book.Step;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.build.Told;
import gudgeon.rebuild.journal.Fact.TimeSpent;
import gudgeon.rebuild.journal.Sourcing.PaceSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How fast work goes at this bench.
 *
 * @param hoursAWeek hours a week for the bench
 * @param factor time taken as a share of the likely time
 * @param assumptions where the two come from, sentences
 */
record Pace(double hoursAWeek, Triangle factor, List<String> assumptions) {
    /** The trade's habit of a quarter less to three quarters more; common practice, no source. */
    private static final Triangle HABIT = new Triangle(0.75, 1, 1.75);

    private static final double HOURS_NOT_SAID = 6;
    /** Fewer jobs timed than this say nothing of how a bench keeps its times. */
    private static final int FEWEST_TIMED = 3;

    Pace {
        assumptions = List.copyOf(assumptions);
    }

    static Pace of(Build build) {
        double said = build.told(PaceSet.class).stream()
                .mapToDouble(told -> told.fact().hours())
                .reduce(0, (before, later) -> later);
        double hours = said > 0 ? said : HOURS_NOT_SAID;
        String week = said > 0
                ? number(hours) + " h a week for the bench, spread evenly over its days."
                : "Nobody said how many hours a week there are for the bench: taken as " + number(hours) + ".";
        double own = ownRatio(build);
        return own > 0
                ? new Pace(
                        hours,
                        new Triangle(0.75 * own, own, 1.75 * own),
                        List.of(
                                week,
                                "Work takes " + number(own)
                                        + " times as long as the book's likely minutes, as it did at this"
                                        + " bench so far, a quarter less to three quarters more (common practice, no source)."))
                : new Pace(
                        hours,
                        HABIT,
                        List.of(
                                week,
                                "Work takes a quarter less to three quarters more than the book's likely minutes (common practice,"
                                        + " no source)."));
    }

    /** Time spent over likely time, of the jobs that are done and were timed; 0 while there are too few. */
    private static double ownRatio(Build build) {
        Map<String, Integer> spent = new HashMap<>();
        for (Told<TimeSpent> told : build.told(TimeSpent.class)) {
            spent.merge(told.fact().on(), told.fact().minutes(), Integer::sum);
        }
        spent.keySet().removeIf(id -> likely(build, id) == 0 || !isDone(build, id));
        if (spent.size() < FEWEST_TIMED) {
            return 0;
        }
        double all = spent.values().stream().mapToInt(minutes -> minutes).sum();
        return all / spent.keySet().stream().mapToInt(id -> likely(build, id)).sum();
    }

    private static boolean isDone(Build build, String id) {
        return build.step(id).done() > 0 || build.check(id).at() > 0;
    }

    /** Likely minutes of a step or check; 0 where the book does not say. */
    static int likely(Build build, String id) {
        return build.structure()
                .step(id)
                .map(Step::minutes)
                .or(() -> build.structure().check(id).map(Check::minutes))
                .orElse(0);
    }

    /** Days of the calendar that a minute of likely work takes. */
    Triangle daysAMinute() {
        double day = 7 / (60 * hoursAWeek);
        return new Triangle(day * factor.least(), day * factor.likely(), day * factor.most());
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }
}
