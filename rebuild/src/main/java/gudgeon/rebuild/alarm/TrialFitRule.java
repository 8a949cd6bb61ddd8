package gudgeon.rebuild.alarm;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.GapKind;
import gudgeon.rebuild.fit.TrialFit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The parts as measured don't go together: valve and piston, valve and valve, crown and head. */
final class TrialFitRule implements Rule {
    /** What no gauge at the bench shows, in mm. */
    private static final double NO_CHANGE_MM = 0.005;

    private final Fits fits;

    TrialFitRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        Optional<AsMeasured> parts =
                AsMeasured.of(build).filter(found -> !found.laid().isEmpty());
        Optional<TrialFit> fit = parts.flatMap(fits::of);
        if (parts.isEmpty() || fit.isEmpty()) {
            return Stream.empty();
        }
        Optional<TrialFit> booked = build.book().geometry().flatMap(fits::booked);
        Laying laying = new Laying(build, parts.get(), fits);
        Map<AlarmKind, Map<Position, List<Finding>>> all = new LinkedHashMap<>();
        for (Finding finding : Fits.troubles(fit.get())) {
            if (booked.filter(known -> isNoWorse(finding, known)).isEmpty()) {
                laying.toBlame(other -> Fits.same(finding, other)
                                .filter(one -> Fits.troubles(other).contains(one))
                                .isEmpty())
                        .ifPresent(position -> all.computeIfAbsent(kind(finding), kind -> new LinkedHashMap<>())
                                .merge(position, List.of(finding), TrialFitRule::both));
            }
        }
        return all.entrySet().stream()
                .flatMap(of -> of.getValue().entrySet().stream()
                        .map(at -> alarm(build, of.getKey(), at.getKey(), at.getValue())));
    }

    private static List<Finding> both(List<Finding> some, List<Finding> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    /** Whether the book's own parts have as little room, so that the part is not to blame for it. */
    private static boolean isNoWorse(Finding finding, TrialFit booked) {
        return finding.verdict() != Verdict.TOUCHES
                && Fits.same(finding, booked)
                        .filter(known -> known.gap().leastMm() <= finding.gap().leastMm() + NO_CHANGE_MM)
                        .isPresent();
    }

    private static AlarmKind kind(Finding finding) {
        return finding.kind() == GapKind.DECK ? AlarmKind.DECK_GAP : AlarmKind.VALVE_TOUCHES;
    }

    private static Alarm alarm(Build build, AlarmKind kind, Position at, List<Finding> findings) {
        List<Finding> worst = findings.stream()
                .sorted(Comparator.comparingInt((Finding finding) -> finding.verdict() == Verdict.TOUCHES ? 0 : 1)
                        .thenComparingDouble(finding -> finding.gap().leastMm() - finding.wantedMm()))
                .toList();
        boolean touches = worst.get(0).verdict() == Verdict.TOUCHES;
        return new Alarm(
                kind,
                touches ? Severity.STOP : Severity.LOOK,
                at.id(),
                worst.get(0).sentence(),
                kind == AlarmKind.DECK_GAP
                        ? "At speed the rod stretches and the piston rocks: a crown that stands too near beats on the head."
                        : "At speed a valve floats and the rod stretches: what has no room bends a valve or holes the crown.",
                "Don't build on with the " + at.name()
                        + " as it is; the trial fit shows what would cure it, and what to measure more closely.",
                Laying.evidence(build, at),
                worst.stream().skip(1).map(Finding::sentence).toList());
    }
}
