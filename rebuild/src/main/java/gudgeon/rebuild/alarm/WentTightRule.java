package gudgeon.rebuild.alarm;

import gudgeon.rebuild.alarm.Alarm.Severity;
import gudgeon.rebuild.book.Position;
import gudgeon.rebuild.build.AsMeasured;
import gudgeon.rebuild.build.Build;
import gudgeon.rebuild.fit.TrialFit;
import gudgeon.rebuild.journal.Fact.WentTight;
import gudgeon.rebuild.timing.CamTiming;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Turned by hand the crank went tight: at which angles says what is wrong. */
final class WentTightRule implements Rule {
    private static final int MOST_TEETH = 2;
    private static final String WHY =
            "What stops the crank by hand breaks something when the engine runs; a valve may be bent already.";

    private final Fits fits;

    /** A mistake that would make it go tight, and how far its angles lie from those felt, in degrees. */
    private record Suspect(int teeth, boolean turned, double offDeg, TrialFit fit) {
        /** How many mistakes it takes: one is likelier than two at once. */
        int mistakes() {
            return (teeth == 0 ? 0 : 1) + (turned ? 1 : 0);
        }
    }

    WentTightRule(Fits fits) {
        this.fits = fits;
    }

    @Override
    public Stream<Alarm> alarms(Build build) {
        return build
                .tight()
                .flatMap(number -> build.fact(number)
                        .filter(WentTight.class::isInstance)
                        .map(felt -> alarm(build, (WentTight) felt, number)))
                .stream();
    }

    private Alarm alarm(Build build, WentTight felt, long number) {
        Optional<Suspect> best = AsMeasured.of(build).stream()
                .flatMap(parts -> suspects(build, parts, felt).stream())
                .filter(suspect -> suspect.offDeg() <= CamTiming.TOLERANCE_DEG)
                .min(Comparator.comparingInt(Suspect::mistakes).thenComparingDouble(Suspect::offDeg));
        if (best.isEmpty()) {
            return unexplained(number);
        }
        Suspect suspect = best.get();
        List<String> figures = List.of(
                angles(suspect.fit()), Fits.troubles(suspect.fit()).get(0).sentence());
        if (suspect.turned()) {
            return alarm(AlarmKind.PISTON_TURNED, piston(build), number, turned(suspect.teeth()), figures);
        }
        return suspect.teeth() == 0
                ? alarm(AlarmKind.WENT_TIGHT, "", number, "That is where the parts as measured touch.", figures)
                : alarm(
                        AlarmKind.CAM_TIMING,
                        CamTiming.check(build.structure()),
                        number,
                        "That is where it would with the cam " + CamTiming.teeth(suspect.teeth()) + ".",
                        figures);
    }

    private static String turned(int teeth) {
        return "That is where it would with the piston turned by half a turn"
                + (teeth == 0 ? "." : " and the cam " + CamTiming.teeth(teeth) + ".");
    }

    private List<Suspect> suspects(Build build, AsMeasured parts, WentTight felt) {
        List<Suspect> suspects = new ArrayList<>();
        int most = CamTiming.toothDeg(build.book()).isPresent() ? MOST_TEETH : 0;
        for (int teeth = -most; teeth <= most; teeth++) {
            for (boolean turned : new boolean[] {false, true}) {
                int late = teeth;
                fits.of(parts, teeth, turned)
                        .ifPresent(fit -> suspects.add(new Suspect(late, turned, off(felt, fit), fit)));
            }
        }
        return suspects;
    }

    /** How far the angles felt lie from those of a fit at the most, in degrees. */
    private static double off(WentTight felt, TrialFit fit) {
        if (felt.forwardDeg().isEmpty() && felt.backwardDeg().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(off(felt.forwardDeg(), fit.tightForwardDeg()), off(felt.backwardDeg(), fit.tightBackwardDeg()));
    }

    private static double off(OptionalDouble felt, OptionalDouble reckoned) {
        if (felt.isEmpty()) {
            return 0;
        }
        return reckoned.isPresent()
                ? Math.abs(Math.IEEEremainder(felt.getAsDouble() - reckoned.getAsDouble(), 720))
                : Double.POSITIVE_INFINITY;
    }

    private static String angles(TrialFit fit) {
        return String.format(
                Locale.ROOT,
                "It would go tight at %.1f° turning forward and at %.1f° turning backward.",
                fit.tightForwardDeg().orElse(Double.NaN),
                fit.tightBackwardDeg().orElse(Double.NaN));
    }

    private static String piston(Build build) {
        return build.structure().positions().stream()
                .filter(position -> position.sizes().equals("pistons"))
                .map(Position::id)
                .findFirst()
                .orElse("");
    }

    private static Alarm alarm(AlarmKind kind, String at, long number, String explained, List<String> figures) {
        return new Alarm(
                kind,
                Severity.STOP,
                at,
                "Turned by hand, the crank goes tight. " + explained,
                WHY,
                "Turn it back and don't force it; take the top end apart and look there first.",
                List.of(number),
                figures);
    }

    private static Alarm unexplained(long number) {
        return new Alarm(
                AlarmKind.WENT_TIGHT,
                Severity.STOP,
                "",
                "Turned by hand, the crank goes tight, and no valve that meets the piston explains it.",
                WHY,
                "Don't force it. Take the plug out first; then look for a part left in, a bent rod, a ring or a shaft"
                        + " that binds.",
                List.of(number),
                List.of());
    }
}
