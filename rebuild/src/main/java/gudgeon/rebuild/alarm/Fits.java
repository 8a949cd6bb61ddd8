package gudgeon.rebuild.alarm;

import gudgeon.mechanics.clearance.Verdict;
import gudgeon.rebuild.book.Geometry;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.fit.Choice;
import gudgeon.rebuild.fit.Figure;
import gudgeon.rebuild.fit.Finding;
import gudgeon.rebuild.fit.LengthUnit;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.fit.UnknownChoice;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Trial fits as alarms need them, the last ones remembered: each is worked out from its figures alone. */
final class Fits {
    /** Some positions, each with and without its part, and the cam some teeth either way. */
    private static final int REMEMBERED = 64;

    private record Asked(Geometry geometry, Choice choice) {}

    private final Map<Asked, Optional<TrialFit>> known = new LinkedHashMap<>(REMEMBERED, 0.75f, true);

    /** The fit of parts as they are, none turned; empty where their sizes can't go together. */
    Optional<TrialFit> of(AsMeasured parts) {
        return of(parts, 0, false);
    }

    /** The fit as the book has it. */
    Optional<TrialFit> booked(Geometry geometry) {
        return of(geometry, Choice.asBooked());
    }

    /**
     * The fit of parts with the cam moved or the piston turned.
     *
     * @param teeth teeth the cam is late
     */
    Optional<TrialFit> of(AsMeasured parts, int teeth, boolean turned) {
        Choice choice = parts.choice();
        return of(
                parts.geometry(),
                new Choice(
                        choice.pistonId(), choice.gasketId(), teeth, OptionalDouble.empty(), turned, choice.changed()));
    }

    private Optional<TrialFit> of(Geometry geometry, Choice choice) {
        Asked asked = new Asked(geometry, choice);
        synchronized (known) {
            Optional<TrialFit> before = known.get(asked);
            if (before != null) {
                return before;
            }
        }
        Optional<TrialFit> fit = tried(asked);
        synchronized (known) {
            known.put(asked, fit);
            if (known.size() > REMEMBERED) {
                known.remove(known.keySet().iterator().next());
            }
        }
        return fit;
    }

    private static Optional<TrialFit> tried(Asked asked) {
        try {
            return Optional.of(TrialFit.withoutCures(asked.geometry(), asked.choice(), LengthUnit.MM));
        } catch (UnknownChoice impossible) {
            return Optional.empty();
        }
    }

    /** The gaps that touch, more likely touch than not, or surely leave less room than wanted. */
    static List<Finding> troubles(TrialFit fit) {
        return fit.findings().stream().filter(Fits::isTrouble).toList();
    }

    private static boolean isTrouble(Finding finding) {
        return switch (finding.verdict()) {
            case TOUCHES, CLOSE -> true;
            // that it may touch as well is no reason to keep silent on room that is surely short
            case UNPROVEN -> finding.gap().leastMm() < 0 || isSurelyShort(finding);
            case CLEARS -> false;
        };
    }

    private static boolean isSurelyShort(Finding finding) {
        return finding.gap().leastMm() + Finding.COVERAGE * finding.standardUncertaintyMm() < finding.wantedMm();
    }

    /** Whether anything touches. */
    static boolean touches(TrialFit fit) {
        return fit.findings().stream().anyMatch(finding -> finding.verdict() == Verdict.TOUCHES);
    }

    /** The same gap of another fit. */
    static Optional<Finding> same(Finding finding, TrialFit other) {
        return other.findings().stream()
                .filter(one -> one.kind() == finding.kind() && one.valves().equals(finding.valves()))
                .findFirst();
    }

    /** The compression ratio, where the book has what it follows from. */
    static OptionalDouble compressionRatio(TrialFit fit) {
        return fit.figures().stream()
                .filter(figure -> figure.key().equals("compressionRatio"))
                .mapToDouble(Figure::low)
                .findFirst();
    }
}
