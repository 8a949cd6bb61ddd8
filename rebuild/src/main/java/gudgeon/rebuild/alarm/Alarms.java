package gudgeon.rebuild.alarm;

import gudgeon.rebuild.build.Build;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sees what will go wrong. What it finds hangs on the build alone; it only remembers trial fits, so that asking again and again
 * costs little. Safe to share between threads.
 */
public final class Alarms {
    private final List<Rule> rules;

    /** Remembers nothing yet. */
    public Alarms() {
        Fits fits = new Fits();
        rules = List.of(
                new PartsRule(
                        new TrialFitRule(fits),
                        new CompressionRule(fits),
                        new GasketThicknessRule(fits),
                        new UnreadSizeRule(fits)),
                new TurnedRule(fits),
                new NothingComparedRule(),
                new CamTimingRule(),
                new WentTightRule(fits),
                new MissingRule(),
                new HoldPointRule(),
                new UsedAgainRule(),
                new BlastedRule(),
                new ReadingRule(),
                new SlipRule(),
                new UnprovenRule(),
                new MeasuredOutRule(),
                new FailedCheckRule(),
                new OutOfTurnRule(),
                new NotListedRule(),
                new CoilBindRule(),
                new RingGapRule(),
                new OversizeRule(),
                new BoredEarlyRule(),
                new FamilyRule(),
                new HeatRule(),
                new ShortRule(),
                new WrenchRule(),
                new DryFigureRule(),
                new FastenerLengthRule(),
                new SwappedRule(),
                new PulledDownRule(),
                new NotAgainRule(),
                new UnsignedRule(),
                new RanOnRule(),
                new TwoAnswersRule());
    }

    /** All alarms that stand now, worst first. */
    public static List<Alarm> of(Build build) {
        return new Alarms().standing(build);
    }

    /** All alarms that stand now, worst first; of two about the same trouble at the same place the worse. */
    public List<Alarm> standing(Build build) {
        Map<String, Alarm> found = new LinkedHashMap<>();
        for (Rule rule : rules) {
            rule.alarms(build)
                    .forEach(alarm -> found.merge(
                            alarm.kind() + " " + alarm.at(),
                            alarm,
                            (one, other) -> one.severity().compareTo(other.severity()) <= 0 ? one : other));
        }
        return found.values().stream()
                .sorted(Comparator.comparing(Alarm::severity).thenComparing(Alarm::kind))
                .toList();
    }
}
